import { figure, perCent } from '../figures';
import { money, type Purse } from '../money';
import { figurePart, type Part, type Phrase } from '../phrase';

/** What advice on a dish is worded from; the advice of an answer is one. */
export interface AdviceFigures {
  readonly againstAverage: string;
  readonly leavesLess: number | null;
  readonly rise: string | null;
  readonly mayLose: number | null;
  readonly takenOffFrom: number | null;
  readonly onlyWithout: readonly string[];
  readonly mostPlatingMinutes: number | null;
}

export const ADVICE = {
  title: 'What it would take',
  /** Of onlyWithout. */
  caution: 'By what is declared: it says nothing of cross-contact, so labels and qualified people go first.',
} as const;

/** What can be said of a dish, each sentence with its condition; nothing is commanded. */
export function adviceSentences(advice: AdviceFigures, purse: Purse): readonly Phrase[] {
  return [
    againstAverage(advice, purse),
    ...(advice.rise === null ? [] : [toTheAverage(advice.rise, advice.mayLose, purse)]),
    ...(advice.takenOffFrom === null ? [] : [takenOff(advice.takenOffFrom, purse.locale)]),
    ...carries(advice, purse.locale),
  ];
}

function againstAverage({ againstAverage: margin, leavesLess }: AdviceFigures, purse: Purse): Phrase {
  const isLess = margin.startsWith('-');
  const amount = figurePart(money(margin.replace('-', ''), purse));
  const side = isLess ? 'less' : 'more';
  const often = leavesLess === null ? null : isLess ? leavesLess : 1 - leavesLess;
  const sure: Part[] =
    often === null ? [] : [', in ', figurePart(figure(often * 100, purse.locale, 0)), ' of 100 resamples'];
  if (Number(margin) === 0) return ['It leaves as much a portion as the average.'];
  return ['It leaves ', amount, ` ${side} a portion than the average`, ...sure, '.'];
}

function toTheAverage(rise: string, mayLose: number | null, purse: Purse): Phrase {
  const reach: Part[] = [
    'At a net price ',
    figurePart(money(rise, purse)),
    ' higher it would leave the average, which it lifts too',
  ];
  if (mayLose === null) return [...reach, '.'];
  const lose = figurePart(perCent(mayLose, purse.locale, { least: 0, most: 1 }));
  return [...reach, '; it may then lose ', lose, ' of its portions before it leaves less in the period than now.'];
}

function takenOff(from: number, locale: string): Phrase {
  if (from > 1) return ['Taking it off never pays, even if all of its guests ordered another dish.'];
  if (from <= 0) return ['It leaves nothing: without it every guest who orders another dish leaves more.'];
  const share = figurePart(perCent(from, locale, 0));
  return ['Taking it off pays only if more than ', share, ' of its guests order another dish instead.'];
}

function carries({ onlyWithout, mostPlatingMinutes }: AdviceFigures, locale: string): readonly Phrase[] {
  const without =
    onlyWithout.length === 0
      ? []
      : [`It is the only one on the menu without declared ${listed(onlyWithout)}. ${ADVICE.caution}`];
  const plating =
    mostPlatingMinutes === null
      ? []
      : [`None takes more plating: ${figure(mostPlatingMinutes, locale, { least: 0, most: 1 })} minutes.`];
  return [...without, ...plating].map((text) => [text]);
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
}
