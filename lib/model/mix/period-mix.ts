import type { Period } from '../../core/periods';
import type { CostedPeriod } from '../costed-period';
import type { ItemId } from '../facts';
import type { WaitingInPeriod } from '../waiting-sales';
import type { MixTotals } from './mix-totals';

/** What is told through several periods of the mix of each: a part of what the mix by itself says. */
export interface MixOfPeriod {
  readonly totals: MixTotals;
  readonly thresholds: { readonly margin: number | null };
  readonly coverage: number | null;
  readonly tradingDays: number;
  readonly waiting: WaitingInPeriod;
  readonly items: readonly MixedItem[];
}

export interface MixedItem {
  readonly id: ItemId;
  readonly item: string;
  readonly section: string | null;
  readonly sold: number;
  readonly daysOnSale: number;
  readonly margin: number | null;
}

/** A period with the mix of its menu. */
export interface PeriodMix {
  readonly period: Period;
  readonly costed: CostedPeriod;
  readonly mix: MixOfPeriod;
}
