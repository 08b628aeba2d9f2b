import type { DayRange } from '../core/days';
import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, ItemKind, VenueSettings } from '../model/facts';
import { portionsAboveCovers } from '../model/guest-orders';
import type { Issue } from '../model/issue';
import type { HalfKnown } from '../model/item-figures';
import { labourIssues } from '../model/labour-issues';
import type { ClassShares } from '../model/mix/certainty';
import { KASAVANA_SMITH } from '../model/mix/kasavana-smith';
import { classIssues, modelIssues, revenueIssues, sectionIssues } from '../model/mix/mix-issues';
import type { MenuAverages, MixClass, MixModel, ModelName } from '../model/mix/mix-model';
import { mixTotals } from '../model/mix/mix-totals';
import { type ClassedItem, RESAMPLES, sectionMix } from '../model/mix/section-mix';
import { verdict } from '../model/mix/settled';
import { type SetMenus, spreadSetMenus } from '../model/mix/spread-set-menus';
import { itemSection } from '../model/offered';
import { issuesOf } from '../model/reached';
import { mostTouchedFirst } from '../model/touched';
import { portionsSold, type WaitingInPeriod, waitingIssues } from '../model/waiting-sales';

export type { HalfKnown } from '../model/item-figures';
export type { MixClass, ModelName } from '../model/mix/mix-model';

export interface MixItem {
  readonly id: ItemId;
  readonly item: string;
  readonly kind: ItemKind;
  readonly section: string | null;
  /** Paid portions. */
  readonly sold: number;
  readonly comps: number;
  /** sold / sum of sold; 0 where nothing was sold. */
  readonly share: number;
  /** Portions it would have had if each day's portions had been shared equally among that day's items. */
  readonly expected: number;
  readonly daysOnSale: number;
  /** Achieved net price; the net menu price where none was sold; null where neither is known. */
  readonly netPrice: number | null;
  /** As far as it is known; null where it is known of no portion. */
  readonly revenue: number | null;
  /** Portion-weighted mean over the period, q included; null where not costed. */
  readonly plateCost: number | null;
  readonly halfKnown: HalfKnown | null;
  /** An owner's estimate has a part in the cost; never where there is none. */
  readonly estimated: boolean;
  readonly foodCost: number | null;
  readonly margin: number | null;
  /** margin x sold: what it left in the period. */
  readonly contribution: number | null;
  readonly class: MixClass | null;
  /** Share of resamples in each class; null where there are too few trading days or no class. */
  readonly classShares: ClassShares | null;
  /** Share of resamples in which it leaves less than the average; null where classShares is. */
  readonly leavesLess: number | null;
  readonly settled: boolean | null;
  /** Where it is not settled: the two classes it lies between, likelier first. */
  readonly between: readonly [MixClass, MixClass] | null;
  /** Standard deviation over resamples, of the share and of margin less the average margin. */
  readonly spread: { readonly share: number; readonly margin: number } | null;
}

export interface MenuMix {
  readonly venue: VenueSettings;
  readonly period: DayRange;
  /** By which the items are classed. */
  readonly model: ModelName;
  readonly section: string | null;
  readonly setMenus: SetMenus;
  /** Paid set menus of the whole venue, wherever they stand. */
  readonly setMenusSold: number;
  readonly tradingDays: number;
  readonly resamples: number | null;
  readonly thresholds: {
    /** popularity factor / n; null where items were on sale on different days, so that each has its own. */
    readonly popularity: number | null;
    /** Portion-weighted mean margin of the costed items. */
    readonly margin: number | null;
    /** Of models that look at them, null in the others: the menu's food-cost %, what an item left as a mean, goal value, mean labour. */
    readonly foodCost: number | null;
    readonly contribution: number | null;
    readonly goalValue: number | null;
    readonly labour: number | null;
  };
  readonly totals: {
    readonly sold: number;
    readonly comps: number;
    /** As far as it is known; null where it is known of no portion. */
    readonly revenue: number | null;
    /** Cost of the paid portions, revenue, and what they left, of the costed items only. */
    readonly costedSold: number;
    readonly costedRevenue: number;
    /** Of the costed portions, those with an owner's estimate in their cost. */
    readonly estimatedSold: number;
    readonly plateCost: number | null;
    readonly foodCost: number | null;
    readonly margin: number | null;
  };
  /** Share of the portions whose margin is known; null where nothing was sold. */
  readonly coverage: number | null;
  /** Sold under names that nobody knows, in the whole venue: in no other figure. */
  readonly waiting: WaitingInPeriod;
  /** Whether any stock was counted in the period. */
  readonly stockCounted: boolean;
  /** What to cost next: items without cost, most sold first, with the share of portions they would bring. */
  readonly costNext: readonly { readonly item: string; readonly share: number }[];
  readonly items: readonly MixItem[];
  readonly issues: readonly Issue[];
}

export interface MenuMixOptions {
  /** Set menus in a section of their own where nothing is said; spread: portions, revenue and cost among their courses. */
  readonly setMenus?: SetMenus;
  /** Menu section; null is the whole menu: items of department food that are not set menus. */
  readonly section: string | null;
  /** The model by which items are classed; Kasavana & Smith's where nothing is said. */
  readonly model?: MixModel;
  /** The mix of the period before, which has to agree before a class is called settled. */
  readonly previous?: MenuMix;
  /** Resamples behind the certainty of each class, 2,000 where nothing is said; 0 leaves it out. */
  readonly resamples?: number;
}

/**
 * What sells and what leaves, and how sure that is: shares, margins and a model's classes of a section's items over all channels. Most contribution first; items without a margin after them, most sold first.
 */
export function menuMix(stated: CostedPeriod, options: MenuMixOptions): MenuMix {
  const { setMenus = 'section' } = options;
  const { period, issues } = setMenus === 'spread' ? spreadSetMenus(stated) : { period: stated, issues: [] };
  const { section, previous, model = KASAVANA_SMITH, resamples = RESAMPLES } = options;
  const mix = sectionMix(period, section, model, resamples);
  const totals = mixTotals(mix.items);
  const nodes = mix.items.map(({ node }) => node);
  const days = mix.trading.days.length;
  const isOnSaleAlways = days > 0 && mix.items.every(({ daysOnSale }) => daysOnSale === days);
  const uncosted = mix.items.filter(({ plateCost, sold }) => plateCost === null && sold > 0);
  return {
    venue: period.venue,
    period: period.range,
    model: model.name,
    section,
    setMenus,
    setMenusSold: setMenusSold(stated),
    tradingDays: days,
    resamples: mix.resamples,
    thresholds: {
      popularity: isOnSaleAlways ? period.venue.popularityFactor / mix.items.length : null,
      margin: mix.menu?.meanMargin ?? null,
      ...thresholdsOf(model.name, mix.menu),
    },
    totals,
    coverage: totals.sold > 0 ? totals.costedSold / totals.sold : null,
    waiting: period.waiting,
    stockCounted: period.stockCounted,
    costNext: uncosted
      .map(({ thing, sold }) => ({ item: thing.name, share: sold / totals.sold }))
      .sort((a, b) => b.share - a.share || byText(nameKey(a.item), nameKey(b.item))),
    items: mix.items.map((item) => mixItem(item, totals.sold, previous)).sort(mostLeftFirst),
    issues: mostTouchedFirst(period, mix.items, issuesOf(period, nodes), [
      ...waitingIssues(period.venue.name, period.waiting, portionsSold(period.things)),
      ...issues,
      ...modelIssues(period.venue.name, model.name, period.venue),
      ...(model.asksLabour ? labourIssues(period, nodes) : []),
      ...sectionIssues(section ?? period.venue.name, mix.items.length, days, period.waiting.rows > 0),
      ...mix.items.flatMap((item) => revenueIssues(item.thing.name, item)),
      ...mix.items.flatMap((item) => classIssues(item.thing.name, item.daysOnSale, days)),
      ...(section === null ? portionsAboveCovers(stated) : []),
    ]),
  };
}

function setMenusSold({ things }: CostedPeriod): number {
  const sales = things.flatMap((thing) => (thing.kind === 'set_menu' ? thing.sales : []));
  return sales.reduce((sum, { sold }) => sum + sold, 0);
}

/** The thresholds that a model has beside popularity and margin. */
function thresholdsOf(
  model: ModelName,
  menu: MenuAverages | null,
): Pick<MenuMix['thresholds'], 'foodCost' | 'contribution' | 'goalValue' | 'labour'> {
  const isCut = model === 'miller' || model === 'pavesic';
  return {
    foodCost: isCut ? (menu?.foodCost ?? null) : null,
    contribution: model === 'pavesic' ? (menu?.meanContribution ?? null) : null,
    goalValue: model === 'goal-value' ? (menu?.goalValue ?? null) : null,
    labour: model === 'labour' ? (menu?.meanLabour ?? null) : null,
  };
}

function mixItem(item: ClassedItem, totalSold: number, previous: MenuMix | undefined): MixItem {
  const { thing, certainty, sold, margin } = item;
  const classShares = certainty?.classShares ?? null;
  const before = previous?.items.find(({ id }) => id === thing.id) ?? null;
  return {
    id: thing.id,
    item: thing.name,
    kind: thing.kind,
    section: itemSection(thing),
    sold,
    comps: item.comps,
    share: totalSold > 0 ? sold / totalSold : 0,
    expected: item.expected,
    daysOnSale: item.daysOnSale,
    netPrice: item.netPrice,
    revenue: item.revenue,
    plateCost: item.plateCost,
    halfKnown: item.halfKnown,
    estimated: item.estimated,
    foodCost: item.foodCost,
    margin,
    contribution: margin === null ? null : margin * sold,
    class: item.class,
    classShares,
    leavesLess: certainty?.leavesLess ?? null,
    ...verdict({ class: item.class, classShares }, before),
    spread: certainty?.spread ?? null,
  };
}

function mostLeftFirst(a: MixItem, b: MixItem): number {
  const name = byText(nameKey(a.item), nameKey(b.item));
  if (a.contribution === null && b.contribution === null) return b.sold - a.sold || name;
  if (a.contribution === null || b.contribution === null) return a.contribution === null ? 1 : -1;
  return b.contribution - a.contribution || name;
}
