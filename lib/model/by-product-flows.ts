import type { CostedPeriod } from './costed-period';
import type { Thing } from './things';

/** What was made and what was used of a by-product in a period, in its base units. */
export interface ByProductFlow {
  readonly node: number;
  readonly thing: Thing;
  readonly made: number;
  readonly used: number;
  /** made * credit: what it took off the cost of what it was made beside; null where what it is worth is not known. */
  readonly creditOfMade: number | null;
  /** used * credit: what it added to the cost of what used it. */
  readonly costOfUsed: number | null;
}

/**
 * By-products of a period, by name. Making one is negative need: lines whose amount is below zero make it, the others use it. `need`
 * as of needOfServed.
 */
export function byProductFlows(period: CostedPeriod, need: Float64Array): readonly ByProductFlow[] {
  const { complete, credits, lines, makings, segments, things } = period;
  const count = segments.count;
  return [...makings.keys()]
    .sort((a, b) => a - b)
    .flatMap((node) => {
      const flow = { made: 0, used: 0, creditOfMade: 0, costOfUsed: 0, isKnown: true };
      lines.child.forEach((child, line) => {
        if (child !== node) return;
        const amount = lines.amount[line] as number;
        for (let segment = lines.from[line] as number; segment < (lines.to[line] as number); segment++) {
          const moved = Math.abs(amount) * (need[(lines.parent[line] as number) * count + segment] as number);
          const worth = moved * (credits[node * count + segment] as number);
          if (moved !== 0 && complete[node * count + segment] !== 1) flow.isKnown = false;
          flow[amount < 0 ? 'made' : 'used'] += moved;
          flow[amount < 0 ? 'creditOfMade' : 'costOfUsed'] += worth;
        }
      });
      const thing = things[node];
      const { made, used, isKnown, creditOfMade, costOfUsed } = flow;
      const money = (amount: number): number | null => (isKnown ? amount : null);
      const worth = { creditOfMade: money(creditOfMade), costOfUsed: money(costOfUsed) };
      return thing ? [{ node, thing, made, used, ...worth }] : [];
    });
}
