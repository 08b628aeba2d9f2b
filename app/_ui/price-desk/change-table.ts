import { figure, perCentFigure, signedFigure } from '@/lib/format/figures';
import { coinsFigure, moneyFigure, type Purse, printedCoins, signedCoins } from '@/lib/format/money';
import { averages, BEFORE_AFTER, untouchedDishes } from '@/lib/format/words/before-after';
import type { ItemPriceChange, PriceChange } from '@/lib/reports/price-change';
import type { ChangeAxis, ChangeRow, ChangeTable, ChangeText } from '../before-after/change-row';
import type { MarkShape } from '../mark-shape';
import { niceStep, niceTicks, tickDecimals } from '../mix-plane/nice-ticks';

type Shapes = ReadonlyMap<string | null, MarkShape>;
type Tone = ChangeRow['tone'];

/** Whether anything of a dish is not as before. */
export function isTouched({ before, after }: ItemPriceChange): boolean {
  return after.plateCost !== before.plateCost || after.netPrice !== before.netPrice || after.class !== before.class;
}

/** The touched dishes (and others that keep a row) as the table prints them, so many of them, with the period as their total. */
export function changeTable(
  change: PriceChange,
  kept: ReadonlySet<string>,
  shown: number,
  shapes: Shapes,
  purse: Purse,
): ChangeTable {
  const touched = change.items.filter((each) => kept.has(each.item.name) || isTouched(each));
  const axis = changeAxis(change, touched, purse);
  const untouched = change.items.length - touched.length;
  return {
    rows: touched
      .slice(0, shown)
      .map((each) => changeRow(each, axis, shapes.get(each.item.section) ?? 'circle', purse)),
    more: Math.max(0, touched.length - shown),
    untouched: untouched > 0 ? untouchedDishes(untouched, purse.locale) : null,
    total: total(change, touched, purse),
    axis: axis.drawn,
  };
}

interface Axis {
  readonly drawn: ChangeAxis;
  readonly margins: Scale;
  readonly changes: Scale;
}

interface Scale {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
}

const TICKS = 5;

/** From tick to tick, so that the axis rests while a price moves a little. */
function scaleOf(values: readonly number[]): Scale {
  const low = values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);
  const high = values.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
  if (!(high > low)) {
    const middle = Number.isFinite(low) ? Math.round(low) : 0;
    return { low: middle - 1, high: middle + 1, ticks: [middle - 1, middle, middle + 1] };
  }
  const step = niceStep(high - low, TICKS);
  const from = Math.floor(low / step) * step;
  const to = Math.ceil(high / step) * step;
  return { low: from, high: to, ticks: niceTicks(from, to, TICKS) };
}

const placeOn = ({ low, high }: Scale, value: number): number => (value - low) / (high - low);

function changeAxis({ before, after }: PriceChange, touched: readonly ItemPriceChange[], purse: Purse): Axis {
  const averagesOf = [before.meanMargin, after.meanMargin].flatMap((value) => value ?? []);
  const margins = scaleOf([
    ...touched.flatMap((each) => [each.before.margin, each.after.margin].flatMap((value) => value ?? [])),
    ...averagesOf,
  ]);
  const changes = scaleOf([0, ...touched.flatMap((each) => marginChange(each) ?? [])]);
  const [was, is] = averagesOf;
  return {
    margins,
    changes,
    drawn: {
      ticks: ticksOf(margins, purse),
      average:
        was === undefined || is === undefined
          ? null
          : {
              before: placeOn(margins, was),
              after: placeOn(margins, is),
              text: averages(moneyFigure(was, purse), moneyFigure(is, purse)),
            },
      zero: { at: placeOn(changes, 0), ticks: ticksOf(changes, purse) },
    },
  };
}

function ticksOf(scale: Scale, { locale }: Purse): readonly { readonly at: number; readonly text: string }[] {
  const decimals = tickDecimals(scale.ticks);
  return scale.ticks.map((tick) => ({ at: placeOn(scale, tick), text: figure(tick, locale, decimals) }));
}

function marginChange({ before, after }: ItemPriceChange): number | null {
  return before.margin === null || after.margin === null ? null : after.margin - before.margin;
}

function toneOf(change: number | null, coins: number): Tone {
  return change === null || coins === 0 ? 'plain' : change < 0 ? 'dear' : 'spare';
}

function signed(change: number | null, purse: Purse): ChangeText {
  if (change === null) return { text: BEFORE_AFTER.unknown, tone: 'faint' };
  const coins = printedCoins(change, purse.currency);
  return { text: signedCoins(coins, purse), tone: toneOf(change, coins) };
}

function changeRow(each: ItemPriceChange, axis: Axis, shape: MarkShape, purse: Purse): ChangeRow {
  const { item, before, after } = each;
  const { locale } = purse;
  const change = marginChange(each);
  const money = (amount: number | null): string =>
    amount === null ? BEFORE_AFTER.unknown : moneyFigure(amount, purse);
  const hold = (price: number | null): string => (price === null ? BEFORE_AFTER.none : moneyFigure(price, purse));
  const isNear = before.margin !== null && after.margin !== null;
  return {
    item: item.name,
    shape,
    before: money(before.margin),
    after: money(after.margin),
    change: signed(change, purse),
    foodCost: after.foodCost === null ? BEFORE_AFTER.unknown : perCentFigure(after.foodCost, locale),
    inPeriod: signed(each.contributionChange, purse),
    holdMargin: hold(each.holdMarginPrice),
    holdPct: hold(each.holdPctPrice),
    breakEven: breakEven(each, locale),
    classNow: after.class ?? BEFORE_AFTER.notClassed,
    classWas: before.class === after.class ? null : (before.class ?? BEFORE_AFTER.notClassed),
    axis: isNear
      ? { before: placeOn(axis.margins, before.margin ?? 0), after: placeOn(axis.margins, after.margin ?? 0) }
      : null,
    fromZero: change === null ? null : placeOn(axis.changes, change),
    tone: toneOf(change, change === 0 ? 0 : 1),
  };
}

/** Portions that it must sell more, or may sell less, to leave in the period what it left before. */
function breakEven({ item, after, breakEvenSalesChange }: ItemPriceChange, locale: string): string {
  if (after.margin === null || item.sold === 0) return BEFORE_AFTER.none;
  if (breakEvenSalesChange === null) return BEFORE_AFTER.never;
  return signedFigure(breakEvenSalesChange * item.sold, locale, 0);
}

/** The period: its change is the sum of the rows as they are printed. */
function total(
  { before, after }: PriceChange,
  touched: readonly ItemPriceChange[],
  purse: Purse,
): ChangeTable['total'] {
  if (before.contribution === null) return {};
  const coins = touched.reduce((sum, each) => sum + printedCoins(each.contributionChange ?? 0, purse.currency), 0);
  const was = printedCoins(before.contribution, purse.currency);
  const plain = (text: string): ChangeText => ({ text, tone: 'plain' });
  return {
    before: plain(coinsFigure(was, purse)),
    after: plain(coinsFigure(was + coins, purse)),
    inPeriod: { text: signedCoins(coins, purse), tone: toneOf(coins, coins) },
    ...(after.foodCost === null ? {} : { foodCost: plain(perCentFigure(after.foodCost, purse.locale)) }),
  };
}
