export type ClassName = 'star' | 'plowhorse' | 'puzzle' | 'dog';

/** What each of Kasavana & Smith's classes says of a dish. */
export const CLASS_MEANING: Readonly<Record<ClassName, string>> = {
  star: 'sells well, leaves much',
  plowhorse: 'sells well, leaves little',
  puzzle: 'sells little, leaves much',
  dog: 'sells little, leaves little',
};

/** Where a class is printed, its model and source are named. */
export const MODEL_SOURCE = 'Kasavana & Smith, 1982';

/** How a dish stands: its class, how often a resample put it there, and between which two it lies. */
export interface Standing {
  readonly class: ClassName | null;
  readonly classShares: Readonly<Record<ClassName, number>> | null;
  readonly settled: boolean | null;
  readonly between: readonly [ClassName, ClassName] | null;
}

/** The other class of the two a dish lies between; null where it is settled or its certainty is not known. */
export function otherClass(standing: Standing): ClassName | null {
  if (standing.settled !== false || standing.class === null || standing.between === null) return null;
  return standing.between.find((name) => name !== standing.class) ?? null;
}
