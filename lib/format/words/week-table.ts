/** The columns of the week, in their order. */
export const WEEK_COLUMNS = [
  'day',
  'covers',
  'coversUsual',
  'spend',
  'spendUsual',
  'sold',
  'soldUsual',
  'left',
  'leftUsual',
  'leftBefore',
] as const;

export type WeekColumn = (typeof WEEK_COLUMNS)[number];

/** Head and unit of each column. */
export function weekHeads(sign: string, isHeld: boolean): Readonly<Record<WeekColumn, readonly [string, string]>> {
  const usual = isHeld ? 'usual' : '';
  return {
    day: ['Day', ''],
    covers: ['Covers', 'guests'],
    coversUsual: ['Covers', usual],
    spend: ['Spend', `${sign} a cover`],
    spendUsual: ['Spend', usual],
    sold: ['Sold', 'portions'],
    soldUsual: ['Sold', usual],
    left: ['Left', `${sign} before labour`],
    leftUsual: ['Left', usual],
    leftBefore: ['Left', 'year before'],
  };
}

/** The names of the panels over the table. */
export function weekPanelNames(sign: string) {
  return {
    covers: 'covers',
    spend: `spend per cover, ${sign}`,
    sold: 'portions',
    left: `left before labour, ${sign}`,
  } as const;
}

export const WEEK_TOTAL = 'The week';
