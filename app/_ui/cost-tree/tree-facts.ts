import type { CostLineAnswer, DishCostAnswer } from '@/lib/answers/dish-cost-shape';
import { leastPrinted } from '@/lib/format/money';
import { lineName } from '@/lib/format/words/cost-working';

/** What is bought for one part of a plate. Costs are of one portion, in venue currency. */
export interface TreeLeaf {
  readonly name: string;
  readonly cost: number;
}

/** One line of the plate's own recipe, with all that is bought for it. */
export interface TreePart {
  readonly name: string;
  readonly cost: number;
  /** Some of it is not known: the cost is a floor. */
  readonly isFloor: boolean;
  /** Most cost first; they sum to the cost. */
  readonly leaves: readonly TreeLeaf[];
}

export interface TreeFacts {
  readonly name: string;
  /** Sum of the parts: the plate cost, or its floor. */
  readonly total: number;
  readonly isFloor: boolean;
  /** In the order of their cost, most first. */
  readonly parts: readonly TreePart[];
  /** What is in it and of which no cost is known at all. */
  readonly unknown: readonly string[];
  /** Below this, nothing of a cost is printed. */
  readonly least: number;
  /** What is made beside it and taken off, in total: above zero. */
  readonly credits: number;
}

/** A cost as the tree of its parts: the plate, the lines of its recipe, and what is bought for each. */
export function treeFacts(answer: Pick<DishCostAnswer, 'item' | 'currency' | 'plateCost' | 'lines'>): TreeFacts {
  const parts = answer.lines
    .map(
      (line): TreePart => ({
        name: lineName(line),
        cost: known(line),
        isFloor: line.cost === null,
        leaves: together(leavesOf(line)),
      }),
    )
    .sort((a, b) => b.cost - a.cost);
  const shown = parts.filter(({ cost }) => cost > 0);
  return {
    name: answer.item,
    total: shown.reduce((sum, { cost }) => sum + cost, 0),
    isFloor: answer.plateCost === null,
    parts: shown,
    unknown: [...new Set(answer.lines.flatMap(unknownIn))],
    least: leastPrinted(answer.currency),
    credits: answer.lines.flatMap(leavesOf).reduce((sum, { cost }) => sum + Math.max(0, -cost), 0),
  };
}

const known = ({ cost, floor }: CostLineAnswer): number => Number(cost ?? floor ?? 0);

function leavesOf(line: CostLineAnswer): readonly TreeLeaf[] {
  if (line.lines.length > 0) return line.lines.flatMap(leavesOf);
  return known(line) === 0 ? [] : [{ name: lineName(line), cost: known(line) }];
}

function unknownIn(line: CostLineAnswer): readonly string[] {
  if (line.lines.length > 0) return line.lines.flatMap(unknownIn);
  return line.cost === null ? [line.item] : [];
}

/** One leaf a name. */
function together(leaves: readonly TreeLeaf[]): readonly TreeLeaf[] {
  const costs = new Map<string, number>();
  for (const { name, cost } of leaves) costs.set(name, (costs.get(name) ?? 0) + cost);
  return [...costs].map(([name, cost]) => ({ name, cost })).sort((a, b) => b.cost - a.cost);
}

/** Whether there is more to it than one cost: an estimate has no parts. */
export function isTree({ parts }: TreeFacts): boolean {
  return parts.length > 1 || parts.some(({ name, leaves }) => leaves.some((leaf) => leaf.name !== name));
}

/** What is bought for the whole plate, most cost first. */
export function boughtInAll({ parts }: TreeFacts): readonly TreeLeaf[] {
  return together(parts.flatMap(({ leaves }) => leaves));
}
