import { moneyFigure, type Purse } from '../money';
import { countWord } from '../portions';
import { shortNames } from './short-names';
import { periodsWord, YEAR } from './year';

/** The columns of the year, in their order. */
export const YEAR_COLUMNS = [
  'period',
  'days',
  'sold',
  'contribution',
  'foodCost',
  'margin',
  'known',
  'before',
  'change',
  'menu',
] as const;

export type YearColumn = (typeof YEAR_COLUMNS)[number];

/** Head and unit of each column. */
export function yearHeads(sign: string, isMonths: boolean): Readonly<Record<YearColumn, readonly [string, string]>> {
  return {
    period: [isMonths ? 'Month' : 'Period', ''],
    days: ['Days', 'with sales'],
    sold: ['Sold', 'portions'],
    contribution: ['Left', `${sign} before labour`],
    foodCost: ['Food cost', '% by recipe'],
    margin: ['Margin', `${sign} a portion`],
    known: ['Margins known', '% of portions'],
    before: ['Year before', `${sign} left`],
    change: ['Change', '%'],
    menu: ['On the menu', ''],
  };
}

export function yearCaption(isMonths: boolean): string {
  return isMonths ? 'The months, latest first' : 'The periods, latest first';
}

/** The label of the sum: the last twelve months. */
export function lastLabel(periods: number, period: string, locale: string): string {
  return periods === 1 ? 'The month' : `The last ${periodsWord(periods, period, locale)}`;
}

/** The names of the panels over the table. */
export function panelNames(sign: string) {
  return {
    contribution: `left before labour, ${sign}`,
    foodCost: 'food cost by recipe, %',
    sold: 'portions',
    margin: `left by a portion on average, ${sign}`,
  } as const;
}

export function targetName(figure: string): string {
  return `target ${figure}`;
}

/** One change of the menu. */
export interface MenuChangeWords {
  readonly item: string;
  readonly channels: readonly string[];
  readonly kind: 'came' | 'went' | 'price';
  readonly price: string | null;
  readonly priceBefore: string | null;
}

const EVENT_NAMES = { came: 'came', went: 'went', price: 'repriced' } as const;
export type EventKind = keyof typeof EVENT_NAMES;
export const EVENT_KINDS = ['came', 'went', 'price'] as const satisfies readonly EventKind[];

export function eventName(kind: EventKind): string {
  return EVENT_NAMES[kind];
}

/** How many dishes of a kind of change, in the picture: +2 came, −1 went, 12 with another price; nothing where there is none. */
export function eventCount(kind: EventKind, changes: readonly MenuChangeWords[]): string {
  const items = new Set(changes.filter((change) => change.kind === kind).map(({ item }) => item));
  if (items.size === 0) return '';
  return kind === 'came' ? `+${items.size}` : kind === 'went' ? `\u2212${items.size}` : String(items.size);
}

const NAMED = 3;

/** What changed on the menu in a period: came Plum tart; went Quince; prices of twelve dishes. */
export function menuChangeWords(changes: readonly MenuChangeWords[], purse: Purse): string {
  const items = [...new Set(changes.map(({ item }) => item))];
  const short = new Map(shortNames(items).map((name, at) => [items[at], name]));
  const said = EVENT_KINDS.flatMap((kind) => {
    const of = changes.filter((change) => change.kind === kind);
    const first = [...new Map(of.toReversed().map((change) => [change.item, change])).values()].reverse();
    const names = first.map((change) => named(change, short.get(change.item) ?? change.item, purse));
    if (names.length === 0) return [];
    const some = names.slice(0, NAMED).join(', ');
    const more = names.length - NAMED;
    return [`${eventName(kind)} ${some}${more > 0 ? ` and ${countWord(more, purse.locale)} more` : ''}`];
  });
  return said.length === 0 ? YEAR.none : said.join('; ');
}

function named({ channels, kind, price, priceBefore }: MenuChangeWords, item: string, purse: Purse): string {
  const where = channels.length === 1 && channels[0] !== 'dine_in' ? ` (${channels[0]?.replaceAll('_', ' ')})` : '';
  if (kind !== 'price' || price === null || priceBefore === null) return `${item}${where}`;
  return `${item}${where} ${moneyFigure(priceBefore, purse)} to ${moneyFigure(price, purse)}`;
}
