import { describe, expect, test } from 'vitest';
import { dayText } from '@/lib/core/days';
import { COUNTS } from '@/seed/demo/kitchen/counts';
import { SUPPLIERS } from '@/seed/demo/suppliers/all-suppliers';
import { COUNT_DAYS, isOpen, TRADING_DAYS } from '@/seed/demo/trade/calendar';
import { COVERS } from '@/seed/demo/trade/covers';
import { packPriceOn, unitPriceOn } from '@/seed/demo/trade/price-in-force';
import { PURCHASES } from '@/seed/demo/trade/purchases';
import { SALES } from '@/seed/demo/trade/sales';
import { accountedForIn, boughtIn, stockOn } from './store-book';

const ENDS = COUNT_DAYS.map(dayText);
const MONTHS = ENDS.slice(1).map((end, at) => ({ month: end.slice(0, 7), opening: ENDS[at] ?? '', end }));

function usedIn({ month, opening, end }: (typeof MONTHS)[number]): ReadonlyMap<string, number> {
  const [before, after, bought] = [stockOn(opening), stockOn(end), boughtIn(month)];
  const names = new Set([...before.keys(), ...after.keys(), ...bought.keys()]);
  return new Map(
    [...names].map((name) => [name, (before.get(name) ?? 0) + (bought.get(name) ?? 0) - (after.get(name) ?? 0)]),
  );
}

describe('the store of the demo restaurant', () => {
  test.each(MONTHS)(
    'opening + purchases - closing of $month is a little more than is accounted for, cream most of all',
    (period) => {
      const used = usedIn(period);
      const known = accountedForIn(period.month);
      const gaps = [...used].flatMap(([name, amount]) => {
        const price = unitPriceOn(name, period.end);
        const isCounted = COUNTS.some(({ item }) => item === name);
        return price === null || !isCounted ? [] : [{ name, gap: (amount - (known.get(name) ?? 0)) * price }];
      });
      gaps.sort((a, b) => b.gap - a.gap);
      expect(gaps[0]?.name).toBe('Double cream');
      const cream = (used.get('Double cream') ?? 0) / (known.get('Double cream') ?? 1);
      expect(cream).toBeGreaterThan(1.04);
      expect(cream).toBeLessThan(1.16);
      for (const name of [
        'Unsalted butter',
        'Dark couverture 70 %',
        'Milk couverture 40 %',
        'Caster sugar',
        'Shell eggs',
      ]) {
        const ratio = (used.get(name) ?? 0) / (known.get(name) ?? 1);
        expect(ratio, `${name} ${ratio}`).toBeGreaterThan(0.96);
        expect(ratio, `${name} ${ratio}`).toBeLessThan(1.06);
      }
    },
  );

  test('COUNTS: one line a day, item and place; no stock below zero', () => {
    const keys = COUNTS.map(({ day, item, place }) => `${day}|${item}|${place}`);
    expect(new Set(keys).size).toBe(keys.length);
    expect(COUNTS.filter(({ quantity }) => quantity < 0)).toEqual([]);
  });

  test('PURCHASES: above the agreed price only where it is meant, one delivery without its invoice, what comes back negative', () => {
    const dairy = SUPPLIERS.find(({ name }) => name === 'Saltmarsh Dairy');
    const above = PURCHASES.filter(({ supplier, kind, code, packs = 0, amount = 0, day }) => {
      const offer = dairy?.offers.find((each) => each.code === code);
      if (supplier !== dairy?.name || kind !== 'goods' || !offer) return false;
      return amount > packs * (packPriceOn(offer, dayText(day)) ?? 0) + 0.005;
    });
    expect(above).toHaveLength(7);
    expect([
      ...new Set(PURCHASES.filter(({ invoice }) => invoice === undefined).map(({ day }) => dayText(day))),
    ]).toEqual(['2026-10-30']);
    expect(PURCHASES.filter(({ kind, amount = 0 }) => (kind === 'credit' || kind === 'rebate') && amount >= 0)).toEqual(
      [],
    );
    expect(PURCHASES.filter(({ kind }) => kind === 'credit')).toHaveLength(6);
    const kinds = new Set(PURCHASES.map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual(['credit', 'deposit', 'freight', 'goods', 'non_food', 'rebate']);
  });

  test('PURCHASES: a pineapple comes whole, dry ice anew every week, and mint is not bought for a month', () => {
    const cameOf = (code: string) => PURCHASES.filter((line) => line.kind === 'goods' && line.code === code);
    // 1.6 kg for one: common practice
    expect(Math.min(...cameOf('PIN').map(({ quantity = 0 }) => quantity))).toBeGreaterThanOrEqual(1.6);
    expect(Math.max(...cameOf('MIN-1').map(({ packs = 0 }) => packs))).toBeLessThanOrEqual(4);
    const boxes = cameOf('DI-10').map(({ day }) => day);
    const idle = boxes.slice(1).filter((day, at) => {
      const before = boxes[at] ?? day;
      return day - before > 7 && TRADING_DAYS.some((open) => open >= before + 7 && open < day);
    });
    expect(idle).toEqual([]);
  });

  test('prices of one offer never move by more than a fifth at once', () => {
    const jumps = SUPPLIERS.flatMap(({ offers }) =>
      offers.flatMap(({ code, prices }) =>
        prices
          .filter(({ minimumPacks }) => minimumPacks === undefined)
          .slice(1)
          .filter((point, at) => Math.abs(point.price / (prices[at]?.price ?? point.price) - 1) > 0.2)
          .map(() => code),
      ),
    );
    expect(jumps).toEqual([]);
  });

  test('TRADING_DAYS: closed on Mondays and Tuesdays, at Christmas and in the winter break; open on holidays', () => {
    const texts = new Set(TRADING_DAYS.map(dayText));
    expect(texts.has('2026-10-19')).toBe(false); // a Monday
    expect(texts.has('2026-10-26')).toBe(true); // a holiday Monday
    expect(texts.has('2025-07-08')).toBe(true); // a Tuesday in July
    expect(texts.has('2025-12-25')).toBe(false);
    expect([...COVERS.keys()].every(isOpen)).toBe(true);
    expect(Math.max(...COVERS.values())).toBeLessThanOrEqual(38 * 5);
  });

  test('SALES: plates stay below what the guests of the day could eat, and each is sold at its menu price less discount', () => {
    const plates = new Map<number, number>();
    for (const { day, channel, sold, comps } of SALES) {
      if (channel === 'dine_in') plates.set(day, (plates.get(day) ?? 0) + sold + comps);
    }
    const most = Math.max(...[...COVERS].map(([day, covers]) => (plates.get(day) ?? 0) / covers));
    expect(most).toBeLessThan(3); // food and drink
    expect(SALES.every(({ gross, sold }) => gross > 0 === sold > 0)).toBe(true);
  });
});
