import { figure, perCent } from '../figures';
import { type Purse, wholeMoney } from '../money';
import { periodName } from '../periods';
import { figurePart, namePart, type Part, type Phrase } from '../phrase';
import { countWord, portions, portionsFigure } from '../portions';
import { MODEL_SOURCE, type Standing } from './classes';
import { shortNames } from './short-names';

/** What the sentences of the menu mix are made from; a MenuMixAnswer has it all. */
export interface MixFigures {
  readonly month: string;
  readonly section: string | null;
  readonly currency: string;
  readonly tradingDays: number;
  readonly resamples: number | null;
  readonly totals: {
    readonly sold: number;
    readonly costedSold: number;
    readonly revenue: string;
    readonly foodCostPct: number | null;
    readonly margin: string | null;
  };
  readonly coverage: number | null;
  readonly items: readonly (Standing & { readonly item: string })[];
}

export interface Telling {
  readonly locale: string;
  /** The period is not over yet. */
  readonly running: boolean;
}

/** Below this share of portions with a known margin, the line between high and low margin is provisional. */
const PROVISIONAL_BELOW = 0.9;
/** Fewer trading days than this say nothing about certainty. */
const DAYS_FOR_CERTAINTY = 14;

/** The dishes on the line, the one nearest to a coin's toss first. */
export function onTheLine<T extends Standing>(items: readonly T[]): readonly T[] {
  const likeliest = (item: T) => (item.classShares ? Math.max(...Object.values(item.classShares)) : 1);
  return items.filter((item) => item.settled === false).sort((a, b) => likeliest(a) - likeliest(b));
}

function left(margin: string, purse: Purse): Part[] {
  if (Number(margin) >= 0) return [' left ', figurePart(wholeMoney(margin, purse)), ' before labour'];
  return [' cost ', figurePart(wholeMoney(margin.slice(1), purse)), ' more than they brought in, before labour'];
}

function opening(mix: MixFigures, { locale, running }: Telling): Part[] {
  const { totals, coverage } = mix;
  const purse = { currency: mix.currency, locale };
  const inSection: Part[] = mix.section === null ? [] : [' in ', namePart(mix.section)];
  const when: Part[] = [`${periodName(mix.month, locale)}${running ? ' so far' : ''}`, ...inSection, ': '];
  const sold = figurePart(portions(totals.sold, locale));
  if (totals.sold === 0) return [...when, 'nothing was sold.'];
  if (totals.margin === null || coverage === null || totals.costedSold === 0) {
    return [
      ...when,
      sold,
      ' brought in ',
      figurePart(wholeMoney(totals.revenue, purse)),
      ' net. What they left is not known: no dish has a cost yet.',
    ];
  }
  if (totals.costedSold === totals.sold) return [...when, sold, ...left(totals.margin, purse), '.'];
  return [
    ...when,
    sold,
    ', margins known for ',
    figurePart(perCent(coverage, locale, coverage > 0.99 ? 1 : 0)),
    ' of them; those ',
    figurePart(portionsFigure(totals.costedSold, locale)),
    ...left(totals.margin, purse),
    coverage < PROVISIONAL_BELOW ? ', and the margin line is provisional.' : '.',
  ];
}

function certainty(mix: MixFigures, locale: string): Part[] {
  if (!mix.items.some((item) => item.class !== null)) return [];
  if (mix.resamples === null) {
    const days = `${countWord(mix.tradingDays, locale)} trading ${mix.tradingDays === 1 ? 'day is' : 'days are'}`;
    const needed = countWord(DAYS_FOR_CERTAINTY, locale);
    return [`; ${days} too few to say how sure the classes are (it takes ${needed})`];
  }
  const names = shortNames(mix.items.map(({ item }) => item));
  const doubtful = onTheLine(mix.items.map((item, index) => ({ ...item, item: names[index] ?? item.item })));
  const most = doubtful[0];
  if (most === undefined) return ['; every dish with a class is settled'];
  if (doubtful.length === 1) return ['; one dish is on the line, ', namePart(most.item)];
  return [`; ${countWord(doubtful.length, locale)} dishes are on the line, `, namePart(most.item), ' most of all'];
}

/**
 * The one or two sentences at the head of the mix, made by rule from the same figures as the table: what was sold and what it left,
 * then food cost, what it stands on, and what is in doubt.
 */
export function mixSentences(mix: MixFigures, telling: Telling): Phrase {
  const first = opening(mix, telling);
  const { foodCostPct, costedSold, sold } = mix.totals;
  if (foodCostPct === null || sold === 0) return first;
  const whose = costedSold === sold ? 'Food cost' : 'Their food cost';
  const verb = telling.running ? 'is' : 'was';
  return [
    ...first,
    ` ${whose} ${verb} `,
    figurePart(perCent(foodCostPct, telling.locale)),
    ' by recipe only: no stock was counted',
    ...certainty(mix, telling.locale),
    '.',
  ];
}

/** What the figures of the page stand on: model and source, scope, valuation, days. */
export function mixBasis(mix: MixFigures, { locale }: Telling): readonly string[] {
  const days = mix.tradingDays === 1 ? 'business day' : 'business days';
  return [
    MODEL_SOURCE,
    mix.section === null ? 'whole menu, sections by shape' : `section ${mix.section}, averages of its own`,
    'achieved prices, net',
    `${figure(mix.tradingDays, locale, 0)} ${days} with sales`,
    'costs by the price in force each day',
  ];
}
