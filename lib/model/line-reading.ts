import { grouped } from '../core/grouped';
import { nameKey } from '../core/name-key';
import { isNear } from '../core/near';
import type { RecipeLine } from './facts';
import type { Issue } from './issue';
import { BASE_UNITS, inBase, type Measure, missingBetween, type NoWay, type UnitReader } from './measure';
import type { Child } from './recipe-piece';
import type { Thing } from './things';

/** A line of a recipe in base units of what it asks for. */
export interface LineReading {
  /** As stated, times the share of a choice; below zero for what is made, not used; NaN where it cannot be worked out. */
  readonly quantity: number;
  /** What has to be bought or made for it: quantity / usable yield. */
  readonly bought: number;
  readonly issues: readonly Issue[];
}

export function readLine(recipe: Thing, line: RecipeLine, child: Child, share: number, units: UnitReader): LineReading {
  const unknown = (issues: readonly Issue[]): LineReading => ({ quantity: Number.NaN, bought: Number.NaN, issues });
  const about = child.thing.name;
  const facts = { recipe: recipe.name };
  if (line.part !== null && child.thing.part === null) {
    return unknown([{ code: 'unknown-part', about, facts: { ...facts, part: line.part } }]);
  }
  if (!child.measure) return unknown(child.inForce ? [] : [{ code: 'no-version', about, facts }]);
  const stated = inBase(child.measure, line.quantity, line.unit, units);
  if (typeof stated !== 'number') return unknown(unreadable(recipe, line, child.thing, child.measure, stated));
  const usableYield = lineYield(line, child.thing, child.measure);
  const quantity = (line.byProductCredit === null ? share : -share) * stated;
  if (usableYield !== null) return { quantity, bought: quantity / usableYield, issues: [] };
  const issue = { code: 'unknown-use' as const, about, facts: { ...facts, use: line.use } };
  return { quantity, bought: Number.NaN, issues: [issue] };
}

/**
 * y of a line: the usable yield of what it asks for, or of the use that it names; 1 where the quantity is as bought, where a part is
 * asked for (its output is net) and where a by-product is made. Null where nobody has stated that use.
 */
export function lineYield(line: RecipeLine, child: Thing, measure: Measure): number | null {
  if (line.as === 'bought' || child.part !== null || line.byProductCredit !== null) return 1;
  return line.use === null ? measure.usableYield : (child.uses.get(nameKey(line.use)) ?? null);
}

/**
 * The share of each line: that of its choice, where it is one of several that a guest chooses among; else 1. Where the shares of a
 * choice do not sum to 1 nobody knows what is served: NaN for each of them, and an issue.
 */
export function lineShares(
  recipe: Thing,
  lines: readonly RecipeLine[],
): { readonly shares: readonly number[]; readonly issues: readonly Issue[] } {
  if (lines.every(({ choice }) => choice === null)) return { shares: lines.map(() => 1), issues: [] };
  const amiss = new Map<string, Issue>();
  const keyOf = ({ choice, channel }: RecipeLine): string => `${nameKey(choice ?? '')} ${channel ?? ''}`;
  for (const [key, group] of grouped(
    lines.filter(({ choice }) => choice !== null),
    keyOf,
  )) {
    const sum = group.reduce((total, { choiceShare }) => total + (choiceShare ?? Number.NaN), 0);
    if (isNear(sum, 1)) continue;
    const facts = { choice: group[0]?.choice ?? '', sum: Number.isNaN(sum) ? null : sum };
    amiss.set(key, { code: 'choice-shares', about: recipe.name, facts });
  }
  const shares = lines.map((line) => {
    if (line.choice === null) return 1;
    return amiss.has(keyOf(line)) ? Number.NaN : (line.choiceShare ?? Number.NaN);
  });
  return { shares, issues: [...amiss.values()] };
}

function unreadable(recipe: Thing, line: RecipeLine, child: Thing, measure: Measure, why: NoWay): readonly Issue[] {
  if ('unknownUnit' in why) {
    return [{ code: 'unknown-unit', about: child.name, facts: { unit: why.unknownUnit, where: recipe.name } }];
  }
  const facts = { recipe: recipe.name, unit: line.unit };
  if (measure.lacks === null) {
    const outputs = BASE_UNITS.filter((unit) => measure.per[unit] !== null);
    return [{ code: child.part ? 'part-unit' : 'no-output-unit', about: child.name, facts: { ...facts, outputs } }];
  }
  return missingBetween(measure, why.from).map((column) => ({
    code: column === 'grams_each' ? 'no-piece-weight' : 'no-density',
    about: child.name,
    facts,
  }));
}
