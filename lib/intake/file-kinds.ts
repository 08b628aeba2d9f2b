/** The files of the data folder that are read, in an order in which each finds what it refers to: a folder is loaded in it. */
export const FILE_KINDS = [
  'venue',
  'ingredients',
  'measures',
  'suppliers',
  'offers',
  'offer_prices',
  'recipes',
  'menu',
  'recipe_lines',
  'sales',
  'covers',
] as const;

export type FileKind = (typeof FILE_KINDS)[number];

/** Files of the data folder that nothing is worked out from yet. */
export const LATER_KINDS = [
  'labour',
  'parts',
  'yields',
  'exchange_rates',
  'purchases',
  'counts',
  'moves',
  'trials',
  'trial_lines',
] as const;

export type LaterKind = (typeof LATER_KINDS)[number];

const LONGEST_FIRST = [...FILE_KINDS, ...LATER_KINDS].sort((a, b) => b.length - a.length);

/**
 * What a file holds, by its name: sales.csv, and also sales-2026-10.csv or Sales October.CSV, as exports are mostly called.
 * Null where the name says nothing.
 */
export function fileKind(fileName: string): FileKind | LaterKind | null {
  const name = fileName.toLowerCase().replace(/\.csv$/, '');
  return LONGEST_FIRST.find((kind) => name.startsWith(kind) && !/^[\p{L}_]/u.test(name.slice(kind.length))) ?? null;
}

export function isRead(kind: FileKind | LaterKind): kind is FileKind {
  return FILE_KINDS.some((read) => read === kind);
}
