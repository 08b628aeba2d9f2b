import { nameKey } from '../../core/name-key';
import type { CostedPeriod } from '../costed-period';
import { itemDepartment } from '../departments';
import { isOffered, itemSection } from '../offered';

/**
 * The nodes of a menu section's items: everything in it that is on the menu or sold. No section named is the whole menu: the items
 * of department food that are not set menus.
 */
export function sectionNodes(period: CostedPeriod, section: string | null): readonly number[] {
  const key = section === null ? null : nameKey(section);
  return period.things.flatMap((thing, node) => {
    if (!isOffered(thing)) return [];
    if (key === null) return thing.kind !== 'set_menu' && itemDepartment(period, node) === 'food' ? [node] : [];
    return nameKey(itemSection(thing) ?? '') === key ? [node] : [];
  });
}
