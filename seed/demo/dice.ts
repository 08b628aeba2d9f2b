import type { Random } from '../../lib/core/random';

export function between(random: Random, low: number, high: number): number {
  return low + (high - low) * random();
}

/** A number of the bell curve with mean 0 and deviation 1 (Box and Muller 1958). */
export function bell(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** A factor around 1 that is as often halved as doubled. */
export function swing(random: Random, deviation: number): number {
  return Math.exp(deviation * bell(random));
}

/** How often something happens that happens `mean` times on average (Knuth 1969 below 30, the bell curve above). */
export function times(random: Random, mean: number): number {
  if (mean <= 0) return 0;
  if (mean > 30) return Math.max(0, Math.round(mean + Math.sqrt(mean) * bell(random)));
  const floor = Math.exp(-mean);
  let count = -1;
  for (let product = 1; product > floor; product *= random()) count += 1;
  return count;
}
