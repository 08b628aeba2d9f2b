import { figure, perCent, perCentFigure, signedFigure } from '../figures';
import { exactMoney, type Purse, wholeMoney } from '../money';
import { figurePart, namePart, type Part, type Phrase, plainText } from '../phrase';
import { countWord } from '../portions';
import { type ClassName, MODEL_SOURCE } from './classes';
import type { StateWords } from './shell';
import { shortNames } from './short-names';

export const PRICES = {
  title: 'Price changes',
  pick: 'Price to move',
  newPrice: 'New price',
  change: 'or change',
  another: 'Move another price',
  remove: 'take back',
  reset: 'Take all back',
  edits: 'Prices that are moved',
  ruler: 'The price as a slider',
  kept: 'nothing here is kept',
  changeOnly: 'Change',
  failed: 'The prices could not be read, so that nothing can be moved here. Load the page again.',
  noPrice:
    'Nobody has stated this price, so that there is nothing to move. Bring it in with offer_prices.csv or menu.csv.',
  noFigure: 'Write the price as a number, for instance 19.20.',
  noChange: 'Write the change as a number, for instance 10 or −5.',
} as const;

export const CHOICES = {
  everything: 'Everything that is bought',
  menu: 'The whole menu',
  /** What a choice is, beside its name. */
  of: {
    ingredient: 'bought',
    group: 'product group',
    supplier: 'supplier',
    item: 'on the menu',
    section: 'section of the menu',
    'everything-bought': 'all suppliers',
    'whole-menu': 'all menu prices',
  },
} as const;

export const NOTHING_PRICED: StateWords = {
  title: 'No prices to move',
  text: 'A change of prices needs dishes on the menu and ingredients with prices. Load recipes.csv, offers.csv, offer_prices.csv and menu.csv, or look at another month.',
  command: 'npm run load -- FOLDER',
};

export function pricesTitle(period: string): string {
  return `${PRICES.title}, ${period}`;
}

export const PICKER = {
  reading: 'The prices are being read.',
  nothing: (typed: string): string => `Nothing is called “${typed}”. Try a part of its name.`,
} as const;

/** Whose price it is, as EditTarget has it. */
export type Moved = 'ingredient' | 'group' | 'supplier' | 'item' | 'section' | 'everything-bought' | 'whole-menu';

/** What is moved, and to what; all in the unit that is printed. */
export interface MovedPrice {
  readonly name: string;
  /** Some together are moved by a change only. */
  readonly kind: Moved;
  /** Null where several prices are moved together. */
  readonly price: number | null;
  /** kg, l, piece; null on the menu. */
  readonly unit: string | null;
  /** As a fraction of the price now; null where there is none now, or where it is moved by an amount. */
  readonly change: number | null;
  /** Where several are moved by an amount each. */
  readonly amount: number | null;
}

/** What the sentence is made from; money is venue currency. */
export interface PriceChangeFigures {
  readonly moved: readonly MovedPrice[];
  readonly period: string;
  readonly contribution: { readonly before: number; readonly after: number };
  readonly foodCost: { readonly before: number | null; readonly after: number | null };
  readonly turned: readonly {
    readonly item: string;
    readonly from: ClassName;
    readonly to: ClassName;
  }[];
  /** All dishes, whose short names must tell them apart. */
  readonly names: readonly string[];
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** 19.20 a kg; on the menu without a unit. */
export function unitPrice(price: number, unit: string | null, purse: Purse): string {
  return unit === null ? exactMoney(price, purse) : `${exactMoney(price, purse)} a ${unit}`;
}

function comparison(change: number | null, locale: string): Part[] {
  if (change === null) return [];
  if (perCentFigure(change, locale) === perCentFigure(0, locale)) return [', as now,'];
  const more = change > 0 ? 'more' : 'less';
  return [', ', figurePart(perCent(Math.abs(change), locale)), ` ${more} than now,`];
}

/** Who is moved where: the subject of the sentence. */
function subject({ name, kind, price, unit, change, amount }: MovedPrice, purse: Purse): Part[] {
  const { locale } = purse;
  if (price !== null) {
    const where = kind === 'item' ? ' on the menu' : '';
    return [
      ...whoseOf(name, kind),
      'at ',
      figurePart(unitPrice(price, unit, purse)),
      where,
      ...comparison(change, locale),
    ];
  }
  const by = amount ?? change ?? 0;
  const size = amount === null ? perCent(Math.abs(by), locale) : exactMoney(Math.abs(by), purse);
  const dearer: Part[] = [figurePart(size), by < 0 ? ' cheaper' : ' dearer'];
  return [...whoseOf(name, kind), ...dearer];
}

function whoseOf(name: string, kind: Moved): Part[] {
  const whose: Readonly<Record<Moved, Part[]>> = {
    ingredient: [namePart(name), ' '],
    item: [namePart(name), ' '],
    group: ['All of ', namePart(name), ' '],
    supplier: ['Everything from ', namePart(name), ' '],
    section: ['Every dish of ', namePart(name), ' '],
    'everything-bought': ['Everything that is bought '],
    'whole-menu': ['The whole menu '],
  };
  return whose[kind];
}

function whatItDoes({ contribution, period }: PriceChangeFigures, purse: Purse): Part[] {
  const change = contribution.after - contribution.before;
  if (wholeMoney(Math.abs(change), purse) === wholeMoney(0, purse)) {
    return [` would have changed what ${period} left by less than `, figurePart(wholeMoney(1, purse))];
  }
  const sum = figurePart(wholeMoney(Math.abs(change), purse));
  return change < 0 ? [' would have taken ', sum, ` from ${period}`] : [' would have left ', sum, ` more in ${period}`];
}

function foodCost({ foodCost: { before, after } }: PriceChangeFigures, locale: string): Part[] {
  if (before === null || after === null) return [];
  const [from, to] = [perCentFigure(before, locale), perCentFigure(after, locale)];
  if (from === to) return [' and left food cost by recipe at ', figurePart(perCent(after, locale))];
  const verb = after > before ? 'lifted' : 'lowered';
  return [` and ${verb} food cost by recipe from `, figurePart(from), ' to ', figurePart(perCent(after, locale))];
}

/** Dishes that are told one by one; more are counted. */
const TOLD = 3;

function turning({ turned, names }: PriceChangeFigures, locale: string): Part[] {
  if (turned.length === 0) return [' No dish would change its class.'];
  const shorter = shortNames(names);
  const short = new Map(names.map((name, index) => [name, shorter[index] ?? name]));
  const told = (item: string): Part => namePart(short.get(item) ?? item);
  if (turned.length > TOLD) {
    const [first] = turned;
    const count = capital(countWord(turned.length, locale));
    return first
      ? [` ${count} dishes would change class, `, told(first.item), ` from ${first.from} to ${first.to} among them.`]
      : [];
  }
  return turned.flatMap(({ item, from, to }) => [' ', told(item), ` would turn from ${from} to ${to}.`]);
}

/** What the moved prices would have done to the period. Without any, what can be done. */
export function priceSentence(figures: PriceChangeFigures, purse: Purse): Phrase {
  const { moved } = figures;
  const [only] = moved;
  if (!only) return [`Move a price to see what it would have done to ${figures.period}.`];
  const who: Part[] =
    moved.length === 1 ? subject(only, purse) : [`These ${countWord(moved.length, purse.locale)} changes together`];
  return [
    ...who,
    ...whatItDoes(figures, purse),
    ...foodCost(figures, purse.locale),
    '.',
    ...turning(figures, purse.locale),
  ];
}

/** Dishes that the moved prices touch: those in the figures, and those whose margin is not known, which are in none. */
export interface TouchedDishes {
  readonly known: number;
  readonly unknown: number;
}

/** What the figures stand on; `touched` is null where nothing is moved. */
export function priceBasis(
  period: string,
  touched: TouchedDishes | null,
  dishes: number,
  locale: string,
): readonly string[] {
  return [
    `exact, every other price and all portions as in ${period}`,
    ...(touched === null ? [] : [usedBy(touched, dishes, locale)]),
    MODEL_SOURCE,
    PRICES.kept,
  ];
}

function usedBy({ known, unknown }: TouchedDishes, dishes: number, locale: string): string {
  const count = known === 0 ? 'none' : countWord(known, locale);
  const more =
    unknown === 0 ? '' : `, and ${countWord(unknown, locale)} whose margin is not known: in none of these figures`;
  return `${count} of ${countWord(dishes, locale)} dishes ${known < 2 ? 'is' : 'are'} touched by it${more}`;
}

/** One moved price in the list of them. */
export function movedText(moved: MovedPrice, purse: Purse): Phrase {
  const change = moved.change === null ? null : `${signedFigure(moved.change * 100, purse.locale, 1)}\u2009%`;
  if (moved.amount !== null) {
    const sign = moved.amount < 0 ? '\u2212' : '+';
    return [namePart(moved.name), ' ', figurePart(`${sign}${exactMoney(Math.abs(moved.amount), purse)}`)];
  }
  if (moved.price === null) return [namePart(moved.name), ' ', figurePart(change ?? 'as now')];
  const price = figurePart(unitPrice(moved.price, moved.unit, purse));
  return change === null
    ? [namePart(moved.name), ' ', price]
    : [namePart(moved.name), ' ', price, ' (', figurePart(change), ')'];
}

/** What the slider says to ears. */
export function spokenPrice(moved: MovedPrice, purse: Purse): string {
  return plainText(movedText(moved, purse).slice(2));
}

/** The name of the slider. */
export function rulerName(name: string, kind: Moved, unit: string): string {
  return `${plainText(whoseOf(name, kind)).trim()}, ${unit}`;
}

export function unitName(unit: 'g' | 'ml' | 'each'): string {
  return unit === 'each' ? 'piece' : unit === 'g' ? 'kg' : 'litre';
}

/** In what a price is counted; null is a price on the menu. */
export function priceUnit(unit: 'g' | 'ml' | 'each' | null, sign: string): string {
  return unit === null ? `${sign} on the menu` : `${sign} a ${unitName(unit)}`;
}

/** Why a change cannot be made. */
export function troubleText(name: string, why: 'touches-nothing' | 'below-zero', period: string): string {
  return why === 'below-zero'
    ? `${name} cannot cost less than nothing. Take back a part of the change.`
    : `Nothing called “${name}” had a price in ${period}, so that this change does nothing. Choose its name from the list.`;
}

/** A change in the address that cannot be read. */
export function unreadText(text: string): string {
  return `The address says “${text}”, which is no change of a price. It is written like Double cream:+10% or Double cream:6.20.`;
}

/** Under the ruler: its unit, what flags are, and what the band is. */
export function rulerNote(
  unit: string,
  paid: readonly [number, number] | null,
  hasFlags: boolean,
  purse: Purse,
): string {
  const flags = hasFlags ? ' Flags are turning prices: where a dish changes class if nothing else moves.' : '';
  const band =
    paid === null
      ? ''
      : ` The grey band is what was paid in the last 18 months, ${figure(paid[0], purse.locale, 2)} to ${figure(paid[1], purse.locale, 2)}.`;
  return `${unit === '%' ? 'Change of each price, %' : unit}.${flags}${band}`;
}

/** Where a class ends or begins, under the name of a flag. */
export function flagText(className: ClassName, isAbove: boolean): string {
  return isAbove ? `${className} from here` : `${className} up to here`;
}

export function nowText(price: string): string {
  return `now ${price}`;
}
