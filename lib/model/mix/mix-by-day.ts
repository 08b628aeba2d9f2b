import { addDays, type Day } from '../../core/days';
import type { CostedPeriod } from '../costed-period';
import { SEATED } from '../guest-orders';
import { rowRevenue } from '../item-figures';
import { moneyByDay } from './mix-days';
import type { MixedItem, PeriodMix } from './period-mix';
import { sectionNodes } from './section';
import { sectionDays } from './section-days';

/** One business day of a whole menu. Money is venue currency net of sales tax. */
export interface DayOfMix {
  readonly day: Day;
  /** Null: not known. */
  readonly covers: number | null;
  /** Of everything sold at the tables, drinks and set menus too; null where a portion of it has no price. */
  readonly seatedRevenue: number | null;
  /** seatedRevenue / covers; null where either is not known. */
  readonly spendPerCover: number | null;
  /** Paid portions of the menu mix. */
  readonly sold: number;
  /** What the portions with a known margin left; null where none of those is. */
  readonly contribution: number | null;
}

/**
 * Every day of a period, in order. Portions and contribution are of the whole menu (food that is no set menu), and sum to those of its
 * mix; covers and spend are of all guests at the tables.
 */
export function mixByDay({ costed, mix }: Pick<PeriodMix, 'costed' | 'mix'>): readonly DayOfMix[] {
  const { range, nodeOf } = costed;
  const nodes = sectionNodes(costed, null);
  const trading = sectionDays(costed, nodes);
  const isKnown = new Set(mix.items.flatMap(({ id, margin }) => (margin === null ? [] : (nodeOf.get(id) ?? []))));
  const known = nodes.filter((node) => isKnown.has(node));
  const left = moneyByDay(costed, known, trading).contribution;
  const rowOf = new Map(trading.days.map((day, row) => [day, row]));
  const sumOf = (table: Float64Array, row: number, width: number): number =>
    table.subarray(row * width, (row + 1) * width).reduce((sum, each) => sum + each, 0);
  return Array.from({ length: range.to - range.from }, (_, later): DayOfMix => {
    const day = addDays(range.from, later);
    const row = rowOf.get(day);
    const covers = costed.covers.find((each) => each.day === day)?.covers ?? null;
    const seatedRevenue = seatedRevenueOn(costed, day);
    return {
      ...{ day, covers, seatedRevenue },
      spendPerCover: covers === null || covers === 0 || seatedRevenue === null ? null : seatedRevenue / covers,
      sold: row === undefined ? 0 : sumOf(trading.sold, row, nodes.length),
      contribution: row === undefined || known.length === 0 ? null : sumOf(left, row, known.length),
    };
  });
}

/** Revenue of everything sold at the tables on a day; null where a portion has no price, 0 where none was sold. */
function seatedRevenueOn(period: CostedPeriod, day: Day): number | null {
  const revenues = period.things.flatMap(({ sales }, node) =>
    sales.filter((row) => row.day === day && row.channel === SEATED).map((row) => rowRevenue(period, node, row)),
  );
  return revenues.includes(null) ? null : revenues.reduce<number>((sum, each) => sum + (each ?? 0), 0);
}

/** An item of the mix with the days on sale on which none of it was sold. */
export interface UnsoldItem extends MixedItem {
  readonly daysWithoutSale: number;
}

/** The items of a whole menu that were on sale on trading days without a portion sold, most such days first, then as the mix has them. */
export function unsoldItems({ costed, mix }: Pick<PeriodMix, 'costed' | 'mix'>): readonly UnsoldItem[] {
  const nodes = sectionNodes(costed, null);
  const trading = sectionDays(costed, nodes);
  const without = (node: number): number => {
    const item = nodes.indexOf(node);
    const cells = trading.days.map((_, row) => row * nodes.length + item);
    return cells.filter((cell) => trading.onSale[cell] === 1 && trading.sold[cell] === 0).length;
  };
  return mix.items
    .map((item) => ({ ...item, daysWithoutSale: without(costed.nodeOf.get(item.id) ?? -1) }))
    .filter(({ daysWithoutSale }) => daysWithoutSale > 0)
    .sort((a, b) => b.daysWithoutSale - a.daysWithoutSale);
}
