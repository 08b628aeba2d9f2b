import { HyperFormula } from 'hyperformula';
import type { FlatLines } from '@/lib/model/flat-lines';

/** The least that can be done with every line: an indexed loop that copies parent, child and amount. */
export function copyLoop({ parent, child, amount }: FlatLines): () => void {
  const parents = new Int32Array(parent.length);
  const children = new Int32Array(parent.length);
  const amounts = new Float64Array(parent.length);
  return () => {
    for (let line = 0; line < parent.length; line++) {
      parents[line] = parent[line] as number;
      children[line] = child[line] as number;
      amounts[line] = amount[line] as number;
    }
  };
}

interface PlainLine {
  readonly child: number;
  readonly amount: number;
}

function recipesOf({ parent, child, amount }: FlatLines): ReadonlyMap<number, readonly PlainLine[]> {
  const recipes = new Map<number, PlainLine[]>();
  parent.forEach((node, line) => {
    const lines = recipes.get(node) ?? [];
    lines.push({ child: child[line] as number, amount: amount[line] as number });
    recipes.set(node, lines);
  });
  return recipes;
}

/** The cost of everything by plain recursion, each recipe worked out once. */
export function plainRecursion(lines: FlatLines, prices: Float64Array): () => Float64Array {
  const recipes = recipesOf(lines);
  return () => {
    const known = new Map<number, number>();
    const cost = (node: number): number => {
      const before = known.get(node);
      if (before !== undefined) return before;
      let sum = prices[node] as number;
      for (const line of recipes.get(node) ?? []) sum += line.amount * cost(line.child);
      known.set(node, sum);
      return sum;
    };
    return prices.map((_, node) => cost(node));
  };
}

/**
 * The cost of everything in a general spreadsheet engine: a cell for each thing, a formula for each recipe. One call changes all prices
 * with evaluation suspended, then evaluates once.
 */
export function spreadsheet(
  lines: FlatLines,
  prices: Float64Array,
): { readonly change: () => void; readonly costs: () => number[] } {
  const recipes = recipesOf(lines);
  const cells = [...prices].map((price, node): [string | number] => {
    const terms = recipes.get(node)?.map(({ child, amount }) => `A${child + 1}*${amount}`);
    return [terms ? `=${terms.join('+')}` : price];
  });
  const engine = HyperFormula.buildFromArray(cells, { licenseKey: 'gpl-v3' });
  const bought = [...prices.keys()].filter((node) => !recipes.has(node));
  let by = 1;
  return {
    change: () => {
      by = by === 1 ? 1.01 : 1; // the same prices and one per cent more, in turn: every call changes all of them
      engine.suspendEvaluation();
      for (const node of bought) engine.setCellContents({ sheet: 0, row: node, col: 0 }, (prices[node] as number) * by);
      engine.resumeEvaluation();
    },
    costs: () => engine.getSheetValues(0).map(([value]) => Number(value) / by),
  };
}
