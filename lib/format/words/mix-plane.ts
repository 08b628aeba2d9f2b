import { type Decimals, figure, perCent, perCentFigure } from '../figures';
import { exactMoneyFigure, money, type Purse } from '../money';
import { figurePart, namePart, type Part, type Phrase } from '../phrase';
import { countWord } from '../portions';
import { CLASS_MEANING, classBefore, isDoubtedBefore, otherClass, pairInPerCent, type Standing } from './classes';

export const PLANE = {
  name: 'Menu mix: share of portions against what a portion leaves; the same facts are in the table below',
  choose:
    'Choose a dish: point at a mark, or step into the picture and use the arrow keys; Enter opens the dish, Escape lets go.',
  chooseOnPhone: 'Touch a mark to read it.',
  shareAxis: 'share of portions, %',
  sections: 'Sections by shape',
  noSection: 'no section',
  waiting: 'The picture is being drawn.',
  nothing: 'There is nothing to draw: no dish has both sales and a cost.',
} as const;

export function marginAxis(sign: string): string {
  return `left per portion, ${sign}`;
}

export function contributionAxis(sign: string, short: boolean): string {
  return short ? `curves: ${sign} left in the period` : `${sign} in the period`;
}

/** The share from which a dish is popular, or the span of the dishes' own. */
export interface Popularity {
  readonly low: number;
  readonly high: number;
}

/** Beside the upright threshold, and shorter for where there is little room. */
export function popularityLine(
  popularity: Popularity,
  locale: string,
): { readonly words: string; readonly short: string } {
  const { low, high } = popularity;
  if (high - low < 1e-9) {
    const words = `popular from ${perCent(low, locale, EXACT)}`;
    return { words, short: words };
  }
  const from = perCentFigure(low, locale, 1);
  const to = perCent(high, locale, 1);
  return { words: `popular from ${from} to ${to}, by days on sale`, short: `popular from ${from} to ${to}` };
}

/** The exact share, to three decimals where it has no end. */
const EXACT: Decimals = { least: 0, most: 3 };

/** At the end of the level threshold, in two lines. */
export function marginLine(margin: string, purse: Purse): readonly [string, string] {
  return ['high margin', `from ${exactMoneyFigure(margin, purse)}`];
}

/** What a mark says when it is chosen: the figures, then the class and how sure it is. */
export interface MarkFacts extends Standing {
  readonly item: string;
  readonly share: number;
  readonly margin: string;
  readonly estimated: boolean;
  /** The share from which it is popular, where that is not the same for all. */
  readonly ownThreshold: number | null;
}

function outOfHundred(share: number, locale: string): string {
  return figure(share * 100, locale, 0);
}

function sureness(mark: MarkFacts, locale: string): Part[] {
  if (mark.class === null) return ['not classed: on sale on too few days'];
  const meaning: Part[] = [`${CLASS_MEANING[mark.class]} (`, namePart(mark.class), ')'];
  if (mark.classShares === null) return [...meaning, '; too few days to say how sure'];
  const own = outOfHundred(mark.classShares[mark.class] ?? 0, locale);
  if (isDoubtedBefore(mark))
    return [...meaning, ` in ${own} of 100 resamples, ${classBefore(mark)} in the period before`];
  const other = otherClass(mark);
  if (other === null) return [...meaning, ` in ${own} of 100 resamples, settled`];
  const [first, second] = pairInPerCent(mark.classShares[mark.class] ?? 0, mark.classShares[other] ?? 0);
  const counted = (count: number): string => figure(count, locale, 0);
  return [...meaning, ` in ${counted(first)} of 100 resamples, `, namePart(other), ` in ${counted(second)}`];
}

/** The line under the picture for the chosen dish, without its name. */
export function markReading(mark: MarkFacts, purse: Purse): Phrase {
  const threshold: Part[] =
    mark.ownThreshold === null
      ? []
      : [' (popular from ', figurePart(perCent(mark.ownThreshold, purse.locale, { least: 1, most: 2 })), ')'];
  const estimate = mark.estimated ? ' by the owner’s estimate' : '';
  return [
    figurePart(perCent(mark.share, purse.locale)),
    ' of portions',
    ...threshold,
    ' · leaves ',
    figurePart(money(mark.margin, purse)),
    `${estimate} · `,
    ...sureness(mark, purse.locale),
  ];
}

/** How many dishes a sentence names before it counts the rest. */
const NAMED = 8;

/** Beneath the picture: what could not be drawn, and why. */
export function notDrawn(items: readonly { readonly item: string; readonly share: number }[], locale: string): Phrase {
  if (items.length === 0) return [];
  const named = items.slice(0, NAMED);
  const rest = items.length - named.length;
  const names = named.flatMap((item, index): Part[] => [
    index === 0 ? ' ' : ', ',
    namePart(item.item),
    ' (',
    figurePart(perCent(item.share, locale)),
    ')',
  ]);
  return [
    'Not in the picture, since what they leave is not known:',
    ...names,
    rest === 0 ? '.' : ` and ${countWord(rest, locale)} more.`,
  ];
}
