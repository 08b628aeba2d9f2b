/** Count, mean and sum of squared distances from the mean of the values seen so far. */
export interface Moments {
  count: number;
  mean: number;
  squares: number;
}

export function noMoments(): Moments {
  return { count: 0, mean: 0, squares: 0 };
}

/** Takes one more value in, without keeping it (Welford 1962, "Note on a method for calculating corrected sums of squares"). */
export function addTo(moments: Moments, value: number): void {
  moments.count += 1;
  const distance = value - moments.mean;
  moments.mean += distance / moments.count;
  moments.squares += distance * (value - moments.mean);
}

/** Standard deviation of a sample: sqrt(sum of squared distances / (n - 1)); 0 for a single value. */
export function deviation({ count, squares }: Moments): number {
  return count < 2 ? 0 : Math.sqrt(squares / (count - 1));
}
