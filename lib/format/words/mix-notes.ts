import { figure, perCent } from '../figures';
import { figurePart, namePart, type Part, type Phrase } from '../phrase';
import { countWord } from '../portions';
import { type ClassName, otherClass, pairInPerCent, type Standing } from './classes';

export const NOTES = {
  onTheLine: 'On the line',
  howToRead: 'How to read it',
  settled: 'settled',
  doubtful: 'on the line',
  doubtfulOwn: 'on its own line',
  costNext: 'Cost these next',
  missing: 'What is missing',
  regions:
    'Round each dish, how far its share and margin could have fallen by chance. A region that crosses a line means: at least one resample in ten lands on the other side. That part is hatched.',
  regionsOwn:
    'Round each dish, how far its share and margin could have fallen by chance. A region that crosses its own line, or the level one, means: at least one resample in ten lands on the other side. That part is hatched.',
  ownLines:
    'Dishes were on sale on different days, so each is popular from a share of its own, between the two dashed lines. A dish on the line shows its own as a short stroke, any other dish when you choose it.',
  curves: 'Pale curves join equal sums for the period.',
  curvesAndChance:
    'Pale curves join equal sums for the period. Chance in the sales only is meant, not error in the costs.',
} as const;

/** The classes a doubtful dish was put in, its own first: plowhorse 81, star 19. */
export function shareWords(standing: Standing, locale: string): Phrase {
  const { class: own, classShares } = standing;
  const other = otherClass(standing);
  if (own === null || classShares === null || other === null) return [];
  const [first, rest] = pairInPerCent(classShares[own] ?? 0, classShares[other] ?? 0);
  const part = (name: ClassName, share: number): Part[] => [namePart(name), ` ${figure(share, locale, 0)}`];
  return [...part(own, first), ', ', ...part(other, rest)];
}

export function resamplesNote(resamples: number, locale: string): string {
  return `Per cent of ${figure(resamples, locale, 0)} resamples of the period’s days that put the dish in each class.`;
}

/** Which dishes to cost next, and how much of the sales that would settle. */
export function costNextPhrase(
  items: readonly { readonly item: string; readonly share: number }[],
  locale: string,
): Phrase {
  const share = items.reduce((sum, item) => sum + item.share, 0);
  const names = items.flatMap((item, index): Part[] => {
    const comma = index === items.length - 1 ? ' and ' : ', ';
    return [index === 0 ? '' : comma, namePart(item.item)];
  });
  if (items.length === 1) return [...names, ' alone is ', figurePart(perCent(share, locale)), ' of portions.'];
  return [
    ...names,
    ` are ${countWord(items.length, locale)} dishes and `,
    figurePart(perCent(share, locale)),
    ' of portions.',
  ];
}

export function more(count: number, locale: string): string {
  return `and ${countWord(count, locale)} more`;
}
