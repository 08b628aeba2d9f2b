import type { CostedPeriod } from '../costed-period';
import { type ItemFigures, itemFigures } from '../item-figures';
import { menuDays } from '../menu-price';
import type { Thing } from '../things';
import { type Certainty, certainty } from './certainty';
import { kasavanaSmith, type MixClass } from './kasavana-smith';
import { meanMargin } from './mean-margin';
import { mixDays } from './mix-days';
import { DAYS_FOR_CERTAINTY, daysForClass } from './mix-issues';
import { sectionNodes } from './section';
import { daysOnSale, expectedByDay, type SectionDays, sectionDays } from './section-days';

/** One item of a section: its figures over all channels, and its class. */
export interface ClassedItem extends ItemFigures {
  readonly node: number;
  readonly thing: Thing;
  readonly expected: number;
  readonly daysOnSale: number;
  readonly class: MixClass | null;
  readonly certainty: Certainty | null;
}

export interface SectionMix {
  readonly items: readonly ClassedItem[];
  readonly trading: SectionDays;
  readonly meanMargin: number | null;
  /** Resamples that stand behind the certainty; null where there is none. */
  readonly resamples: number | null;
}

/** Resamples behind every statement of certainty, and the seed that makes them the same each time. */
export const RESAMPLES = 2000;
const SEED = 1982;

/** The items of a section, by name, classed by Kasavana & Smith's model, and how sure that is. */
export function sectionMix(period: CostedPeriod, section: string | null, resamples: number): SectionMix {
  const nodes = sectionNodes(period, section);
  const trading = sectionDays(period, nodes);
  const byDay = expectedByDay(trading);
  const figured = nodes.flatMap((node, item) => {
    const thing = period.things[node];
    if (!thing) return [];
    const onSale = daysOnSale(trading, item);
    const days = onSale.length > 0 ? onSale : menuDays(thing.menu, period.range);
    const channels = thing.menu.map(({ channel }) => channel);
    const expected = trading.days.reduce((sum, _, day) => sum + (byDay[day * nodes.length + item] ?? 0), 0);
    const figures = itemFigures(period, node, thing.sales, days, channels);
    return [{ ...figures, node, thing, expected, daysOnSale: onSale.length }];
  });

  const average = meanMargin(figured);
  const needed = daysForClass(trading.days.length);
  const margins = figured.map(({ margin }) => margin);
  const isSampled = resamples > 0 && trading.days.length >= DAYS_FOR_CERTAINTY;
  const sure = isSampled ? certainty(mixDays(period, nodes, trading, byDay, margins), resamples, SEED) : [];
  const items = figured.map((item, index): ClassedItem => {
    const { sold, expected, margin } = item;
    const isClassed = margin !== null && average !== null && item.daysOnSale >= needed;
    const mixClass = isClassed
      ? kasavanaSmith({ sold, expected, margin }, period.venue.popularityFactor, average)
      : null;
    return { ...item, class: mixClass, certainty: mixClass === null ? null : (sure[index] ?? null) };
  });
  return { items, trading, meanMargin: average, resamples: isSampled ? resamples : null };
}
