import { nameSearch } from '../../core/likeness';
import { unitNamed } from '../../core/units';
import { FOOD_ROWS } from './foods';
import type { ReferenceRow } from './reference-row';

/** What the reference says of a food, for a cook to look at and to take over or not; it enters no figure by itself. */
export interface ReferenceFood {
  readonly name: string;
  readonly also: readonly string[];
  /** y: usable weight / bought weight; null where the source states none. */
  readonly usableYield: number | null;
  /** What is thrown away, in the source's words: "Shells". Null where nothing is. */
  readonly waste: string | null;
  /** g per ml of what fills the measure as it is said; null where no measure is weighed. Rounded averages: dry goods spread by a tenth. */
  readonly densityGPerMl: number | null;
  /** How the measure was filled: "cup unsifted", "cup, sliced". */
  readonly measuredAs: string | null;
  readonly source: { readonly title: string; readonly number: string; readonly description: string };
}

const TITLE = 'USDA National Nutrient Database for Standard Reference, release 28';

/** density = grams that fill a measure / millilitres of the measure. */
function foodOf([name, number, description, wastePct, waste, weighed, also]: ReferenceRow): ReferenceFood {
  const measure = weighed && unitNamed(weighed[0], 'us');
  return {
    name,
    also,
    usableYield: wastePct === null ? null : (100 - wastePct) / 100,
    waste,
    densityGPerMl: weighed && measure ? weighed[1] / measure.size : null,
    measuredAs: weighed?.[2] ?? null,
    source: { title: TITLE, number, description },
  };
}

export const REFERENCE_FOODS: readonly ReferenceFood[] = FOOD_ROWS.map(foodOf);

const search = nameSearch(REFERENCE_FOODS, ({ name, also }) => [name, ...also]);

/** The foods of the reference that are named most like an ingredient, the likest first; none where none is alike. */
export function suggestedFoods(ingredient: string, limit?: number): readonly ReferenceFood[] {
  return search(ingredient, limit);
}
