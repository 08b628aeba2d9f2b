import type { Route } from 'next';
import { cache } from 'react';
import { menuMixAnswer } from '@/lib/answers/menu-mix';
import { periodsAnswer } from '@/lib/answers/periods';
import { currentAsker } from '@/lib/session/asker';

/** What the address asks of the menu. Null: the only venue, the whole menu. */
export interface Asked {
  readonly venue: string | null;
  readonly month: string;
  readonly section: string | null;
  /** spread: over their courses; null: in a section of their own. Only the mix understands it. */
  readonly setMenus?: string | null;
}

export type Query = Readonly<Record<string, string | string[] | undefined>>;

/** One value of the query; where it was given twice, the first. */
export function asked(
  query: Query,
  name: 'venue' | 'month' | 'section' | 'setMenus' | 'follow' | 'week',
): string | null {
  const value = query[name];
  return (Array.isArray(value) ? value[0] : value) || null;
}

/** The address of the menu for these, leaving out what is not said. */
export function menuHref({ venue, month, section, setMenus = null }: Asked): Route {
  const query = new URLSearchParams({
    month,
    ...(venue && { venue }),
    ...(section && { section }),
    ...(setMenus && { setMenus }),
  });
  return `/menu?${query}` as Route;
}

/** The address of a view of the Menu room for a month and venue; what only one view understands is left out. */
export function viewHref(path: Route, { venue, month }: Asked): Route {
  return `${path}?${new URLSearchParams({ month, ...(venue && { venue }) })}` as Route;
}

/** The answers of a request, each asked for once however many panels need it. */
export const mixOf = cache((venue: string | null, month: string, section: string | null, setMenus?: string | null) =>
  menuMixAnswer(currentAsker(), { venue, month, section, model: null, setMenus: setMenus ?? null }),
);

/** The mix that the address asks for, set menus and all. */
export const askedMix = ({ venue, month, section, setMenus }: Asked) => mixOf(venue, month, section, setMenus ?? null);

export const periodsOf = cache((venue: string | null) => periodsAnswer(currentAsker(), { venue }));
