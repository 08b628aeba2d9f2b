import { type Day, isWithin } from '../core/days';
import type { BaseUnit } from '../core/units';
import type { AllergenList } from '../model/allergens/allergen-lists';
import { type WhatsInIt, whatsInIt } from '../model/allergens/whats-in-it';
import { costLine } from '../model/cost-line';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, ItemKind, RecipeLine, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { inOrder } from '../model/issue-list';
import { issuesOf } from '../model/reached';
import type { RecipePiece } from '../model/recipe-piece';
import { inSegment, segmentOf } from '../model/segments';
import { type WorkedRecipe, workedRecipe } from '../model/worked-recipe';

export interface CardOptions {
  /** How often the recipe as it is written: portions of what is plated, batches of a component. Above zero. */
  readonly times: number;
  readonly list: AllergenList;
}

/** A line of a card, scaled. */
export interface CardLine {
  readonly position: number;
  readonly item: string;
  readonly kind: ItemKind;
  /** In the unit in which the line is written. */
  readonly quantity: number;
  readonly unit: string;
  readonly as: RecipeLine['as'];
  readonly use: string | null;
  readonly part: string | null;
  readonly choice: string | null;
  readonly share: number | null;
  /** Only for what is sold there. */
  readonly channel: string | null;
  /** It is made beside, not used. */
  readonly byProduct: boolean;
  /** y; null where it is not known. */
  readonly usableYield: number | null;
  /** What is taken from the store for it: quantity * share / y, in the base unit of the item; null where it cannot be worked out. */
  readonly taken: number | null;
  readonly takenUnit: BaseUnit | null;
}

/** A recipe scaled to some portions or batches. */
export interface RecipeCard {
  readonly venue: VenueSettings;
  readonly id: ItemId;
  readonly item: string;
  readonly kind: ItemKind;
  readonly day: Day;
  readonly times: number;
  readonly recipe: WorkedRecipe;
  /** What it gives in all, before breakage, in `recipe.usableUnit`; null where a batch is not measured. */
  readonly gives: number | null;
  /** Of that, what can be served: gives * (1 - r). */
  readonly serves: number | null;
  readonly lines: readonly CardLine[];
  /** For so many; null where none are stated. */
  readonly handsOnMinutes: number | null;
  readonly grade: string | null;
  readonly platingMinutes: number | null;
  readonly platingGrade: string | null;
  readonly shelfLifeDays: number | null;
  readonly thrownAtClose: boolean;
  /** In the unit of the stated yield. */
  readonly smallestBatch: { readonly quantity: number; readonly unit: string } | null;
  readonly whatsInIt: WhatsInIt;
  /** Of the recipe itself and of what its lines ask for. */
  readonly issues: readonly Issue[];
}

/**
 * The recipe in force on a day of the period, every quantity and minute times `times`. Null where none is in force, or the item is not
 * among the things of the period, which has to be costed for everything.
 */
export function recipeCard(
  period: CostedPeriod,
  item: ItemId,
  day: Day,
  { times, list }: CardOptions,
): RecipeCard | null {
  if (!isWithin(day, period.range)) throw new RangeError(`day ${day} is outside the period`);
  const node = period.nodeOf.get(item);
  const thing = node === undefined ? undefined : period.things[node];
  const segment = segmentOf(period.segments, day);
  const piece = node === undefined ? null : inSegment(period.recipes[node] ?? [], segment);
  if (node === undefined || thing === undefined || piece === null) return null;
  const recipe = workedRecipe(period, node, segment, piece);
  const { version } = piece;
  const gives = recipe.usable === null ? null : recipe.usable * times;
  const scaled = (minutes: number | null): number | null => (minutes === null ? null : minutes * times);
  const { smallestBatch, yieldUnit } = version;
  return {
    ...{ venue: period.venue, id: item, item: thing.name, kind: thing.kind, day, times, recipe, gives },
    serves: gives === null ? null : gives * (1 - version.breakage),
    lines: version.lines.map((line) => cardLine(period, segment, piece, line, times)),
    ...{ handsOnMinutes: scaled(version.handsOnMinutes), grade: version.grade },
    ...{ platingMinutes: scaled(version.platingMinutes), platingGrade: version.platingGrade },
    ...{ shelfLifeDays: version.shelfLifeDays, thrownAtClose: version.thrownAtClose },
    smallestBatch: smallestBatch === null ? null : { quantity: smallestBatch, unit: yieldUnit ?? 'g' },
    whatsInIt: whatsInIt(period, node, segment, list),
    issues: issuesOf(period, [node])
      .filter(({ code }) => code !== 'setting-defaulted')
      .sort(inOrder),
  };
}

function cardLine(
  period: CostedPeriod,
  segment: number,
  piece: RecipePiece,
  line: RecipeLine,
  times: number,
): CardLine {
  const thing = period.things[period.nodeOf.get(line.item) ?? -1];
  const { quantity, unit, as, use, part, choice, choiceShare: share, channel, position } = line;
  // what a channel adds stands with its packing, apart from the recipe
  const index = piece.lines.indexOf(line);
  const worked = index < 0 ? null : costLine(period, segment, piece, index, piece.usable * times);
  const taken = worked === null || worked.bought === null ? null : worked.bought * (1 - piece.version.breakage);
  return {
    ...{ position, item: thing?.name ?? '', kind: thing?.kind ?? 'ingredient', quantity: quantity * times, unit },
    ...{ as, use, part, choice, share, channel, byProduct: line.byProductCredit !== null },
    ...{ usableYield: worked?.usableYield ?? null, taken, takenUnit: worked?.boughtUnit ?? null },
  };
}
