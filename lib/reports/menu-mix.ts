import type { DayRange } from '../core/days';
import type { ItemId, ItemKind, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';

/** Kasavana & Smith's four classes. */
export type MixClass = 'star' | 'plowhorse' | 'puzzle' | 'dog';

/** How a missing cost stands: what is known of it is a floor, never the cost. */
export interface HalfKnown {
  /** Sum of the known part, per portion; null where nothing is known. */
  readonly floor: number | null;
  /** Ingredient lines reached by the recipe, and how many of them have no cost. */
  readonly lines: number;
  readonly missing: number;
}

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
  readonly revenue: number;
  /** Portion-weighted mean over the period, q included; null where not costed. */
  readonly plateCost: number | null;
  readonly halfKnown: HalfKnown | null;
  /** The cost is the owner's estimate. */
  readonly estimated: boolean;
  readonly foodCost: number | null;
  readonly margin: number | null;
  /** margin x sold: what it left in the period. */
  readonly contribution: number | null;
  readonly class: MixClass | null;
  /** Share of resamples in each class; null where there are too few trading days or no class. */
  readonly classShares: Readonly<Record<MixClass, number>> | null;
  readonly settled: boolean | null;
  /** Where it is not settled: the two classes it lies between, likelier first. */
  readonly between: readonly [MixClass, MixClass] | null;
  /** Standard deviation over resamples, of the share and of margin less the average margin. */
  readonly spread: { readonly share: number; readonly margin: number } | null;
}

export interface MenuMix {
  readonly venue: VenueSettings;
  readonly period: DayRange;
  readonly section: string | null;
  readonly tradingDays: number;
  readonly resamples: number | null;
  readonly thresholds: {
    /** popularity factor / n; null where items were on sale on different days, so that each has its own. */
    readonly popularity: number | null;
    /** Portion-weighted mean margin of the costed items. */
    readonly margin: number | null;
  };
  readonly totals: {
    readonly sold: number;
    readonly comps: number;
    readonly revenue: number;
    /** Cost of the paid portions, revenue, and what they left, of the costed items only. */
    readonly costedSold: number;
    readonly costedRevenue: number;
    readonly plateCost: number | null;
    readonly foodCost: number | null;
    readonly margin: number | null;
  };
  /** Share of the portions whose margin is known; null where nothing was sold. */
  readonly coverage: number | null;
  /** What to cost next: items without cost, most sold first, with the share of portions they would bring. */
  readonly costNext: readonly { readonly item: string; readonly share: number }[];
  readonly items: readonly MixItem[];
  readonly issues: readonly Issue[];
}
