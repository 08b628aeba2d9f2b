import type { DayRange } from '../core/days';
import type { BaseUnit } from '../core/units';
import { type Basket, type BasketLine, basketOf } from '../model/bridge/basket';
import { type ItemOverPeriod, itemOverPeriod } from '../model/bridge/item-over-period';
import { portionNeed } from '../model/bridge/portion-need';
import type { CostedPeriod } from '../model/costed-period';
import { extrasGiven, givenWeights } from '../model/extras';
import type { ItemId, ItemKind, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { inOrder } from '../model/issue-list';
import type { ItemFigures } from '../model/item-figures';
import { type Work, workByGrade } from '../model/labour-by-grade';
import { labourIssues } from '../model/labour-issues';
import { itemSection } from '../model/offered';
import { labourPerPortion, lossPerPortion } from '../model/per-portion';
import type { PortionWeight } from '../model/portion-weights';
import { issuesOf, reachedFrom } from '../model/reached';
import { lossPerUnit, smallBatchLosses } from '../model/small-batch/small-batch-loss';
import { withoutMinutes } from '../model/without-minutes';

/** What one portion takes of something bought (or of the owner's estimate), as the mean of the period. */
export interface DishIngredient {
  readonly id: ItemId;
  readonly item: string;
  readonly isEstimate: boolean;
  readonly quantity: number;
  readonly unit: BaseUnit;
  /** q included; venue currency. They sum to the plate cost. */
  readonly cost: number;
}

/** The work in one portion, in venue currency; null where it is not known. */
export interface DishWork {
  /** Hands-on work of everything in it and the plating, by grade; what states no minutes is not in it. */
  readonly handsOn: readonly Work[];
  readonly plating: readonly Work[];
  readonly recipeLabour: number | null;
  readonly platingMinutes: number | null;
  readonly platingCost: number | null;
  /** Margin - recipe labour - plating. */
  readonly afterLabour: number | null;
  readonly marginPerPlatingMinute: number | null;
  /** Recipes in it that state no minutes. */
  readonly withoutMinutes: readonly string[];
}

/** What a component of it loses because its batch is larger than what is used while it keeps. */
export interface DishLoss {
  readonly id: ItemId;
  readonly item: string;
  /** thrown / made of the whole kitchen; null where it is not known. */
  readonly lost: number | null;
}

/** One dish in depth over a period. Money is venue currency net of sales tax, per portion. */
export interface Dish {
  readonly venue: VenueSettings;
  readonly period: DayRange;
  readonly id: ItemId;
  readonly item: string;
  readonly kind: ItemKind;
  readonly section: string | null;
  /** Components of its recipe of the last day; null where it has none. */
  readonly components: number | null;
  /** Null where it was neither on the menu nor sold. */
  readonly figures: (ItemFigures & Pick<ItemOverPeriod, 'listPrice' | 'daysOnSale' | 'share'>) | null;
  /** What every guest was given of it; null where it is no extra. */
  readonly given: { readonly covers: number; readonly perCover: number | null; readonly cost: number | null } | null;
  /** Most cost first; empty where it is not costed. */
  readonly bought: readonly DishIngredient[];
  readonly work: DishWork | null;
  /** Its share, by use, of what small batches lose: beside the plate cost, never inside it. */
  readonly loss: number | null;
  readonly losses: readonly DishLoss[];
  readonly issues: readonly Issue[];
}

/**
 * A dish, set menu or extra in depth, over all channels, among the items of a section (null: the whole menu). Null where it is not among
 * the things of the period.
 */
export function dish(period: CostedPeriod, item: ItemId, section: string | null): Dish | null {
  const node = period.nodeOf.get(item);
  const thing = node === undefined ? undefined : period.things[node];
  if (node === undefined || thing === undefined) return null;
  const over = itemOverPeriod(period, node, section);
  const given = thing.kind === 'extra' ? (extrasGiven(period).find((each) => each.node === node) ?? null) : null;
  const weights = over?.weights ?? givenWeights(period, node);
  const need = weights.length === 0 ? null : portionNeed(period, node, weights);
  const isCosted = over ? over.figures.plateCost !== null : given?.perCover !== null;
  const losses = smallBatchLosses(period);
  const inside = reachedFrom(period, [node]);
  return {
    ...{ venue: period.venue, period: period.range, id: item, item: thing.name, kind: thing.kind },
    section: itemSection(thing),
    components: componentsOf(period, node),
    figures: over && {
      ...{ ...over.figures, listPrice: over.listPrice, daysOnSale: over.daysOnSale, share: over.share },
    },
    given: given && { covers: given.covers, perCover: given.perCover, cost: given.cost },
    bought: need !== null && isCosted ? ingredients(period, basketOf(period, need)) : [],
    work: need && workIn(period, node, over, weights, need),
    loss: weights.length === 0 ? null : lossPerPortion(period, lossPerUnit(period, losses), node, weights),
    losses: losses
      .filter((each) => inside.has(each.node) && each.used > 0)
      .map(({ thing: { id, name }, lost }) => ({ id, item: name, lost }))
      .sort((a, b) => (b.lost ?? -1) - (a.lost ?? -1)), // equal ones stay in the order of names
    issues: [...issuesOf(period, [node]), ...labourIssues(period, [node])].sort(inOrder),
  };
}

function componentsOf(period: CostedPeriod, node: number): number | null {
  const piece = period.recipes[node]?.at(-1);
  if (!piece || piece.children.length === 0) return null;
  return new Set(piece.children.filter((child) => period.things[child]?.kind === 'component')).size;
}

function ingredients(period: CostedPeriod, basket: Basket): readonly DishIngredient[] {
  const unitOf = ({ id, isEstimate }: BasketLine): BaseUnit =>
    (isEstimate ? null : period.measures[period.nodeOf.get(id) ?? -1]?.at(-1)?.measure?.base) ?? 'each';
  return [...basket.values()]
    .map((line) => ({
      ...{ id: line.id, item: line.item, isEstimate: line.isEstimate, quantity: line.need, unit: unitOf(line) },
      cost: line.cost,
    }))
    .sort((a, b) => b.cost - a.cost);
}

function workIn(
  period: CostedPeriod,
  node: number,
  over: ItemOverPeriod | null,
  weights: readonly PortionWeight[],
  need: Float64Array,
): DishWork {
  const plating = workByGrade(period, need, period.labour.plating);
  const { recipeLabour, platingMinutes } = labourPerPortion(period, node, weights);
  const platingCost =
    platingMinutes === null
      ? null
      : plating.reduce((sum: number | null, { cost }) => (sum === null || cost === null ? null : sum + cost), 0);
  const margin = over?.figures.margin ?? null;
  const isKnown = margin !== null && recipeLabour !== null && platingCost !== null;
  return {
    ...{ handsOn: workByGrade(period, need, period.labour.handsOn), plating },
    ...{ recipeLabour, platingMinutes, platingCost },
    afterLabour: isKnown ? margin - recipeLabour - platingCost : null,
    marginPerPlatingMinute: margin === null || !platingMinutes ? null : margin / platingMinutes,
    withoutMinutes: withoutMinutes(period, node),
  };
}
