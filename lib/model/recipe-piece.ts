import { type BatchWeight, batchOutput, ONE_PORTION } from './batch-output';
import type { RecipeLine, RecipeVersion } from './facts';
import type { Issue } from './issue';
import { BASE_UNITS, batchMeasure, inBase, type Measure, missingBetween, type NoWay, type UnitReader } from './measure';
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
 * amount = quantity in base units of the child / usable yield (prepared) / batch output in base units / (1 - breakage)
 *
 * A plate is one portion: its output is 1. A line `bought` has no yield applied.
 */
export function readRecipe(
  thing: Thing,
  { version, lines }: RecipeSpan,
  children: readonly Child[],
  units: UnitReader,
): RecipeReading {
  const issues: Issue[] = [];
  const quantities = lines.map((line, index) => {
    const child = children[index];
    if (!child?.measure) {
      if (child && !child.inForce)
        issues.push({ code: 'no-version', about: child.thing.name, facts: { recipe: thing.name } });
      return Number.NaN;
    }
    const quantity = inBase(child.measure, line.quantity, line.unit, units);
    if (typeof quantity === 'number') return quantity;
    issues.push(...unreadable(thing, line, child.thing, child.measure, quantity));
    return Number.NaN;
  });

  const weight = (): BatchWeight => weigh(version, children, quantities);
  const { base, outputs, issue } =
    thing.kind === 'component'
      ? batchOutput(thing.name, version, weight, units)
      : { base: 'each' as const, outputs: ONE_PORTION, issue: null };
  const hasLines = lines.length > 0 || version.refusedLines > 0;
  // Where lines were refused, they are what is missing: a yield is asked for only of a whole recipe.
  const asked = issue?.code === 'no-yield' && version.refusedLines > 0;
  if (issue !== null && hasLines && !asked) issues.push(issue);
  if (version.refusedLines > 0) {
    issues.push({ code: 'refused-lines', about: thing.name, facts: { lines: version.refusedLines } });
  }
  if (!hasLines && standIn(thing, version) === null) issues.push({ code: 'no-lines', about: thing.name, facts: {} });

  const usable = (base === null ? null : outputs[base]) ?? Number.NaN;
  const made = usable * (1 - version.breakage);
  const amounts = quantities.map((quantity, index) => {
    const prepared = lines[index]?.as === 'prepared';
    const bought = prepared ? quantity / (children[index]?.measure?.usableYield ?? Number.NaN) : quantity;
    return bought / made;
  });
  return { amounts, measure: base === null ? null : batchMeasure(base, outputs, thing.own), usable, issues };
}

/** The owner's estimate of a portion, where the thing is sold by the portion; a component is not. */
export function standIn(thing: Thing, version: RecipeVersion): number | null {
  return thing.kind === 'component' ? null : version.estimatedCost;
}

/** The grams that went into a batch, as stated: what is peeled away never went in, so yields have no part in it. */
function weigh(version: RecipeVersion, children: readonly Child[], quantities: readonly number[]): BatchWeight {
  const weights = quantities.map((quantity, index) => quantity / (children[index]?.measure?.per.g ?? Number.NaN));
  const missing = children.filter((_, index) => Number.isNaN(weights[index])).map(({ thing }) => thing.name);
  if (missing.length > 0 || version.refusedLines > 0) return { missing: [...new Set(missing)] };
  return { grams: weights.reduce((sum, weight) => sum + weight, 0) };
}

function unreadable(recipe: Thing, line: RecipeLine, child: Thing, measure: Measure, why: NoWay): readonly Issue[] {
  if ('unknownUnit' in why) {
    return [{ code: 'unknown-unit', about: child.name, facts: { unit: why.unknownUnit, where: recipe.name } }];
  }
  const facts = { recipe: recipe.name, unit: line.unit };
  if (measure.lacks === null) {
    const outputs = BASE_UNITS.filter((unit) => measure.per[unit] !== null);
    return [{ code: 'no-output-unit', about: child.name, facts: { ...facts, outputs } }];
  }
  return missingBetween(measure, why.from).map((column) => ({
    code: column === 'grams_each' ? 'no-piece-weight' : 'no-density',
    about: child.name,
    facts,
  }));
}
