import type { ItemKind } from '../../model/facts';
import { figure, perCent } from '../figures';
import { currencySign, exactMoney, moneyFigure, type Purse } from '../money';
import { dayName, periodName } from '../periods';
import { figurePart, namePart, type Part, type Phrase } from '../phrase';
import { portions } from '../portions';

/** What the words of a line are made from; a line of a DishCostAnswer has it all. */
export interface WorkedLine {
  readonly item: string;
  readonly kind: ItemKind | 'estimate' | 'not_measured';
  readonly quantity: number | null;
  readonly unit: string | null;
  readonly bought: number | null;
  readonly boughtUnit: string | null;
  readonly usableYieldPct: number | null;
  readonly unitPrice: string | null;
  readonly sharePct: number | null;
  readonly use: string | null;
  readonly part: string | null;
  readonly byProduct: 'made' | 'used' | null;
  readonly department: string | null;
  readonly estimated: boolean;
  readonly offer: WorkedOffer | null;
  readonly recipe: WorkedRecipeWords | null;
}

export interface WorkedOffer {
  readonly supplier: string;
  readonly code: string;
  readonly packCount: number;
  readonly packSize: number;
  readonly packUnit: string;
  readonly price: string;
  readonly currency: string;
  readonly rate: number;
  readonly priceKind: string;
  readonly priceFrom: string;
  readonly priceTo: string | null;
}

export interface WorkedRecipeWords {
  readonly validFrom: string | null;
  readonly usable: number | null;
  readonly usableUnit: string | null;
  readonly batchLossG: number | null;
  readonly breakagePct: number;
  readonly overrunPct: number | null;
  readonly costSharePct: number | null;
}

export const WORKING = {
  line: 'Line',
  how: 'Worked out',
  from: 'From',
  plateCost: 'Plate cost',
  batchCost: 'One batch',
  unknown: 'unknown',
  packaging: 'packaging',
  estimate: 'the owner’s estimate',
  partEstimate: 'part of it is the owner’s estimate',
  notMeasured: 'Not measured',
  byProductMade: 'made beside it and taken off at its credit',
  byProductUsed: 'made elsewhere as a by-product and worth its credit',
  /** Before a plate cost that stands outside its column. */
  costs: 'costs ',
  closed: 'too many lines to show here',
  reading: 'Reading the recipe and the prices of the day.',
  tryAgain: 'Read it again',
  everyLine: 'every line',
  fewerLines: 'fewer lines',
  failed: 'The working could not be read: the program did not answer. Is it still running?',
  close: 'Close the working',
} as const;

const MARK_OF_KIND: Readonly<Record<string, string>> = {
  agreed: 'agreed price',
  list: 'list price',
  quote: 'quote',
  invoice: 'invoice',
};

/** A quantity as a kitchen reads it: four figures at most, so that what is shown can be worked out again. */
export function quantityFigure(quantity: number, locale: string): string {
  const places = quantity === 0 ? 0 : 3 - Math.floor(Math.log10(Math.abs(quantity)));
  return figure(quantity, locale, { least: 0, most: Math.min(6, Math.max(0, places)) });
}

function amount(quantity: number, unit: string | null, locale: string): string {
  const text = quantityFigure(quantity, locale);
  if (unit === null || unit === 'each') return text;
  return `${text}\u00a0${unit}`;
}

function output(quantity: number, unit: string | null, locale: string): string {
  const text = amount(quantity, unit, locale);
  return unit === 'each' ? `${text} ${quantity === 1 ? 'piece' : 'pieces'}` : text;
}

/** By what a price is said: the kilogram, the litre, the piece. */
const SAID_BY: Readonly<Record<string, readonly [size: number, words: string]>> = {
  g: [1000, 'a kg'],
  ml: [1000, 'a litre'],
  each: [1, 'each'],
};

/** A price of one base unit: €16.40 a kg. */
export function priceWords(unitPrice: string, unit: string | null, purse: Purse): string {
  const [size, words] = SAID_BY[unit ?? 'each'] ?? [1, `a ${unit}`];
  return `${exactMoney(Number(unitPrice) * size, purse)} ${words}`;
}

/** The sum of one line: 20 g ÷ 0.93 usable ÷ 0.88 served × €16.40 a kg. Of what is not known, the word stands. */
export function sumWords(line: WorkedLine, breakage: number, purse: Purse): string {
  const { locale } = purse;
  if (line.kind === 'not_measured') return notMeasuredWords(line, purse);
  const price = line.unitPrice === null ? 'price unknown' : priceWords(line.unitPrice, line.boughtUnit, purse);
  if (line.quantity === null) return price;
  const sign = line.byProduct === 'made' ? -1 : 1;
  const stated = amount(sign * line.quantity, line.unit, locale);
  const of = line.use === null ? 'usable' : `usable as ${line.use}`;
  const factors = [
    ...crossing(line, breakage, locale),
    ...(line.sharePct === null ? [] : [`× ${perCent(line.sharePct, locale, { least: 0, most: 1 })} of guests`]),
    ...(line.usableYieldPct === null || line.usableYieldPct === 1
      ? []
      : [`÷ ${factor(line.usableYieldPct, locale)} ${of}`]),
    ...(breakage === 0 ? [] : [`÷ ${factor(1 - breakage, locale)} served`]),
  ];
  return [stated, ...factors, `× ${price}`].join(' ');
}

function factor(fraction: number, locale: string): string {
  return figure(fraction, locale, { least: 2, most: 4 });
}

/** Where a line is stated in another unit than it is bought in: 2 leaf, that is 4 g. */
function crossing(line: WorkedLine, breakage: number, locale: string): readonly string[] {
  if (line.bought === null || line.usableYieldPct === null || line.unit === line.boughtUnit) return [];
  const inBase = (line.bought * line.usableYieldPct * (1 - breakage)) / (line.sharePct ?? 1);
  return [`= ${amount(inBase, line.boughtUnit, locale)}`];
}

function notMeasuredWords(line: WorkedLine, purse: Purse): string {
  const share = perCent(line.quantity ?? 0, purse.locale, { least: 0, most: 2 });
  if (line.unitPrice === null) return `${share} of the food and drink`;
  return `${share} of ${exactMoney(line.unitPrice, purse)} of food and drink`;
}

/** The name of a line, where it is not that of an item. */
export function lineName(line: WorkedLine): string {
  if (line.kind === 'not_measured') return WORKING.notMeasured;
  return line.kind === 'estimate' ? `${line.item}, ${WORKING.estimate}` : line.item;
}

/** What a line is, where it is not food from a supplier: packaging, or partly an estimate. */
export function lineMark(line: WorkedLine): string | null {
  if (line.kind === 'estimate' || line.kind === 'not_measured') return null;
  if (line.byProduct !== null) return line.byProduct === 'made' ? WORKING.byProductMade : WORKING.byProductUsed;
  if (line.department === 'packaging') return WORKING.packaging;
  return line.estimated ? WORKING.partEstimate : null;
}

/** Where a price comes from: Strand Dry Goods, code 4410: 4 × 2.5 kg at €164.00, invoice of 3 October 2026. */
export function offerWords(offer: WorkedOffer, purse: Purse): string {
  const { locale } = purse;
  const size = output(offer.packSize, offer.packUnit, locale);
  const pack = offer.packCount === 1 ? size : `${quantityFigure(offer.packCount, locale)} × ${size}`;
  const price = exactMoney(offer.price, { currency: offer.currency, locale });
  const kind = MARK_OF_KIND[offer.priceKind] ?? offer.priceKind;
  const from = `${kind} of ${dayName(offer.priceFrom, locale)}`;
  const until = offer.priceTo === null ? '' : `, until ${dayName(offer.priceTo, locale)}`;
  const rate = offer.rate === 1 ? '' : ` × ${figure(offer.rate, locale, { least: 2, most: 6 })}`;
  return `${offer.supplier}, code ${offer.code}: ${pack} at ${price}${rate}, ${from}${until}`;
}

/** The version a recipe is made by, and what happens to a batch: only what is out of the ordinary. */
export function recipeWords(recipe: WorkedRecipeWords, isBatch: boolean, locale: string): string {
  const { validFrom, usable, usableUnit, batchLossG, breakagePct, overrunPct, costSharePct } = recipe;
  if (costSharePct !== null) return partWords(usable, usableUnit, costSharePct, locale);
  const version = validFrom === null ? 'The first version' : `Version of ${dayName(validFrom, locale)}`;
  const gives =
    usable === null ? 'what a batch gives is not known' : `a batch gives ${output(usable, usableUnit, locale)}`;
  const lost = batchLossG ? ` after ${amount(batchLossG, 'g', locale)} lost in every batch` : '';
  const air = overrunPct ? ` with ${perCent(overrunPct, locale, { least: 0, most: 1 })} air` : '';
  const broken =
    breakagePct === 0 ? [] : [`${perCent(breakagePct, locale, { least: 0, most: 1 })} breaks or is re-fired`];
  return [version, ...(isBatch ? [`${gives}${air}${lost}`] : []), ...broken].join(' · ');
}

/** How a part of something bought is priced: one gives 18 g, at 45 % of its price. */
function partWords(gives: number | null, unit: string | null, share: number, locale: string): string {
  const price = `${perCent(share, locale, { least: 0, most: 1 })} of its price`;
  return gives === null ? price : `one of the whole gives ${output(gives, unit, locale)}, at ${price}`;
}

/** The whole as the sum of its largest parts: 3.179 = 0.812 Chocolate mousse + 0.472 Dulse praline + 1.895 for 8 more. */
export function sumPhrase(
  total: string,
  parts: readonly { readonly name: string; readonly cost: string }[],
  rest: { readonly cost: string; readonly count: number } | null,
): Phrase {
  const named = parts.flatMap(({ name, cost }, index) => [...term(cost, index === 0), ' ', namePart(name)]);
  const more = rest === null ? [] : [...term(rest.cost, false), ` for ${rest.count} more`];
  return [figurePart(total), ' = ', ...named, ...more];
}

/** A term of a sum with its operator; a credit is taken off. */
function term(cost: string, isFirst: boolean): readonly Part[] {
  if (isFirst) return [figurePart(cost)];
  return cost.startsWith('\u2212') ? [' \u2212 ', figurePart(cost.slice(1))] : [' + ', figurePart(cost)];
}

/** What is unknown of a cost, with the part that is known. */
export function floorWords(floor: string | null, purse: Purse): string {
  return floor === null ? WORKING.unknown : `at least ${moneyFigure(floor, purse)}`;
}

/** Head of the column of costs. */
export function costHead(purse: Purse): readonly [string, string] {
  return ['Cost', currencySign(purse)];
}

/** What an opened figure is: the name of its region. */
export function workingName(item: string): string {
  return `How the plate cost of ${item} is made up`;
}

export function openWords(item: string, cost: string): string {
  return `${cost}, plate cost of ${item}: how it is made up`;
}

/** What the words of a mean are made from; the period of a DishCostAnswer has it all. */
interface Mean {
  readonly month: string;
  readonly sold: number;
  readonly plateCost: string | null;
  readonly spans: readonly MeanSpan[];
}

interface MeanSpan {
  readonly channel: string | null;
  readonly from: string;
  readonly sold: number;
  readonly plateCost: string | null;
}

/** What the figure of a period is a mean of, and which day the working stands for. */
export function meanWords(
  period: Mean,
  { date, channel }: { readonly date: string; readonly channel: string | null },
  purse: Purse,
): string {
  const { locale } = purse;
  const month = periodName(period.month, locale);
  const day = dayName(date, locale);
  if (period.spans.length === 1) {
    const same = period.plateCost === null ? 'not known' : exactMoney(period.plateCost, purse);
    return `${month}: ${same} on every day on sale. Worked out for ${day}, the last of them.`;
  }
  const isApart = period.spans.some((span) => span.channel !== null);
  const where = isApart && channel !== null ? `, ${channelWords(channel)}` : '';
  const weighed = period.sold > 0 ? `the mean of ${portions(period.sold, locale)}` : 'the mean of its days on sale';
  const mean =
    period.plateCost === null ? 'not known on every day' : `${exactMoney(period.plateCost, purse)}, ${weighed}`;
  return `${month}: ${mean}. Worked out for ${day}, the last day on sale${where}.`;
}

/** The parts of a mean, where there is more than one: dine in from 1 October 2026 €1.838, 380 portions. */
export function spanWords(period: Mean, purse: Purse): readonly string[] {
  const { locale } = purse;
  if (period.spans.length === 1) return [];
  return period.spans.map((span) => {
    const where = span.channel === null ? '' : `${channelWords(span.channel)} `;
    const cost = span.plateCost === null ? WORKING.unknown : exactMoney(span.plateCost, purse);
    const counted = period.sold > 0 ? `, ${portions(span.sold, locale)}` : '';
    return `${where}from ${dayName(span.from, locale)} ${cost}${counted}`;
  });
}

/** dine_in as dine in. */
function channelWords(channel: string): string {
  return channel.replaceAll('_', ' ');
}

/** What a cost is the cost of, on which day. */
export function headWords(
  working: {
    readonly item: string;
    readonly kind: ItemKind;
    readonly date: string;
    readonly channel: string | null;
    readonly per: { readonly quantity: number; readonly unit: string } | null;
  },
  locale: string,
): string {
  const { per } = working;
  const of =
    per === null
      ? 'one batch'
      : per.unit === 'each' && per.quantity === 1
        ? 'one portion'
        : amount(per.quantity, per.unit, locale);
  const where = working.channel === null ? '' : `, ${channelWords(working.channel)}`;
  return `${working.item}, ${of}, on ${dayName(working.date, locale)}${where}`;
}
