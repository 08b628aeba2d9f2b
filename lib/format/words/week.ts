import { figure, perCent } from '../figures';
import { money, type Purse, wholeMoney } from '../money';
import { periodName, spanName } from '../periods';
import { capital, figurePart, namePart, type Part, type Phrase } from '../phrase';
import { countWord, portions, portionsFigure } from '../portions';
import { shortNames } from './short-names';

export const WEEK = {
  view: 'The week',
  title: 'The week',
  region: 'The days of the week, all columns',
  caption: 'The days',
  picture: 'Covers, spend per cover, portions and what was left on each day of the week; the same in the table below',
  previous: 'earlier',
  next: 'later',
  weeks: 'Weeks',
  howToRead: 'How to read it',
  usual: 'The stroke across a column: the mean of that weekday in the four weeks before.',
  unsold: 'On sale without selling',
  unsoldNote:
    'Days on which a dish was on the menu while the house traded, and nobody had it. Whether it had run out, no file says yet.',
  missing: 'What is missing',
  unknown: 'unknown',
  none: '–',
} as const;

/** What the sentences of the week are made from; a WeekAnswer has it all. */
export interface WeekFiguresSaid {
  readonly covers: number | null;
  readonly spendPerCover: string | null;
  readonly sold: number;
  readonly contribution: string | null;
  readonly foodCostPct: number | null;
  readonly coverage: number | null;
  readonly provisional: boolean;
}

export interface WeekSaid {
  readonly month: string;
  readonly currency: string;
  readonly locale: string;
  readonly running: boolean;
  readonly days: readonly { readonly day: string }[];
  readonly week: WeekFiguresSaid;
  readonly before: (WeekFiguresSaid & { readonly weeks: number }) | null;
  readonly yearBefore: (WeekFiguresSaid & { readonly month: string }) | null;
  readonly unsold: readonly { readonly item: string; readonly daysOnSale: number; readonly daysWithoutSale: number }[];
}

export function weekTitle(week: string, locale: string): string {
  return periodName(week, locale);
}

/** The days of a week: 19 to 25 October 2026. */
export function weekDays({ days, locale }: Pick<WeekSaid, 'days' | 'locale'>): string {
  return spanName(days[0]?.day ?? '', days.at(-1)?.day ?? '', locale);
}

function opening({ month, week, days, locale, running }: WeekSaid, purse: Purse): Part[] {
  const name = periodName(month, locale).replace(/ of \d+$/, '');
  const which = `${name}, ${weekDays({ days, locale })}${running ? ', so far' : ''}: `;
  const covers: Part[] =
    week.covers === null
      ? []
      : [figurePart(`${figure(week.covers, locale, 0)} ${week.covers === 1 ? 'cover' : 'covers'}`)];
  const spend: Part[] =
    week.spendPerCover === null ? [] : [' spent ', figurePart(money(week.spendPerCover, purse)), ' each'];
  const guests: Part[] = covers.length === 0 ? [] : [...covers, ...spend, '; '];
  const sold = figurePart(portions(week.sold, locale));
  if (week.contribution === null || week.coverage === null)
    return [which, ...guests, sold, week.sold === 1 ? ' was sold.' : ' were sold. What they left is not known yet.'];
  const cost: Part[] =
    week.foodCostPct === null ? [] : [', at a food cost by recipe of ', figurePart(perCent(week.foodCostPct, locale))];
  const left = figurePart(wholeMoney(week.contribution, purse));
  if (week.coverage >= 1) return [which, ...guests, sold, ' left ', left, ' before labour', ...cost, '.'];
  const share = figurePart(perCent(week.coverage, locale, week.coverage > 0.99 ? 1 : 0));
  return [
    ...[which, ...guests, sold, ', with margins known for ', share, ' of them. Those left ', left],
    ...[' before labour', ...cost, '.'],
  ];
}

/** How much more or less one figure is than another: 4.2 % fewer covers; nothing where it cannot be said. */
function change(
  now: number | null,
  before: number | null,
  noun: string,
  [more, less]: readonly [string, string],
  locale: string,
): Part[] {
  if (now === null || before === null || before <= 0) return [];
  const by = now / before - 1;
  if (Math.abs(by) < 0.005) return [`as ${noun === 'spend per cover' ? 'much' : 'many'} ${noun}`];
  return [figurePart(perCent(Math.abs(by), locale, 0)), ` ${by > 0 ? more : less} ${noun}`];
}

const numberOf = (amount: string | null): number | null => (amount === null ? null : Number(amount));

/** What is more and what is less than in another week, in a row: 4.2 % fewer covers, 3.1 % more portions. */
function changes(now: WeekFiguresSaid, before: WeekFiguresSaid, locale: string): Part[] {
  const all = [
    change(now.covers, before.covers, 'covers', ['more', 'fewer'], locale),
    change(numberOf(now.spendPerCover), numberOf(before.spendPerCover), 'spend per cover', ['more', 'less'], locale),
    change(now.sold, before.sold, 'portions', ['more', 'fewer'], locale),
  ].filter((parts) => parts.length > 0);
  return all.flatMap((parts, at): Part[] => (at === 0 ? parts : [at === all.length - 1 ? ' and ' : ', ', ...parts]));
}

function against(said: WeekSaid): Part[] {
  const { week, before, yearBefore, locale, running } = said;
  if (running || week.sold === 0) return [];
  const usual = before === null ? [] : changes(week, before, locale);
  const earlier = yearBefore === null ? [] : changes(week, yearBefore, locale);
  const weeks = before === null ? '' : meanOf(before.weeks, locale);
  return [
    ...(usual.length === 0 ? [] : [' Against ', weeks, ': ', ...usual]),
    ...(earlier.length === 0
      ? []
      : [
          usual.length === 0 ? ' Against ' : '; against ',
          `week ${Number(yearBefore?.month.slice(6))} of ${yearBefore?.month.slice(0, 4)}`,
          ': ',
          ...earlier,
        ]),
    ...(usual.length + earlier.length === 0 ? [] : ['.']),
  ];
}

function meanOf(weeks: number, locale: string): string {
  return weeks === 1 ? 'the week before' : `the mean of the ${countWord(weeks, locale)} weeks before`;
}

/** What had days on sale without a portion sold. */
function withoutSale({ unsold, locale }: WeekSaid): Part[] {
  const most = unsold[0];
  if (most === undefined) return [];
  const short = shortNames(unsold.map(({ item }) => item))[0] ?? most.item;
  const never = unsold.filter(({ daysOnSale, daysWithoutSale }) => daysOnSale === daysWithoutSale).length;
  const count = capital(countWord(unsold.length, locale));
  const days = figurePart(`${most.daysWithoutSale} of ${most.daysOnSale}`);
  const noun = unsold.length === 1 ? ' dish had days' : ' dishes had days';
  const name: Part[] = [unsold.length === 1 ? ': ' : ', most of all ', namePart(short), ', ', days];
  const none = never === 0 ? '' : ` ${capital(countWord(never, locale))} sold nothing all week.`;
  return [` ${count}${noun} on sale without a portion sold`, ...name, '.', none];
}

/** The week in a few sentences, made by rule from the same figures as the table. */
export function weekSentences(said: WeekSaid): Phrase {
  const purse = { currency: said.currency, locale: said.locale };
  return [...opening(said, purse), ...against(said), ...withoutSale(said)];
}

/** What the figures of the page stand on. */
export const WEEK_BASIS: readonly string[] = [
  'Monday to Sunday, by business day',
  'spend: everything sold at the tables, net, over covers',
  'portions and what they left: whole menu, without set menus and drinks',
  'food cost and margins by recipe, at the price in force each day',
];

/** How often a dish was on sale without selling, in the margin. */
export function unsoldDays(
  { daysWithoutSale, daysOnSale }: { readonly daysWithoutSale: number; readonly daysOnSale: number },
  locale: string,
): string {
  return `${portionsFigure(daysWithoutSale, locale)} of ${portionsFigure(daysOnSale, locale)} days`;
}
