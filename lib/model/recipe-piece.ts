import { type BatchWeight, batchOutput, ONE_PORTION } from './batch-output';
import type { RecipeVersion } from './facts';
import type { Issue } from './issue';
import { type LineReading, lineShares, readLine } from './line-reading';
import { batchMeasure, type Measure, type UnitReader } from './measure';
import type { RecipeSpan } from './recipe-graph';
import type { Thing } from './things';

/** What a line asks for, as it is known in the segments at hand. */
export interface Child {
  readonly thing: Thing;
  /** Null where no version is in force, or where what its batch gives is not known. */
  readonly measure: Measure | null;
  readonly inForce: boolean;
}

/** One version of a recipe while nothing that its amounts hang on changes: a shorter span of it. */
export interface RecipePiece extends RecipeSpan {
  /** Base units of the child that one base unit of the recipe takes, breakage included; NaN where that is not known. */
  readonly amounts: readonly number[];
  /** How the recipe itself is measured; null where what a batch gives is not known. */
  readonly measure: Measure | null;
  /** Base units that one batch gives after what every batch loses, before breakage: 1 of a plate; NaN where that is not known. */
  readonly usable: number;
}

/** Amounts, measure and issues of one version. */
export interface RecipeReading {
  readonly amounts: readonly number[];
  readonly measure: Measure | null;
  readonly usable: number;
  readonly issues: readonly Issue[];
}

/**
 * amount = share of the choice * quantity in base units of the child / usable yield (prepared) / batch output in base units /
 * (1 - breakage), below zero where the line says what is made beside it.
 *
 * A plate is one portion: its output is 1. A line `bought` has no yield applied.
 */
export function readRecipe(
  thing: Thing,
  { version, lines }: RecipeSpan,
  children: readonly Child[],
  units: UnitReader,
): RecipeReading {
  const { shares, issues: choices } = lineShares(thing, lines);
  const readings = lines.flatMap((line, index) => {
    const child = children[index];
    return child ? [readLine(thing, line, child, shares[index] as number, units)] : [];
  });
  const issues: Issue[] = [...readings.flatMap((reading) => reading.issues), ...choices];
  const weight = (): BatchWeight => weigh({ version, lines }, children, readings);
  const { base, outputs, issue } =
    thing.kind === 'component'
      ? batchOutput(thing.name, version, weight, units)
      : { base: 'each' as const, outputs: ONE_PORTION, issue: null };
  // What a channel adds is no recipe: a plate on estimate may have it.
  const hasLines = lines.some(({ channel }) => channel === null) || version.refusedLines > 0;
  // Where lines were refused, they are what is missing: a yield is asked for only of a whole recipe.
  const asked = issue?.code === 'no-yield' && version.refusedLines > 0;
  if (issue !== null && hasLines && !asked) issues.push(issue);
  if (version.refusedLines > 0) {
    issues.push({ code: 'refused-lines', about: thing.name, facts: { lines: version.refusedLines } });
  }
  if (!hasLines && standIn(thing, version) === null) issues.push({ code: 'no-lines', about: thing.name, facts: {} });

  const usable = (base === null ? null : outputs[base]) ?? Number.NaN;
  const made = usable * (1 - version.breakage);
  const amounts = readings.map(({ bought }) => bought / made);
  return { amounts, measure: base === null ? null : batchMeasure(base, outputs, thing.own), usable, issues };
}

/** The owner's estimate of a portion, where the thing is sold by the portion; a component is not. */
export function standIn(thing: Thing, version: RecipeVersion): number | null {
  return thing.kind === 'component' || thing.channel !== null ? null : version.estimatedCost;
}

/**
 * The grams that a batch is made of, as stated: what is peeled away never went in, so yields have no part in it; what is made beside
 * it came out again; what it is packed in is not weighed.
 */
function weigh(
  { version, lines }: Pick<RecipeSpan, 'version' | 'lines'>,
  children: readonly Child[],
  readings: readonly LineReading[],
): BatchWeight {
  const weights = readings.map(({ quantity }, index) =>
    lines[index]?.channel === null ? quantity / (children[index]?.measure?.per.g ?? Number.NaN) : 0,
  );
  const missing = children.filter((_, index) => Number.isNaN(weights[index])).map(({ thing }) => thing.name);
  if (missing.length > 0 || version.refusedLines > 0) return { missing: [...new Set(missing)] };
  return { grams: weights.reduce((sum, weight) => sum + weight, 0) };
}
