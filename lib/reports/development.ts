import type { Day, DayRange } from '../core/days';
import { byText, grouped } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { issueList } from '../model/issue-list';
import { itemFigures } from '../model/item-figures';
import { isOnMenu } from '../model/menu-price';
import { meanMargin } from '../model/mix/mean-margin';
import { sectionNodes } from '../model/mix/section';
import { isOffered, itemSection } from '../model/offered';
import { plateCost } from '../model/plate-cost';
import type { TrialCost } from '../model/trial-costs';

/** A dish in the making, and what it cost so far. Money is venue currency. */
export interface DevelopedDish {
  readonly id: ItemId;
  readonly item: string;
  readonly trials: readonly {
    readonly day: Day;
    readonly hours: number;
    readonly grade: string;
    readonly outcome: string | null;
    readonly labour: number | null;
    readonly ingredients: number | null;
  }[];
  readonly hours: number;
  readonly labour: number | null;
  readonly ingredients: number | null;
  /** Labour + ingredients of all its trials; null where any of it is not known. */
  readonly cost: number | null;
  /** CM of the new dish: of the period where it is on the menu or sold, else the planned price less the plate cost of its last day. */
  readonly margin: number | null;
  /** CM that its guests would otherwise have brought: of the dish named, else the mean of the others in its section. */
  readonly otherwise: number | null;
  /** Portions until the development is paid back; null where the dish brings no more than what it stands in for, or it is not known. */
  readonly payback: number | null;
}

export interface Development {
  readonly venue: VenueSettings;
  readonly period: DayRange;
  readonly dishes: readonly DevelopedDish[];
  readonly issues: readonly Issue[];
}

export interface DevelopmentOptions {
  /** Planned net prices of dishes that are not on the menu yet. */
  readonly prices?: ReadonlyMap<ItemId, number>;
  /** What guests of a dish would otherwise have ordered. */
  readonly instead?: ReadonlyMap<ItemId, ItemId>;
}

/**
 * What dishes in the making cost, by name, and in how many portions they pay it back: development cost / (CM of the new dish - CM its
 * guests would otherwise have brought). The period has to be costed for everything where a dish is not on the menu yet.
 */
export function development(
  period: CostedPeriod,
  trials: readonly TrialCost[],
  options: DevelopmentOptions = {},
): Development {
  const found = issueList();
  for (const { issues } of trials) for (const issue of issues) found.add(issue);
  const dishes = [...grouped(trials, ({ trial }) => trial.item)].flatMap(([id, costs]) => {
    const node = period.nodeOf.get(id);
    const name = node === undefined ? undefined : period.things[node]?.name;
    return node === undefined || name === undefined ? [] : [developed(period, id, node, name, costs, options)];
  });
  return {
    venue: period.venue,
    period: period.range,
    dishes: dishes.sort((a, b) => byText(nameKey(a.item), nameKey(b.item))),
    issues: found.issues(),
  };
}

function developed(
  period: CostedPeriod,
  id: ItemId,
  node: number,
  item: string,
  costs: readonly TrialCost[],
  { prices, instead }: DevelopmentOptions,
): DevelopedDish {
  const labour = sumOf(costs.map((each) => each.labour));
  const ingredients = sumOf(costs.map((each) => each.ingredients));
  const cost = labour === null || ingredients === null ? null : labour + ingredients;
  const margin = marginOf(period, node) ?? plannedMargin(period, node, prices?.get(id));
  const named = instead?.get(id);
  const otherwise =
    named === undefined ? marginOfOthers(period, node) : marginOf(period, period.nodeOf.get(named) ?? -1);
  return {
    ...{ id, item },
    trials: costs.map(({ trial, ...money }) => ({
      ...{ day: trial.day, hours: trial.hours, grade: trial.grade, outcome: trial.outcome },
      ...{ labour: money.labour, ingredients: money.ingredients },
    })),
    hours: costs.reduce((sum, { trial }) => sum + trial.hours, 0),
    ...{ labour, ingredients, cost, margin, otherwise, payback: paybackPortions(cost, margin, otherwise) },
  };
}

/**
 * Portions until a development is paid back: cost / (margin - otherwise), all in venue currency, per portion but for the cost. Null
 * where the difference is not positive: no number of portions pays it back.
 */
export function paybackPortions(cost: number | null, margin: number | null, otherwise: number | null): number | null {
  if (cost === null || margin === null || otherwise === null || margin <= otherwise) return null;
  return cost / (margin - otherwise);
}

/** CM of an item over all channels; null where it is neither on the menu nor sold, or not costed. */
function marginOf(period: CostedPeriod, node: number): number | null {
  const thing = period.things[node];
  if (!thing || !isOffered(thing)) return null;
  return figuresOf(period, node).margin;
}

function figuresOf(period: CostedPeriod, node: number): ReturnType<typeof itemFigures> {
  const { menu = [], sales = [] } = period.things[node] ?? {};
  const { from, to } = period.range;
  const days = Array.from({ length: to - from }, (_, index) => (from + index) as Day);
  const onMenu = days.filter((day) => isOnMenu(menu, day));
  return itemFigures(
    period,
    node,
    sales,
    onMenu,
    menu.map(({ channel }) => channel),
  );
}

function plannedMargin(period: CostedPeriod, node: number, price: number | undefined): number | null {
  if (price === undefined) return null;
  const { complete, total } = plateCost(period, node, period.segments.count - 1);
  return complete ? price - total : null;
}

/** The mean margin of a portion of the others in its section; of the whole menu where it has no section, or none is sold in it. */
function marginOfOthers(period: CostedPeriod, node: number): number | null {
  const thing = period.things[node];
  const section = thing ? itemSection(thing) : null;
  const others = (of: string | null): number | null =>
    meanMargin(
      sectionNodes(period, of)
        .filter((each) => each !== node)
        .map((each) => figuresOf(period, each)),
    );
  return (section === null ? null : others(section)) ?? others(null);
}

function sumOf(amounts: readonly (number | null)[]): number | null {
  return amounts.reduce((sum: number | null, each) => (sum === null || each === null ? null : sum + each), 0);
}
