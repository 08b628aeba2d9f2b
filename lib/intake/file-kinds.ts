/** The files of the data folder, in an order in which each finds what it refers to: a folder is loaded in it. */
export const FILE_KINDS = [
  'venue',
  'labour',
  'exchange_rates',
  'ingredients',
  'measures',
  'parts',
  'yields',
  'suppliers',
  'offers',
  'offer_prices',
  'recipes',
  'menu',
  'recipe_lines',
  'sales',
  'covers',
  'purchases',
  'counts',
  'moves',
  'trials',
  'trial_lines',
] as const;

export type FileKind = (typeof FILE_KINDS)[number];

const LONGEST_FIRST = [...FILE_KINDS].sort((a, b) => b.length - a.length);

/**
 * What a file holds, by its name: sales.csv, and also sales-2026-10.csv or Sales October.CSV, as exports are mostly called.
 * Null where the name says nothing.
 */
export function fileKind(fileName: string): FileKind | null {
  const name = fileName.toLowerCase().replace(/\.csv$/, '');
  return LONGEST_FIRST.find((kind) => name.startsWith(kind) && !/^[\p{L}_]/u.test(name.slice(kind.length))) ?? null;
}
