import type { CostedPeriod } from './costed-period';
import type { Thing } from './things';

/** A split ingredient of a period: what was needed of its parts, and what had to be bought for that. Units are its base units. */
export interface SplitNeed {
  readonly node: number;
  readonly thing: Thing;
  readonly parts: readonly {
    readonly name: string;
    /** In base units of the part. */
    readonly need: number;
    /** need / o: units of the whole that give so much of it. */
    readonly units: number;
  }[];
  /** Units that lines to the whole ask for. */
  readonly asWhole: number;
  /** Units that have to be bought: asWhole + the most that any part asks for. */
  readonly units: number;
  /** Units beyond those that the costs of the parts pay for: units - asWhole - sum(s * need / o). */
  readonly surplusUnits: number;
  /** Surplus units at the mean price of the units needed; null where a price is not known. */
  readonly surplusCost: number | null;
}

/**
 * What the parts of split ingredients leave over, worked out once for the whole period: yolks of one week use the eggs whose whites
 * went into another.
 *
 * `need` covers everything that is made, entry node * segments + segment (needOfServed, with other uses where they are counted).
 */
export function surplusParts(period: CostedPeriod, need: Float64Array): readonly SplitNeed[] {
  const partsOf = new Map<number, number[]>(); // by name of the whole, as parts are
  period.things.forEach(({ id, part }, node) => {
    const whole = period.nodeOf.get(id);
    if (part && whole !== undefined) partsOf.set(whole, [...(partsOf.get(whole) ?? []), node]);
  });
  return [...partsOf].flatMap(([node, parts]) => splitNeed(period, need, node, parts));
}

function splitNeed(
  period: CostedPeriod,
  need: Float64Array,
  node: number,
  partNodes: readonly number[],
): readonly SplitNeed[] {
  const { count } = period.segments;
  const total = (each: number): number => sumOf(need.subarray(each * count, (each + 1) * count));
  const parts = partNodes.flatMap((each) => {
    const { part, recipes, name } = { ...period.things[each], recipes: period.recipes[each] ?? [] };
    const [piece] = recipes;
    const amount = piece?.amounts[0] ?? Number.NaN;
    if (!part || !piece || Number.isNaN(amount)) return [];
    const needed = total(each);
    return [{ name: part.name || (name ?? ''), need: needed, units: needed / piece.usable, paid: needed * amount }];
  });
  const thing = period.things[node];
  if (!thing || parts.length < partNodes.length) return [];
  const paid = sumOf(parts.map((part) => part.paid));
  const asWhole = total(node) - paid;
  const most = Math.max(...parts.map(({ units }) => units));
  const surplusUnits = most - paid;
  return [
    {
      node,
      thing,
      parts: parts.map(({ name, need: needed, units }) => ({ name, need: needed, units })),
      ...{ asWhole, units: asWhole + most, surplusUnits, surplusCost: worthOf(period, need, node, surplusUnits) },
    },
  ];
}

/** Some units at the mean price of those needed: sum(need * price) / sum(need). */
function worthOf(period: CostedPeriod, need: Float64Array, node: number, units: number): number | null {
  const { count } = period.segments;
  let needed = 0;
  let cost = 0;
  for (let cell = node * count; cell < (node + 1) * count; cell++) {
    const amount = need[cell] as number;
    if (amount === 0) continue;
    if (period.complete[cell] !== 1) return null;
    needed += amount;
    cost += amount * ((period.prices.food[cell] as number) + (period.prices.packaging[cell] as number));
  }
  return needed === 0 ? 0 : (units * cost) / needed;
}

function sumOf(values: Iterable<number>): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
}
