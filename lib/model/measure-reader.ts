import type { Day } from '../core/days';
import { grouped } from '../core/grouped';
import type { Facts, IngredientVersion, ItemId } from './facts';
import { ingredientMeasure, type Measure, ownMeasures } from './measure';

/** The measure of an ingredient on any day: that of the version in force, each worked out once; null where there is none. */
export type MeasureReader = (item: ItemId, day: Day) => Measure | null;

const start = ({ validFrom }: IngredientVersion): number => validFrom ?? Number.NEGATIVE_INFINITY;

export function measureReader(facts: Pick<Facts, 'ingredientVersions' | 'namedMeasures'>): MeasureReader {
  const versionsOf = grouped(facts.ingredientVersions, ({ item }) => item);
  const namedOf = grouped(facts.namedMeasures, ({ item }) => item);
  const known = new Map<IngredientVersion, Measure>();
  return (item, day) => {
    let latest: IngredientVersion | null = null;
    for (const version of versionsOf.get(item) ?? []) {
      if (start(version) <= day && (latest === null || start(version) >= start(latest))) latest = version;
    }
    if (latest === null) return null;
    const before = known.get(latest);
    if (before) return before;
    const measure = ingredientMeasure(latest, ownMeasures(namedOf.get(item) ?? []));
    known.set(latest, measure);
    return measure;
  };
}
