import type { Day } from '../core/days';
import type { CostedPeriod } from './costed-period';
import { menuDays } from './menu-price';
import { sectionNodes } from './mix/section';
import { daysOnSale, sectionDays } from './mix/section-days';
import { isOffered } from './offered';

/**
 * The days on which an item was on sale among its section's trading days (null: those of the whole menu); the days on the menu where
 * there was none. What is in another section than the one asked about is looked at among everything on offer.
 */
export function saleDays(period: CostedPeriod, node: number, section: string | null): readonly Day[] {
  const inSection = sectionNodes(period, section);
  const offered = period.things.flatMap((each, at) => (isOffered(each) ? [at] : []));
  const nodes = inSection.includes(node) ? inSection : offered;
  const onSale = daysOnSale(sectionDays(period, nodes), nodes.indexOf(node));
  if (onSale.length > 0) return onSale;
  return menuDays(period.things[node]?.menu ?? [], period.range);
}
