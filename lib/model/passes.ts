import type { FlatLines } from './flat-lines';

/**
 * Upward: prices of what is bought -> unit cost of everything.
 *
 * cost(parent) = price(parent) + sum over its lines of amount * cost(child), in each segment.
 * Rows are nodes, columns segments: entry node * segments + segment. Prices are per base unit, 0 for what has none of its own.
 * With a single 1 among zeros: how much of that one thing a unit of everything takes.
 */
export function upward(lines: FlatLines, prices: Float64Array, segments: number): Float64Array {
  const cost = prices.slice();
  if (segments === 1) upwardOnce(lines, cost);
  else upwardBySegment(lines, cost, segments);
  return cost;
}

/** The sum of a parent is held back until the last of its lines, and two lines are taken a turn: the loop that a moving slider waits for. */
function upwardOnce({ child, amount, rows, starts }: FlatLines, cost: Float64Array): void {
  let line = 0;
  for (let row = 0; row < rows.length; row++) {
    const above = rows[row] as number;
    const end = starts[row + 1] as number;
    let sum = cost[above] as number;
    for (; line + 1 < end; line += 2) {
      sum += (amount[line] as number) * (cost[child[line] as number] as number);
      sum += (amount[line + 1] as number) * (cost[child[line + 1] as number] as number);
    }
    if (line < end) sum += (amount[line] as number) * (cost[child[line++] as number] as number);
    cost[above] = sum;
  }
}

function upwardBySegment({ parent, child, amount, from, to }: FlatLines, cost: Float64Array, segments: number): void {
  for (let line = 0; line < parent.length; line++) {
    const above = (parent[line] as number) * segments;
    const below = (child[line] as number) * segments;
    const each = amount[line] as number;
    const end = to[line] as number;
    for (let segment = from[line] as number; segment < end; segment++) {
      cost[above + segment] = (cost[above + segment] as number) + each * (cost[below + segment] as number);
    }
  }
}

/**
 * Downward, the same lines in reverse: what is wanted -> need of everything.
 *
 * need(child) = wanted(child) + sum over the lines to it of amount * need(parent), in each segment.
 * Wanted and need are in base units (portions, for what is plated), entry node * segments + segment.
 */
export function downward(lines: FlatLines, wanted: Float64Array, segments: number): Float64Array {
  const need = wanted.slice();
  if (segments === 1) downwardOnce(lines, need);
  else downwardBySegment(lines, need, segments);
  return need;
}

function downwardOnce({ parent, child, amount }: FlatLines, need: Float64Array): void {
  for (let line = parent.length - 1; line >= 0; line--) {
    const below = child[line] as number;
    need[below] = (need[below] as number) + (amount[line] as number) * (need[parent[line] as number] as number);
  }
}

function downwardBySegment({ parent, child, amount, from, to }: FlatLines, need: Float64Array, segments: number): void {
  for (let line = parent.length - 1; line >= 0; line--) {
    const above = (parent[line] as number) * segments;
    const below = (child[line] as number) * segments;
    const each = amount[line] as number;
    const end = to[line] as number;
    for (let segment = from[line] as number; segment < end; segment++) {
      need[below + segment] = (need[below + segment] as number) + each * (need[above + segment] as number);
    }
  }
}
