import { ascending, byText } from '../../core/grouped';
import { isNear } from '../../core/near';
import type { CostedPeriod } from '../costed-period';
import type { MenuPrice, SalesDay } from '../facts';
import { onDay } from '../in-force';
import type { Issue } from '../issue';
import { rowRevenue } from '../item-figures';
import { netPrice } from '../menu-price';
import { plateCost, portionOf } from '../plate-cost';
import { inSegment, segmentOf } from '../segments';
import { setMenuRevenue } from '../set-menu-revenue';
import type { Thing } from '../things';

/** Where set menus stand in a mix: in a section of their own, or spread over the courses that they are made of. */
export type SetMenus = 'section' | 'spread';

export interface SpreadPeriod {
  /** The same period, with the sales of set menus among those of their courses. */
  readonly period: CostedPeriod;
  readonly issues: readonly Issue[];
}

/** Revenue is shared in millionths of the currency: far below what is printed, and the parts still sum to the whole. */
const LEAST = 1e6;

interface Course {
  readonly node: number;
  /** Portions of it in one set menu. */
  readonly portions: number;
}

/**
 * The sales of set menus as sales of their courses: portions of each by its share, revenue by prices alone (setMenuRevenue), where tax is
 * inside before it is taken out. Plate costs stay those of the courses, so that q is on each once.
 *
 * A row stays with its set menu, and an issue says so, where its courses are no portions, where their costs do not make up its own (what it
 * takes beside them would be lost), or where its revenue or a price alone is not known. With one rate of tax, revenue and cost over the
 * courses are those of the set menus.
 */
export function spreadSetMenus(period: CostedPeriod): SpreadPeriod {
  const added = new Map<number, SalesDay[]>();
  const kept = new Map<number, readonly SalesDay[]>();
  const estimated = new Set<string>();
  const issues: Issue[] = [];
  period.things.forEach((thing, node) => {
    if (thing.kind !== 'set_menu' || thing.channel !== null || thing.sales.length === 0) return;
    const stays = thing.sales.filter((row) => {
      const parts = rowOverCourses(period, node, row);
      for (const { course, sale, isEstimated } of parts ?? []) {
        added.set(course, [...(added.get(course) ?? []), sale]);
        if (isEstimated) estimated.add(period.things[course]?.name ?? '');
      }
      return parts === null;
    });
    kept.set(node, stays);
    const portions = stays.reduce((sum, row) => sum + row.sold, 0);
    if (portions > 0) issues.push({ code: 'set-menu-not-spread', about: thing.name, facts: { portions } });
  });
  for (const about of [...estimated].sort(byText)) issues.push({ code: 'course-estimated', about, facts: {} });
  const things = period.things.map((thing, node): Thing => {
    const [own, more] = [kept.get(node) ?? thing.sales, added.get(node) ?? []];
    if (own === thing.sales && more.length === 0) return thing;
    return { ...thing, sales: ascending([...own, ...more], (a, b) => a.day - b.day || byText(a.channel, b.channel)) };
  });
  return { period: { ...period, things }, issues };
}

interface CoursePart {
  readonly course: number;
  readonly sale: SalesDay;
  readonly isEstimated: boolean;
}

/** A row of a set menu's sales as rows of its courses; null where it cannot be shared. */
function rowOverCourses(period: CostedPeriod, node: number, row: SalesDay): readonly CoursePart[] | null {
  const segment = segmentOf(period.segments, row.day);
  const courses = coursesIn(period, node, segment);
  const revenue = rowRevenue(period, node, row);
  if (courses === null || revenue === null || !costsAgree(period, node, courses, segment, row.channel)) return null;
  const own = priceOn(period.things[node], row);
  const isTaxed = own?.taxIncluded ?? false;
  const whole = revenue * (isTaxed ? 1 + (own?.tax ?? 0) : 1);
  const shares = setMenuRevenue(
    LEAST,
    isTaxed,
    courses.map((course) => {
      const thing = period.things[course.node];
      const alone = priceOn(thing, row);
      const cost = plateCost(period, course.node, segment, row.channel);
      return {
        portions: course.portions,
        netPrice: alone === null ? null : netPrice(alone),
        tax: alone?.tax ?? own?.tax ?? 0,
        plateCost: cost.complete ? cost.total : null,
      };
    }),
    period.venue.targetFoodCost,
  );
  if (shares === null) return null;
  return courses.map(({ node: course, portions }, at) => {
    const { net, estimated } = shares[at] ?? { net: 0, estimated: false };
    const { day, channel, sold, comps } = row;
    const item = period.things[course]?.id ?? row.item;
    const counted = { sold: sold * portions, comps: comps * portions, soldWithoutRevenue: 0 };
    return { course, sale: { day, item, channel, ...counted, net: (whole * net) / LEAST }, isEstimated: estimated };
  });
}

/** The courses of a set menu in a segment, each once; null where one is no portion of a dish, or its share is not known. */
function coursesIn(period: CostedPeriod, node: number, segment: number): readonly Course[] | null {
  const piece = inSegment(period.recipes[node] ?? [], segment);
  if (!piece || piece.children.length === 0 || piece.version.refusedLines > 0) return null;
  const portions = new Map<number, number>();
  for (const [index, child] of piece.children.entries()) {
    const portion = portionOf(period, child, segment);
    const amount = (piece.amounts[index] ?? Number.NaN) * (1 - piece.version.breakage);
    const isDish = period.things[child]?.kind === 'dish' && period.things[child]?.channel === null;
    if (!isDish || portion === null || !(amount > 0)) return null;
    portions.set(child, (portions.get(child) ?? 0) + amount / portion);
  }
  return [...portions].map(([course, count]) => ({ node: course, portions: count }));
}

/** Whether the courses cost together what the set menu does: then nothing that it takes beside them is lost. */
function costsAgree(
  period: CostedPeriod,
  node: number,
  courses: readonly Course[],
  segment: number,
  channel: string,
): boolean {
  const own = plateCost(period, node, segment, channel);
  if (!own.complete) return true; // not known before, not known after
  const together = courses.reduce(
    (sum, course) => sum + course.portions * plateCost(period, course.node, segment, channel).total,
    0,
  );
  return isNear(together, own.total);
}

/** The menu price of the day in the channel of a row, else in the first one that has one. */
function priceOn(
  thing: Thing | undefined,
  { day, channel }: SalesDay,
): (MenuPrice & { readonly price: number }) | null {
  const menus = thing?.menu ?? [];
  const first = menus.filter((menu) => menu.channel === channel);
  for (const { prices } of [...first, ...menus]) {
    const found = onDay(prices, day);
    if (found !== null && found.price !== null) return { ...found, price: found.price };
  }
  return null;
}
