import type { UnitCosts } from '../costed-period';
import { kasavanaSmith } from '../mix/kasavana-smith';
import { menuAverages } from '../mix/menu-averages';
import type { MixFigures, QuadrantClass } from '../mix/mix-model';
import { upward } from '../passes';
import { editedPrices, editedSales } from './edited-prices';
import type { PriceEdit } from './edits';
import type { PricedItem, PriceModel } from './price-model';

/** One item at some prices. Money in venue currency per portion; null where it is not known. */
export interface PricedFigures {
  readonly item: PricedItem;
  readonly netPrice: number | null;
  readonly revenue: number | null;
  readonly plateCost: number | null;
  /** Of the plate cost, what food-cost % counts. */
  readonly food: number | null;
  /** Food-cost %, as a fraction of the achieved price. */
  readonly foodCost: number | null;
  readonly margin: number | null;
  readonly contribution: number | null;
  readonly class: QuadrantClass | null;
}

/** A section at some prices; the last four are of the items whose margin is known. */
export interface PricedMix {
  readonly items: readonly PricedFigures[];
  readonly meanMargin: number | null;
  readonly revenue: number;
  readonly plateCost: number;
  readonly contribution: number | null;
  readonly foodCost: number | null;
}

/** The section with some edits made: the figures that the menu mix has of the facts themselves so edited. */
export function pricedMix(model: PriceModel, edits: readonly PriceEdit[] = []): PricedMix {
  if (edits.length > 0) return mixAt(model, unitCosts(model, editedPrices(model, edits)), edits);
  const known = unedited.get(model) ?? mixAt(model, unitCosts(model, model.prices), edits);
  unedited.set(model, known);
  return known;
}

// A slider asks for the same mix before each of its steps, and for the costs of what it does not move.
const unedited = new WeakMap<PriceModel, PricedMix>();
const passed = new WeakMap<Float64Array, { readonly model: PriceModel; readonly costs: Float64Array }>();

/** Unit costs of everything at some prices of what is bought; entry node * segments + segment. */
export function unitCosts(model: PriceModel, prices: UnitCosts): UnitCosts {
  const pass = (of: Float64Array): Float64Array => {
    const known = passed.get(of);
    if (known?.model === model) return known.costs;
    const costs = upward(model.lines, of, model.segments);
    if (Object.values(model.prices).includes(of)) passed.set(of, { model, costs });
    return costs;
  };
  return { food: pass(prices.food), packaging: pass(prices.packaging), estimate: pass(prices.estimate) };
}

/** What a portion of an item costs: f = food (1 + q) + estimate + packaging, and its food alone; null where it is not costed. */
export function portionCost(
  model: PriceModel,
  item: PricedItem,
  costs: UnitCosts,
): { readonly total: number; readonly food: number } | null {
  if (!item.isCosted) return null;
  const q = 1 + model.venue.qFactor;
  let food = 0;
  let packaging = 0;
  for (const { node, segment, amount } of item.takes) {
    const cell = node * model.segments + segment;
    food += amount * ((costs.food[cell] as number) * q + (costs.estimate[cell] as number));
    packaging += amount * (costs.packaging[cell] as number);
  }
  return { total: food + packaging, food };
}

function mixAt(model: PriceModel, costs: UnitCosts, edits: readonly PriceEdit[]): PricedMix {
  const figured = model.items.map((item): Omit<PricedFigures, 'class'> => {
    const { revenue, netPrice } = editedSales(item, edits);
    const cost = portionCost(model, item, costs);
    const margin = cost === null || netPrice === null ? null : netPrice - cost.total;
    return {
      item,
      ...{ netPrice, revenue, margin },
      plateCost: cost?.total ?? null,
      food: cost?.food ?? null,
      foodCost: cost === null || netPrice === null || netPrice <= 0 ? null : cost.food / netPrice,
      contribution: margin === null ? null : margin * item.sold,
    };
  });
  const looked = figured.map(({ item, netPrice, margin, food }): MixFigures | null => {
    if (margin === null || netPrice === null || food === null) return null;
    return { sold: item.sold, expected: item.expected, margin, netPrice, food, labour: null };
  });
  const menu = menuAverages(looked, model.venue.popularityFactor, null);
  const items = figured.map((each, index): PricedFigures => {
    const figures = looked[index];
    return { ...each, class: figures && menu && each.item.hasDays ? kasavanaSmith(figures, menu) : null };
  });
  return { items, meanMargin: menu?.meanMargin ?? null, ...totals(items) };
}

function totals(items: readonly PricedFigures[]): Omit<PricedMix, 'items' | 'meanMargin'> {
  const costed = items.filter(({ margin }) => margin !== null);
  const sum = (of: (each: PricedFigures) => number): number => costed.reduce((total, each) => total + of(each), 0);
  const revenue = sum((each) => each.revenue ?? 0);
  const plateCost = sum(({ plateCost, item }) => (plateCost ?? 0) * item.sold);
  const food = sum((each) => (each.food ?? 0) * each.item.sold);
  return {
    revenue,
    plateCost,
    contribution: costed.length > 0 ? revenue - plateCost : null,
    foodCost: costed.length > 0 && revenue > 0 ? food / revenue : null,
  };
}
