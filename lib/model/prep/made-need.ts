import type { CostedPeriod } from '../costed-period';

/** The need of everything on one day: entries by node, in base units. */
export interface MadeNeed {
  /** What is asked for by what is served and by what is made, before breakage of its own. */
  readonly need: Float64Array;
  /** How much of that is passed on to what it is made of: `passOn` of the need. */
  readonly passed: Float64Array;
}

/**
 * The downward pass with a say for each thing in how much of it is made: what is in store need not be, a batch is never smaller than
 * its smallest.
 *
 * need(child) = wanted(child) + sum over the lines to it of amount * passOn(parent, need(parent)), in one segment. Without a say
 * (passOn gives the need back) it is the downward pass. Parents come before what they are made of, so that each need is whole when it is passed on.
 */
export function madeNeed(
  { lines, things }: Pick<CostedPeriod, 'lines' | 'things'>,
  segment: number,
  wanted: Float64Array,
  passOn: (node: number, need: number) => number,
): MadeNeed {
  const need = wanted.slice();
  const passed = new Float64Array(things.length).fill(Number.NaN);
  const { rows, starts, child, amount, from, to } = lines;
  for (let row = rows.length - 1; row >= 0; row--) {
    const holds = (line: number): boolean => segment >= (from[line] as number) && segment < (to[line] as number);
    const group = Array.from(
      { length: (starts[row + 1] as number) - (starts[row] as number) },
      (_, index) => (starts[row] as number) + index,
    ).filter(holds);
    if (group.length === 0) continue;
    const parent = rows[row] as number;
    passed[parent] = passOn(parent, need[parent] as number);
    for (const line of group) {
      const below = child[line] as number;
      need[below] = (need[below] as number) + (amount[line] as number) * (passed[parent] as number);
    }
  }
  return { need, passed: passed.map((each, node) => (Number.isNaN(each) ? passOn(node, need[node] as number) : each)) };
}
