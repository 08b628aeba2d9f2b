import type { PeriodRefusal } from '../../core/periods';

/** Why a question has no answer, and what to do: title and detail of the problem. */
export interface ProblemWords {
  readonly title: string;
  readonly detail: string;
}

export const refusedHost: ProblemWords = {
  title: 'Not from here',
  detail: 'Plateworth answers only on this machine, at http://127.0.0.1. Open that address.',
};

export const noVenueYet: ProblemWords = {
  title: 'No venue yet',
  detail: 'Nothing has been loaded. Bring a folder of files with: npm run load -- FOLDER',
};

export function noSuchVenue(name: string, known: readonly string[]): ProblemWords {
  return { title: 'No such venue', detail: `There is no venue “${name}”. There is ${known.join(', ')}.` };
}

export const badUpload = (sentence: string): ProblemWords => ({ title: 'Nothing was taken in', detail: sentence });

export const uploadTooLarge = (sentence: string): ProblemWords => ({ title: 'Too large', detail: sentence });

export function whichVenue(known: readonly string[]): ProblemWords {
  return { title: 'Which venue?', detail: `There are several venues: ${known.join(', ')}. Name one of them.` };
}

/** Why a name is no period, by the rule that it breaks. */
const PERIOD_FAULTS: Readonly<Record<PeriodRefusal, string>> = {
  form: 'is no period',
  'no-such-month': 'is no month of a year',
  'no-such-week': 'is a week that this year does not have',
  'no-such-day': 'names a day that does not exist',
  'no-days': 'is empty, since its end is excluded',
  'end-before-start': 'ends before it begins',
  'far-year': 'lies outside the years 1900 to 2199, in which books are kept',
  'no-such-number': 'is a period that a year of this venue’s calendar does not have',
  'needs-calendar': 'is a numbered period, and this venue keeps calendar months',
};

export function noSuchPeriod(text: string, refusal: PeriodRefusal): ProblemWords {
  return {
    title: 'No such period',
    detail: `“${text}” ${PERIOD_FAULTS[refusal]}. Write a month (2026-10), a week (2026-W41), days A..B, the end excluded (2026-10-01..2026-10-15), or, where the setting periods is 4-4-5 or 13x4, a period (2026-P10).`,
  };
}

export function noSuchSection(name: string, known: readonly string[]): ProblemWords {
  const there = known.length === 0 ? 'No dish names a section in this period.' : `There is ${known.join(', ')}.`;
  return { title: 'No such section', detail: `There is no section “${name}” on the menu in this period. ${there}` };
}

export function noSuchItem(name: string, venue: string, alike: readonly string[]): ProblemWords {
  const there =
    alike.length === 0
      ? 'Write it as recipes.csv or ingredients.csv does; dish-costs lists what is on the menu.'
      : `There is ${alike.join('; ')}.`;
  return {
    title: 'No such item',
    detail: `${venue} knows no dish, component, set menu, extra or ingredient “${name}”. ${there}`,
  };
}

export function notSold(name: string, isBought: boolean): ProblemWords {
  const what = isBought ? 'an ingredient' : 'a component';
  return {
    title: 'Not a dish',
    detail: `${name} is ${what}: it is in dishes, but nobody orders it. What it costs is in report dish-cost.`,
  };
}

export function noSuchDay(text: string): ProblemWords {
  return {
    title: 'No such day',
    detail: `“${text}” is no day of a restaurant’s books. Write year, month and day: 2026-10-31.`,
  };
}

export const eitherDateOrMonth: ProblemWords = {
  title: 'A date or a month?',
  detail: 'A cost is worked out for one day: name a date, or a month whose last day on sale it shall be, not both.',
};

export const noSalesForDay: ProblemWords = {
  title: 'Which day?',
  detail: 'Nothing has been sold yet, so there is no latest month to take a day from. Name a date: 2026-10-31.',
};

export function noSuchChannel(channel: string, item: string, known: readonly string[]): ProblemWords {
  const there = known.length === 0 ? 'It is sold in none.' : `There is ${known.join(', ')}.`;
  return { title: 'No such channel', detail: `${item} is not sold in a channel “${channel}”. ${there}` };
}

export function notOnSale(name: string, period: string): ProblemWords {
  return {
    title: 'Not on sale',
    detail: `${name} was neither on the menu nor sold in ${period}. Name a date, or a period in which it was.`,
  };
}

export function noSuchSetMenus(asked: string): ProblemWords {
  return {
    title: 'No such way with set menus',
    detail: `Set menus stand in a “section” of their own, or are “spread” over their courses, not “${asked}”.`,
  };
}

export function noSuchModel(name: string, known: readonly string[]): ProblemWords {
  return {
    title: 'No such model',
    detail: `“${name}” is no model of the menu mix here. There is ${known.join(', ')}.`,
  };
}

export function noSuchList(name: string): ProblemWords {
  return { title: 'No such list', detail: `“${name}” is no list of allergens here. There is eu and us.` };
}

export const noSuchAddress: ProblemWords = {
  title: 'Nothing here',
  detail: 'There is nothing at this address. /api/v1/openapi.json lists what there is.',
};

export function broke(reference: string): ProblemWords {
  return {
    title: 'Something broke',
    detail: `This could not be answered; nothing was changed. The program’s log holds the particulars under ${reference}.`,
  };
}

export function databaseTrouble(sentence: string): ProblemWords {
  return { title: 'The database cannot be used', detail: sentence };
}

export const noSalesToTell: ProblemWords = {
  title: 'No sales yet',
  detail: 'Nothing has been sold yet, so there is no period to tell of. Load sales.csv: npm run load -- FOLDER',
};

export function yearOfWhat(period: string): ProblemWords {
  return {
    title: 'The year of what?',
    detail: `A year is told in months, or in the periods of the venue’s calendar, and “${period}” is neither. Name the last one: 2026-10.`,
  };
}

export function whichWeek(period: string): ProblemWords {
  return { title: 'Which week?', detail: `“${period}” is no week. Name one, 2026-W41, or a month for its last one.` };
}

export function noWeekIn(period: string): ProblemWords {
  return {
    title: 'No week with sales',
    detail: `No week that begins in ${period} has sales. Name another one: 2026-W41.`,
  };
}
