import type { MixClass, ModelName, QuadrantClass } from '../../model/mix/mix-model';
import { SETTLED } from '../../model/mix/settled';

export type ClassName = MixClass;

/** What each of Kasavana & Smith's classes says of a dish. */
export const QUADRANT_MEANING: Readonly<Record<QuadrantClass, string>> = {
  star: 'sells well, leaves much',
  plowhorse: 'sells well, leaves little',
  puzzle: 'sells little, leaves much',
  dog: 'sells little, leaves little',
};

/** What each class of each model says of a dish. */
export const CLASS_MEANING: Readonly<Record<ClassName, string>> = {
  ...QUADRANT_MEANING,
  winner: 'sells well, low food cost',
  marginal: 'either sells well or has a low food cost, not both',
  loser: 'sells little, high food cost',
  prime: 'low food cost, brings in much',
  standard: 'high food cost, brings in much',
  sleeper: 'low food cost, brings in little',
  problem: 'high food cost, brings in little',
  above: 'reaches the menu’s own goal value',
  below: 'stays below the menu’s own goal value',
  'star-light': 'sells well, leaves much, little work',
  'star-heavy': 'sells well, leaves much, much work',
  'plowhorse-light': 'sells well, leaves little, little work',
  'plowhorse-heavy': 'sells well, leaves little, much work',
  'puzzle-light': 'sells little, leaves much, little work',
  'puzzle-heavy': 'sells little, leaves much, much work',
  'dog-light': 'sells little, leaves little, little work',
  'dog-heavy': 'sells little, leaves little, much work',
};

/** Where a class is printed, its model and source are named. */
export const MODEL_SOURCES: Readonly<Record<ModelName, string>> = {
  'kasavana-smith': 'Kasavana & Smith, 1982',
  miller: 'Miller, 1980',
  pavesic: 'Pavesic, 1983',
  'goal-value': 'Hayes & Huffman, 1985',
  labour: 'LeBruto, Quain & Ashley, 1995',
};

/** The model that is looked at where none is named. */
export const MODEL_SOURCE = MODEL_SOURCES['kasavana-smith'];

/** How a dish stands: its class, how often a resample put it there, and between which two it lies. */
export interface Standing {
  readonly class: ClassName | null;
  readonly classShares: Readonly<Partial<Record<ClassName, number>>> | null;
  readonly settled: boolean | null;
  readonly between: readonly [ClassName, ClassName] | null;
}

/** Not settled although this period is sure of the class: the period before named another one, or was in doubt. */
export function isDoubtedBefore({ class: own, classShares, settled }: Standing): boolean {
  return settled === false && own !== null && (classShares?.[own] ?? 0) >= SETTLED;
}

/** On the line: this period itself is in doubt between two classes. */
export function isOnTheLine(standing: Standing): boolean {
  return standing.settled === false && !isDoubtedBefore(standing);
}

/** What the period before said where it is the one that doubts: plowhorse, or also plowhorse. */
export function classBefore(standing: Standing): string {
  const other = otherClass(standing);
  if (other === null) return 'another class';
  return standing.between?.[0] === standing.class ? `also ${other}` : other;
}

/** The other class of the two a dish lies between; null where it is settled or its certainty is not known. */
export function otherClass(standing: Standing): ClassName | null {
  if (standing.settled !== false || standing.class === null || standing.between === null) return null;
  return standing.between.find((name) => name !== standing.class) ?? null;
}

/** Two shares of one whole in whole per cent, that never add up to more than it: 55.5 and 44.5 are 56 and 44. */
export function pairInPerCent(first: number, second: number): readonly [number, number] {
  const rounded = Math.round(first * 100);
  return [rounded, Math.min(Math.round(second * 100), 100 - rounded)];
}
