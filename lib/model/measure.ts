import { nameKey } from '../core/name-key';
import { type BaseUnit, type KitchenMeasures, type Unit, unitNamed } from '../core/units';
import type { IngredientVersion, NamedMeasure } from './facts';

export const BASE_UNITS: readonly BaseUnit[] = ['g', 'ml', 'each'];

/** What is known of a thing that turns a stated quantity into its base unit. */
export interface Measure {
  readonly base: BaseUnit;
  /** Base units in one gram, one millilitre, one piece; null where the fact that would say so is missing. */
  readonly per: Readonly<Record<BaseUnit, number | null>>;
  /** y: usable weight / bought weight; 1 for what is made here. */
  readonly usableYield: number;
  /** Measures of its own, by nameKey. */
  readonly own: OwnMeasures;
  /** The facts that an ingredient does not state; null for what is made here. */
  readonly lacks: readonly CrossingFact[] | null;
}

/** What leads from mass to volume, and from mass to count. */
export type CrossingFact = 'density_g_per_ml' | 'grams_each';

export type OwnMeasures = ReadonlyMap<string, NamedMeasure>;
export type UnitReader = (name: string) => Unit | null;

/** Reads unit names as the venue means them, each only once. */
export function unitReader(measures: KitchenMeasures): UnitReader {
  const known = new Map<string, Unit | null>();
  return (name) => {
    const before = known.get(name);
    if (before !== undefined) return before;
    const unit = unitNamed(name, measures);
    known.set(name, unit);
    return unit;
  };
}

export function ownMeasures(measures: readonly NamedMeasure[]): OwnMeasures {
  return new Map(measures.map((measure) => [nameKey(measure.name), measure]));
}

/**
 * An ingredient's measure. Mass and volume meet by density d (g/ml), mass and count by the weight of a piece w (g/each):
 * 1 ml = d g, 1 each = w g = w / d ml. A missing fact is null, never 1.
 */
export function ingredientMeasure(version: IngredientVersion, own: OwnMeasures): Measure {
  const grams = { g: 1, ml: version.densityGPerMl, each: version.gramsEach };
  const gramsPerBase = grams[version.measure];
  const per = (unit: BaseUnit): number | null => {
    if (unit === version.measure) return 1;
    const inGrams = grams[unit];
    return inGrams === null || gramsPerBase === null ? null : inGrams / gramsPerBase;
  };
  return {
    base: version.measure,
    per: { g: per('g'), ml: per('ml'), each: per('each') },
    usableYield: version.usableYield,
    own,
    lacks: [
      ...(version.densityGPerMl === null ? (['density_g_per_ml'] as const) : []),
      ...(version.gramsEach === null ? (['grams_each'] as const) : []),
    ],
  };
}

const CROSSES: Readonly<Record<CrossingFact, BaseUnit>> = { density_g_per_ml: 'ml', grams_each: 'each' };

/** The facts that would lead from a dimension to the one it is measured in. */
export function missingBetween(measure: Measure, from: BaseUnit): readonly CrossingFact[] {
  return (measure.lacks ?? []).filter((fact) => CROSSES[fact] === from || CROSSES[fact] === measure.base);
}

/**
 * The measure of a thing made here, from what one batch gives: one unit of another dimension is base output / that output.
 * `outputs` holds at least the base.
 */
export function batchMeasure(base: BaseUnit, outputs: BatchOutputs, own: OwnMeasures): Measure {
  const batch = outputs[base];
  const per = (unit: BaseUnit): number | null => {
    const output = outputs[unit];
    return batch === null || output === null ? null : batch / output;
  };
  return { base, per: { g: per('g'), ml: per('ml'), each: per('each') }, usableYield: 1, own, lacks: null };
}

/** What one batch gives, in each dimension it was measured in. */
export type BatchOutputs = Readonly<Record<BaseUnit, number | null>>;

/** Why a quantity cannot be turned into base units: the unit is unknown, or there is no way from its dimension. */
export type NoWay = { readonly unknownUnit: string } | { readonly from: BaseUnit };

/**
 * A stated quantity in base units of the thing: quantity * size of the unit * base units per unit of that dimension.
 * A measure of the thing's own goes before a unit of the same name.
 */
export function inBase(measure: Measure, quantity: number, unit: string, units: UnitReader): number | NoWay {
  const own = measure.own.size > 0 ? measure.own.get(nameKey(unit)) : undefined;
  const read = units(own ? own.unit : unit);
  if (!read) return { unknownUnit: own ? own.unit : unit };
  const per = measure.per[read.base];
  if (per === null) return { from: read.base };
  return quantity * (own ? own.quantity : 1) * read.size * per;
}

/** Whether two measures turn every quantity into the same amount. */
export function sameMeasure(a: Measure | null, b: Measure | null): boolean {
  if (a === null || b === null) return a === b;
  return (
    a.base === b.base &&
    a.usableYield === b.usableYield &&
    a.own === b.own &&
    BASE_UNITS.every((unit) => a.per[unit] === b.per[unit])
  );
}
