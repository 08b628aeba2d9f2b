import { figure } from '../figures';
import { dayName } from '../periods';
import type { ProblemWords } from './problems';

export const PREP = {
  dishes: 'What is served',
  make: 'What to make',
  take: 'What to take from the store, as bought',
  work: 'Hands-on work',
  item: 'Item',
  channel: 'Channel',
  expected: 'Expected',
  portions: 'Portions',
  component: 'Component',
  needed: 'Needed',
  held: 'Counted',
  toMake: 'To make',
  batches: 'Batches',
  ahead: 'From',
  minutes: 'Minutes',
  grade: 'Grade',
  ingredient: 'Ingredient',
  quantity: 'Quantity',
  group: 'Group',
  plating: 'Plating',
  nobody: 'nobody said whose',
  unknown: 'unknown',
  none: '',
  enough: 'enough',
  tooOld: 'too old',
  thatDay: 'that day',
  nothing: 'Nothing is expected on this day. Name portions with --expect "NAME=20".',
} as const;

/** What the sheet stands on: the day, the days like it, the guests. */
export function prepHead(
  sheet: {
    readonly venue: string;
    readonly date: string;
    readonly like: readonly string[];
    readonly covers: number | null;
    readonly expectedCovers: number | null;
  },
  locale: string,
): readonly string[] {
  const like = sheet.like.map((day) => dayName(day, locale)).join(', ');
  const guests =
    sheet.covers === null
      ? 'Nobody knows how many guests.'
      : `${figure(sheet.covers, locale, { least: 0, most: 1 })} guests${sheet.covers === sheet.expectedCovers ? ', the mean of those days' : ', as was said'}.`;
  return [
    `${sheet.venue}, prep for ${dayName(sheet.date, locale)}`,
    like === '' ? 'There is no day like it to expect anything from.' : `Expected: the mean of ${like}. ${guests}`,
  ];
}

/** What is held of a component: 1.2 kg, or that what was counted is too old. */
export function heldWords(amount: string | null, tooOld: boolean): string {
  if (amount === null) return PREP.none;
  return tooOld ? PREP.tooOld : amount;
}

const HOURS_SAID = 72;

/** How long before the day it can be made: hours up to three days, then days. */
export function aheadWords(leadHours: number | null, locale: string): string {
  if (leadHours === null) return PREP.unknown;
  if (leadHours === 0) return PREP.thatDay;
  return leadHours <= HOURS_SAID
    ? `${figure(leadHours, locale, 0)} h ahead`
    : `${figure(leadHours / 24, locale, { least: 0, most: 1 })} days ahead`;
}

export function withoutMinutesWords(names: readonly string[]): string {
  return `No minutes are stated for ${names.join(', ')}; their work is in no sum.`;
}

/** Of a part, how many of the whole give so much of it. */
export const wholesWords = (wholes: string): string => `from ${wholes}`;

export const BENCH_CAUTION =
  'By what was declared and written down; it defers to labels, to food law and to who is qualified where it is needed.';

export function negativeNumber(name: string): ProblemWords {
  return { title: 'How many?', detail: `The number for ${name} has to be zero or more. Write how many are expected.` };
}

export function sameItemTwice(name: string): ProblemWords {
  return { title: 'Twice', detail: `Portions of ${name} are named twice. Name them once.` };
}
