import type { MixClass } from './mix-model';

/** What a class says of an item on all axes of its model together. */
export type Leaning = 'for' | 'mixed' | 'against';

const FOR: ReadonlySet<MixClass> = new Set(['star', 'winner', 'prime', 'above', 'star-light', 'star-heavy']);
const AGAINST: ReadonlySet<MixClass> = new Set(['dog', 'loser', 'problem', 'below', 'dog-light', 'dog-heavy']);

/**
 * For: the favourable side on every axis of the model; against: on none; else mixed. So classes of different models can be compared. How
 * much work a dish is says nothing for or against it by itself, so the labour axis has no vote.
 */
export function leaning(mixClass: MixClass): Leaning {
  if (FOR.has(mixClass)) return 'for';
  return AGAINST.has(mixClass) ? 'against' : 'mixed';
}
