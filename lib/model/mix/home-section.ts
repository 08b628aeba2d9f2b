import type { CostedPeriod } from '../costed-period';
import { itemDepartment } from '../departments';
import { itemSection } from '../offered';

/** The section in whose mix an item stands by itself: the whole menu (null) for food that is no set menu, else its own section. */
export function homeSection(period: CostedPeriod, node: number): string | null {
  const thing = period.things[node];
  if (!thing || (thing.kind !== 'set_menu' && itemDepartment(period, node) === 'food')) return null;
  return itemSection(thing);
}
