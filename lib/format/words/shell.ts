import { monthName } from '../periods';

export const SHELL = {
  program: 'Plateworth',
  description: 'Decides a dessert restaurant’s menu with figures.',
  skip: 'To the figures',
  rooms: 'Rooms',
  venues: 'Venues',
  sections: 'Sections of the menu',
  wholeMenu: 'Whole menu',
  menu: 'Menu',
  views: 'Views of the menu',
  mixView: 'Mix',
  dishesView: 'Dishes',
  mix: 'Menu mix',
} as const;

/** The title of the browser's tab. */
export function pageTitle(view: string): string {
  return `${view} · ${SHELL.program}`;
}

export function mixTitle(period: string): string {
  return `${SHELL.mix}, ${period}`;
}

/** A state of the page in words: what is missing or failed, and the one thing to do. */
export interface StateWords {
  readonly title: string;
  readonly text: string;
  readonly action?: string;
  readonly command?: string;
}

/** Why a question has no answer, as a state of the page. */
export function problemState(problem: { readonly title: string; readonly detail: string }): StateWords {
  return { title: problem.title, text: problem.detail };
}

export const NO_SALES: StateWords = {
  title: 'No sales yet',
  text: 'The mix needs one day of sales. Put the till’s export as sales.csv into a folder, with the recipes, prices and menu beside it if you have them, and load that folder:',
  command: 'npm run load -- FOLDER',
};

export function noSalesIn(period: string, latest: string | null, locale: string): StateWords {
  return {
    title: `Nothing sold in ${period}`,
    text: 'The mix needs one day of sales. Load the till’s export of that period, or look at another month.',
    command: 'npm run load -- FOLDER',
    ...(latest === null ? {} : { action: monthName(latest, locale) }),
  };
}

export const NOT_FOUND: StateWords = {
  title: 'There is no such page',
  text: 'The address leads nowhere. The menu of the latest month with sales is a good place to start.',
  action: 'To the menu',
};

export function failedWords(reference: string | undefined): StateWords {
  const which = reference === undefined ? '' : ` Reference ${reference}.`;
  return {
    title: 'The page could not be worked out',
    text: `The fault is the program’s, not yours. Nothing was changed.${which}`,
    action: 'Try again',
  };
}

export function reading(what: string): string {
  return `Reading ${what}`;
}
