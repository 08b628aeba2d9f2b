import type { CostedPeriod } from '../costed-period';
import { type ItemFigures, itemFigures } from '../item-figures';
import { menuDays } from '../menu-price';
import { labourPerPortion } from '../per-portion';
import { portionWeights } from '../portion-weights';
import type { Thing } from '../things';
import { type Certainty, certainty } from './certainty';
import { menuAverages } from './menu-averages';
import { mixDays } from './mix-days';
import { DAYS_FOR_CERTAINTY, daysForClass } from './mix-issues';
import type { MenuAverages, MixClass, MixFigures, MixModel } from './mix-model';
import { sectionNodes } from './section';
import { daysOnSale, expectedByDay, type SectionDays, sectionDays } from './section-days';

/** One item of a section: its figures over all channels, and its class. */
export interface ClassedItem extends ItemFigures {
  readonly node: number;
  readonly thing: Thing;
  readonly expected: number;
  readonly daysOnSale: number;
  /** Recipe labour of a portion; null where it is not known. */
  readonly labour: number | null;
  readonly class: MixClass | null;
  readonly certainty: Certainty | null;
}

export interface SectionMix {
  readonly items: readonly ClassedItem[];
  readonly trading: SectionDays;
  /** What each item is held against; null where no item with a known margin was sold. */
  readonly menu: MenuAverages | null;
  /** Resamples that stand behind the certainty; null where there is none. */
  readonly resamples: number | null;
}

/** Resamples behind every statement of certainty, and the seed that makes them the same each time. */
export const RESAMPLES = 2000;
const SEED = 1982;

/** The items of a section, by name, classed by a model, and how sure that is. */
export function sectionMix(
  period: CostedPeriod,
  section: string | null,
  model: MixModel,
  resamples: number,
): SectionMix {
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
    const weights = portionWeights(period, node, thing.sales, days, channels);
    const labour = model.asksLabour ? labourPerPortion(period, node, weights).recipeLabour : null;
    return [{ ...figures, node, thing, expected, labour, daysOnSale: onSale.length }];
  });

  const { popularityFactor, variableCost } = period.venue;
  const looked = figured.map(lookedAt);
  const menu = menuAverages(looked, popularityFactor, variableCost);
  const needed = daysForClass(trading.days.length);
  const isSampled = resamples > 0 && trading.days.length >= DAYS_FOR_CERTAINTY;
  const sure = isSampled ? certainty(mixDays(period, nodes, trading, byDay, looked), model, resamples, SEED) : [];
  const items = figured.map((item, index): ClassedItem => {
    const figures = looked[index];
    const isClassed = figures && menu !== null && item.daysOnSale >= needed;
    const mixClass = isClassed ? model.classOf(figures, menu) : null;
    return { ...item, class: mixClass, certainty: mixClass === null ? null : (sure[index] ?? null) };
  });
  return { items, trading, menu, resamples: isSampled ? resamples : null };
}

/** What a model looks at; null where the margin is not known. */
function lookedAt(
  item: Pick<ClassedItem, 'sold' | 'expected' | 'margin' | 'netPrice' | 'food' | 'labour'>,
): MixFigures | null {
  const { sold, expected, margin, netPrice, food, labour } = item;
  return margin === null || netPrice === null || food === null
    ? null
    : { sold, expected, margin, netPrice, food, labour };
}
