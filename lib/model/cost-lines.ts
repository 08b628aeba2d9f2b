import { type CostLine, costLine } from './cost-line';
import type { CostedPeriod } from './costed-period';
import { WHOLE } from './known';
import type { RecipePiece } from './recipe-piece';
import { inSegment } from './segments';

/** A tree of more lines than this is not opened further: nobody reads them, and a doubling in every recipe would never end. */
const MOST_LINES = 1000;

/**
 * The lines that a cost is made of, down to what is bought, for `need` base units of something made, on the days of a segment.
 *
 * cost of a line = bought * unit cost of the child, and the sum over the lines of a recipe = need * its unit cost: what the upward
 * pass adds up, kept apart. An owner's estimate that stands in for a recipe is a single line.
 */
export function costLines(period: CostedPeriod, node: number, segment: number, need: number): readonly CostLine[] {
  const below = linesBelow(period, segment);
  let room = MOST_LINES;
  const linesOf = (parent: number, wanted: number): readonly CostLine[] => {
    if (isEstimate(period, parent, segment)) return [estimateLine(period, parent, segment, wanted)];
    const piece = inSegment(period.recipes[parent] ?? [], segment);
    return piece === null ? [] : piece.children.map((_, index) => madeOrBought(piece, index, wanted));
  };
  const madeOrBought = (piece: RecipePiece, index: number, wanted: number): CostLine => {
    const child = piece.children[index] as number;
    const line = costLine(period, segment, piece, index, wanted);
    if (line.bought === null || line.recipe === null) return line;
    const inside = below[child] ?? 0;
    if (inside > room) return { ...line, closed: true };
    room -= inside;
    return { ...line, lines: linesOf(child, line.bought) };
  };
  return linesOf(node, need);
}

/** How many lines the tree under each thing has, by node. */
function linesBelow({ lines, things }: CostedPeriod, segment: number): Float64Array {
  const below = new Float64Array(things.length);
  lines.parent.forEach((parent, line) => {
    if ((lines.from[line] as number) > segment || (lines.to[line] as number) <= segment) return;
    below[parent] = (below[parent] as number) + 1 + (below[lines.child[line] as number] as number);
  });
  return below;
}

function isEstimate({ estimated, segments }: CostedPeriod, node: number, segment: number): boolean {
  return estimated[node * segments.count + segment] === WHOLE;
}

/** The owner's estimate, for `need` portions: a line that ends there. */
function estimateLine(period: CostedPeriod, node: number, segment: number, need: number): CostLine {
  const estimate = period.estimates[node * period.segments.count + segment] ?? 0;
  return {
    item: period.things[node]?.name ?? '',
    kind: 'estimate',
    position: null,
    quantity: need,
    unit: 'each',
    as: 'bought',
    ...{ use: null, part: null, choice: null, share: null, byProduct: null },
    usableYield: null,
    bought: need,
    boughtUnit: 'each',
    unitPrice: estimate,
    cost: need * estimate,
    floor: null,
    department: null,
    estimated: true,
    price: null,
    recipe: null,
    issues: [],
    closed: false,
    lines: [],
  };
}
