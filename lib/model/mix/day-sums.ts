import type { Random } from '../../core/random';

/** k - 1 draws with replacement from each stratum of k days, weighted k / (k - 1); a day alone in its stratum stays as it is. */
export function drawDays(strata: readonly (readonly number[])[], random: Random, weights: Float64Array): void {
  weights.fill(0);
  for (const stratum of strata) {
    const draws = Math.max(1, stratum.length - 1);
    for (let draw = 0; draw < draws; draw++) {
      const day = stratum[Math.floor(random() * stratum.length)] as number;
      weights[day] = (weights[day] as number) + stratum.length / draws;
    }
  }
}

/** Tables of days side by side, so that one short loop adds a day: entry day * width + column, a column an entry of the day. */
export interface DayColumns {
  readonly width: number;
  readonly cells: Float64Array;
}

/** Tables with an entry day * items + item, as columns: those of the first table first. */
export function dayColumns(days: number, items: number, tables: readonly ArrayLike<number>[]): DayColumns {
  const width = tables.length * items;
  const cells = new Float64Array(days * width);
  tables.forEach((table, at) => {
    for (let cell = 0; cell < days * items; cell++) {
      const item = cell % items;
      cells[((cell - item) / items) * width + at * items + item] = table[cell] as number;
    }
  });
  return { width, cells };
}

/** Adds up the days by their weights, three at a time: the sums are read and written a third as often. */
export function addDays({ width, cells }: DayColumns, weights: Float64Array, sums: Float64Array): void {
  sums.fill(0);
  const drawn: number[] = [];
  for (let day = 0; day < weights.length; day++) if (weights[day] !== 0) drawn.push(day);
  while (drawn.length % 3 !== 0) drawn.push(-1); // a day that weighs nothing makes the three full
  for (let at = 0; at < drawn.length; at += 3) {
    const [first, second, third] = [drawn[at] as number, drawn[at + 1] as number, drawn[at + 2] as number];
    const [a, b, c] = [first * width, Math.max(0, second) * width, Math.max(0, third) * width];
    const weight = weights[first] as number;
    const next = second < 0 ? 0 : (weights[second] as number);
    const last = third < 0 ? 0 : (weights[third] as number);
    for (let column = 0; column < width; column++) {
      sums[column] =
        (sums[column] as number) +
        weight * (cells[a + column] as number) +
        next * (cells[b + column] as number) +
        last * (cells[c + column] as number);
    }
  }
}
