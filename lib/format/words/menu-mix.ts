import type { ModelName } from '../../model/mix/mix-model';
import { PROVISIONAL_BELOW } from '../../model/mix/mix-totals';
import { figure, perCent } from '../figures';
import { type Purse, wholeMoney } from '../money';
import { periodName } from '../periods';
import { capital, figurePart, namePart, type Part, type Phrase } from '../phrase';
import { countWord, portions, portionsFigure } from '../portions';
import { isOnTheLine, MODEL_SOURCES, type Standing } from './classes';
import { shortNames } from './short-names';

/** What the sentences of the menu mix are made from; a MenuMixAnswer has it all. */
export interface MixFigures {
  readonly model: ModelName;
  readonly setMenus: 'section' | 'spread';
  readonly month: string;
  readonly section: string | null;
  readonly currency: string;
  readonly tradingDays: number;
  readonly resamples: number | null;
  readonly totals: {
    readonly sold: number;
    readonly costedSold: number;
    /** Null: known of no portion. */
    readonly revenue: string | null;
    /** Of the costed portions, those with an owner's estimate in their cost. */
    readonly estimatedSold: number;
    readonly foodCostPct: number | null;
    readonly margin: string | null;
  };
  readonly coverage: number | null;
  /** Sold under names that nobody knows. */
  readonly waiting: {
    readonly rows: number;
    readonly portions: number;
    readonly names: number;
    readonly largest: readonly string[];
  };
  readonly stockCounted: boolean;
  readonly items: readonly (Standing & {
    readonly item: string;
    readonly sold: number;
    readonly netPrice: string | null;
    readonly plateCost: string | null;
  })[];
}

export interface Telling {
  readonly locale: string;
  /** The period is not over yet. */
  readonly running: boolean;
}

/** Fewer trading days than this say nothing about certainty. */
const DAYS_FOR_CERTAINTY = 14;

/** The dishes on the line, the one nearest to a coin's toss first. */
export function onTheLine<T extends Standing>(items: readonly T[]): readonly T[] {
  const likeliest = (item: T) => (item.classShares ? Math.max(...Object.values(item.classShares)) : 1);
  return items.filter(isOnTheLine).sort((a, b) => likeliest(a) - likeliest(b));
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
  if (totals.sold === 0)
    return [...when, 'nothing was sold', mix.waiting.rows > 0 ? ' under a name that is known.' : '.'];
  if (totals.margin === null || coverage === null || totals.costedSold === 0) {
    const were = totals.sold === 1 ? ' was sold' : ' were sold';
    if (totals.revenue === null)
      return [...when, sold, `${were}. What they brought in is not known: none has a price.`];
    const brought: Part[] = [' brought in ', figurePart(wholeMoney(totals.revenue, purse)), ' net'];
    return [...when, sold, ...brought, `. What they left is not known: ${whyNoMargin(mix)}.`];
  }
  if (totals.costedSold === totals.sold) return [...when, sold, ...left(totals.margin, purse), '.'];
  return [
    ...when,
    sold,
    ', with margins known for ',
    figurePart(perCent(coverage, locale, coverage > 0.99 ? 1 : 0)),
    ' of them. Those ',
    figurePart(portionsFigure(totals.costedSold, locale)),
    ...left(totals.margin, purse),
    coverage < PROVISIONAL_BELOW ? ', and the margin line is provisional.' : '.',
  ];
}

/** What keeps every dish that was sold without a margin. */
function whyNoMargin({ items }: MixFigures): string {
  const soldItems = items.filter(({ sold }) => sold > 0);
  if (soldItems.every(({ plateCost }) => plateCost === null)) return 'no dish has a cost yet';
  return soldItems.every(({ netPrice }) => netPrice === null)
    ? 'portions of every dish have no price'
    : 'no dish has both a cost and a price for all its portions';
}

/** What the food cost stands on: recipes, the owner's estimates, and no count of stock where none was made. */
function foundation({ totals, stockCounted }: MixFigures, locale: string): Part[] {
  const counted = stockCounted ? '' : ', as no stock was counted';
  const share = estimatedShare(totals);
  if (share === 0) return [` by recipe only${counted}`];
  if (share === 1) return [` by the owner’s estimates${counted}`];
  const figureOfShare = figurePart(perCent(share, locale, 0));
  return [' by recipe, and by the owner’s estimate for ', figureOfShare, ` of these portions${counted}`];
}

function estimatedShare({ estimatedSold, costedSold }: MixFigures['totals']): number {
  return costedSold > 0 ? estimatedSold / costedSold : 0;
}

function certainty(mix: MixFigures, locale: string): Part[] {
  if (!mix.items.some((item) => item.class !== null)) return [];
  if (mix.resamples === null) {
    const days = `${countWord(mix.tradingDays, locale)} trading ${mix.tradingDays === 1 ? 'day is' : 'days are'}`;
    const needed = countWord(DAYS_FOR_CERTAINTY, locale);
    return [` ${capital(days)} too few to say how sure the classes are: it takes ${needed}.`];
  }
  const names = shortNames(mix.items.map(({ item }) => item));
  const doubtful = onTheLine(mix.items.map((item, index) => ({ ...item, item: names[index] ?? item.item })));
  const most = doubtful[0];
  if (most === undefined) {
    const isSettled = mix.items.every(({ settled }) => settled !== false);
    return [isSettled ? ' Every dish with a class is settled.' : ' No dish is on the line.'];
  }
  if (doubtful.length === 1) return [' One dish is on the line, ', namePart(most.item), '.'];
  const count = capital(countWord(doubtful.length, locale));
  return [` ${count} dishes are on the line, `, namePart(most.item), ' most of all.'];
}

/** What was sold in the venue under names that nobody knows, the largest by name. A section says nothing of it: it may not be its own. */
function waits({ section, waiting, totals }: MixFigures, locale: string): Part[] {
  if (section !== null || waiting.rows === 0) return [];
  const { largest } = waiting;
  const others = waiting.names - largest.length;
  const names = largest.flatMap((name, index): Part[] => {
    const last = index === largest.length - 1 && others === 0;
    return [index === 0 ? ': ' : last ? ' and ' : ', ', namePart(name)];
  });
  const more = others > 0 ? ` and ${countWord(others, locale)} more` : '';
  const count = `${portionsFigure(waiting.portions, locale)}${totals.sold > 0 ? ' more' : ''}`;
  const wait = waiting.portions === 1 ? ' portion waits' : ' portions wait';
  return [' ', figurePart(count), `${wait} for a name`, ...names, `${more}.`];
}

/**
 * The few sentences at the head of the mix, made by rule from the same figures as the table: what was sold and what it left, then
 * food cost and what it stands on, what is in doubt, and what is in none of it.
 */
export function mixSentences(mix: MixFigures, telling: Telling): Phrase {
  const { locale } = telling;
  const first = opening(mix, telling);
  const { foodCostPct, costedSold, sold } = mix.totals;
  if (foodCostPct === null || sold === 0) return [...first, ...waits(mix, locale)];
  const whose = costedSold === sold ? 'Food cost' : 'Their food cost';
  const verb = telling.running ? 'is' : 'was';
  return [
    ...first,
    ` ${whose} ${verb} `,
    figurePart(perCent(foodCostPct, locale)),
    ...foundation(mix, locale),
    '.',
    ...certainty(mix, locale),
    ...waits(mix, locale),
  ];
}

/** What the figures of the page stand on: model and source, scope, valuation, days. */
export function mixBasis(mix: MixFigures, { locale }: Telling): readonly string[] {
  const days = mix.tradingDays === 1 ? 'business day' : 'business days';
  return [
    MODEL_SOURCES[mix.model],
    mix.section === null ? 'whole menu, sections by shape' : `section ${mix.section}, averages of its own`,
    ...(mix.setMenus === 'spread' ? ['set menus spread over their courses'] : []),
    'achieved prices, net',
    `${figure(mix.tradingDays, locale, 0)} ${days} with sales`,
    costsBy(mix.totals, locale),
  ];
}

function costsBy(totals: MixFigures['totals'], locale: string): string {
  const share = estimatedShare(totals);
  if (share === 1) return 'costs by the owner’s estimates';
  const recipes = 'costs by the price in force each day';
  return share === 0
    ? recipes
    : `${recipes}, for ${perCent(share, locale, 0)} of the costed portions by the owner’s estimate`;
}
