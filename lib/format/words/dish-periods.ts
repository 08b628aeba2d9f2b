import { perCentFigure } from '../figures';
import { moneyFigure, type Purse } from '../money';
import { dayName, periodName } from '../periods';
import { portionsFigure } from '../portions';

export const PERIODS = {
  title: 'Through the periods',
  table: 'Period by period',
  none: '–',
  notOnSale: 'not on the menu',
  notCosted: 'not costed',
  unknown: 'unknown',
  estimate: 'estimate',
  waiting: 'The picture is being drawn.',
  pictureName: 'Price, plate cost and portions, period by period; the table below holds the same',
  extraCaption: 'From zero: what one costs, and to how many guests it was given.',
  caption:
    'From zero: the upper line is the achieved net price, the lower one the plate cost, the pale band between them is what a portion leaves. A mark on top: something changed on the menu.',
  price: 'net price',
  cost: 'plate cost',
  leaves: 'leaves',
  portions: 'portions',
  guests: 'guests',
} as const;

/** Over the band of money. */
export function priceAxis(sign: string): string {
  return `${sign} a portion`;
}

/** What a row of the table is made from; a period of a DishAnswer has it all. */
export interface PeriodFigures {
  readonly month: string;
  readonly from: string;
  readonly to: string;
  readonly onSale: boolean;
  readonly sold: number;
  readonly share: number | null;
  readonly netPrice: string | null;
  readonly plateCost: string | null;
  readonly estimated: boolean;
  readonly foodCostPct: number | null;
  readonly margin: string | null;
}

/** What happened on the menu; an event of a DishAnswer has it all. */
export interface EventFigures {
  readonly date: string;
  readonly channel: string;
  readonly kind: 'came' | 'went' | 'price';
  readonly price: string | null;
  readonly before: string | null;
}

export const PERIOD_COLUMNS = ['month', 'price', 'cost', 'foodCost', 'leaves', 'sold', 'share', 'events'] as const;

export type PeriodColumn = (typeof PERIOD_COLUMNS)[number];

/** Head and unit of each column. */
export function periodHeads(
  sign: string,
  isExtra: boolean,
): Readonly<Record<PeriodColumn, readonly [name: string, unit: string]>> {
  return {
    month: ['Period', ''],
    price: ['Price', `${sign} net`],
    cost: ['Plate cost', sign],
    foodCost: ['Food cost', '%'],
    leaves: ['Leaves', `${sign} each`],
    sold: isExtra ? ['Given', 'guests'] : ['Sold', 'portions'],
    share: ['Share', '%'],
    events: ['On the menu', ''],
  };
}

/** A row as it is printed; a period in which it was not on the menu has words only. */
export function periodCells(
  row: PeriodFigures,
  events: readonly EventFigures[],
  isExtra: boolean,
  purse: Purse,
): Readonly<Record<PeriodColumn, string>> {
  const { locale } = purse;
  const money = (amount: string | null, unknown: string) => (amount === null ? unknown : moneyFigure(amount, purse));
  // nobody pays for an extra
  const unknown = isExtra ? PERIODS.none : PERIODS.unknown;
  const month = periodName(row.month, locale);
  const happened = eventsWords(events, row, purse);
  if (!row.onSale) {
    const { none } = PERIODS;
    const nothing = { price: none, cost: none, foodCost: none, leaves: none, sold: none, share: none };
    return { month, ...nothing, events: [PERIODS.notOnSale, ...happened].join('; ') };
  }
  return {
    month,
    price: money(row.netPrice, unknown),
    cost: `${money(row.plateCost, PERIODS.notCosted)}${row.estimated ? ` (${PERIODS.estimate})` : ''}`,
    foodCost: row.foodCostPct === null ? unknown : perCentFigure(row.foodCostPct, locale),
    leaves: money(row.margin, unknown),
    sold: row.sold === 0 ? PERIODS.none : portionsFigure(row.sold, locale),
    share: row.share === null ? PERIODS.none : perCentFigure(row.share, locale),
    events: happened.join('; '),
  };
}

/** A run of periods in which a dish was not on the menu, as one row. */
export function periodsOff(first: string, last: string, locale: string): string {
  return first === last ? periodName(first, locale) : `${periodName(first, locale)} to ${periodName(last, locale)}`;
}

/** What happened on the menu on the days of a period, in words. */
export function eventsWords(
  events: readonly EventFigures[],
  { from, to }: { readonly from: string; readonly to: string },
  purse: Purse,
): readonly string[] {
  return events.filter(({ date }) => date >= from && date < to).map((event) => eventWords(event, purse));
}

function eventWords({ date, channel, kind, price, before }: EventFigures, purse: Purse): string {
  const day = dayName(date, purse.locale);
  const where = channel === 'dine_in' ? '' : `, ${channel.replaceAll('_', ' ')}`;
  const money = (amount: string | null) => (amount === null ? PERIODS.unknown : moneyFigure(amount, purse));
  if (kind === 'went') return `off from ${day}${where}`;
  if (kind === 'came') return `new on ${day} at ${money(price)}${where}`;
  return `${money(before)} to ${money(price)} on ${day}${where}`;
}
