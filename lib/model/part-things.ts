import type { DayRange } from '../core/days';
import { ascending, byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import { isNear } from '../core/near';
import type { Part, RecipeVersion } from './facts';
import type { Issue } from './issue';
import type { UnitReader } from './measure';
import type { Child, RecipeReading } from './recipe-piece';
import type { Thing, ThingPart } from './things';

/** Key of a part among all things: its ingredient and its name. */
export function partKey(item: Thing['id'], part: string): string {
  return `${item} ${nameKey(part)}`;
}

/**
 * The parts of a split ingredient as things, by name. A part is made of the whole like a component of one line: s of the whole give o
 * of the part, so that its cost and its need go through the same lines as everything else.
 */
export function partThings(whole: Thing, parts: readonly Part[], range: DayRange): readonly Thing[] {
  const sum = parts.reduce((total, { costShare }) => total + costShare, 0);
  return ascending(parts, (a, b) => byText(nameKey(a.name), nameKey(b.name))).map((part) => ({
    ...{ id: whole.id, kind: whole.kind, name: `${whole.name}, ${part.name}`, channel: null },
    part: { ...part, shares: sum },
    begins: null,
    recipes: whole.versions.length === 0 ? [] : [{ ...range, fact: splitting(part, whole) }],
    ...{ versions: [], prices: [], own: whole.own, uses: new Map(), menu: [], sales: [] },
  }));
}

/** A part as a recipe: what one base unit of the whole gives, with one line to the whole. */
function splitting(part: Part, whole: Thing): RecipeVersion {
  const line = {
    ...{ position: 1, item: part.item, quantity: part.costShare, unit: whole.versions[0]?.fact.measure ?? 'each' },
    ...{ as: 'bought' as const, use: null, part: null, choice: null, choiceShare: null, channel: null },
    byProductCredit: null,
  };
  return {
    ...{ item: part.item, validFrom: null, section: null, department: null },
    ...{ yieldQuantity: part.outputQuantity, yieldUnit: part.outputUnit, alsoQuantity: null, alsoUnit: null },
    ...{ batchLossG: null, breakage: 0, estimatedCost: null, overrun: null },
    ...{ handsOnMinutes: null, grade: null, platingMinutes: null, platingGrade: null },
    ...{ shelfLifeDays: null, smallestBatch: null, thrownAtClose: false, cautions: [], lines: [line], refusedLines: 0 },
  };
}

/**
 * Amount of the whole in one base unit of a part: s / o. The usable yield of the whole is not applied again: o is net.
 *
 * Upward this makes cost per unit = unit price * s / o. Downward the whole's need is sum(s * need / o): linear. Where the parts are not
 * needed in proportion, more units have to be bought than that; those stand apart (surplusParts).
 * Shares that do not sum to 1 would lose or make money: then no part is costed.
 */
export function readPart(thing: Thing, part: ThingPart, whole: Child, units: UnitReader): RecipeReading {
  const unit = units(part.outputUnit);
  const output = unit === null ? Number.NaN : part.outputQuantity * unit.size;
  const issues = partIssues(thing, part, whole, unit === null);
  return {
    amounts: [issues.length === 0 ? part.costShare / output : Number.NaN],
    measure: unit && {
      base: unit.base,
      per: { g: null, ml: null, each: null, [unit.base]: 1 },
      ...{ usableYield: 1, own: thing.own, lacks: null },
    },
    usable: output,
    issues,
  };
}

function partIssues(thing: Thing, part: ThingPart, whole: Child, isUnitUnknown: boolean): readonly Issue[] {
  const about = whole.thing.name;
  return [
    ...(isUnitUnknown
      ? [{ code: 'unknown-unit' as const, about, facts: { unit: part.outputUnit, where: thing.name } }]
      : []),
    ...(isNear(part.shares, 1) ? [] : [{ code: 'part-shares' as const, about, facts: { sum: part.shares } }]),
    ...(whole.inForce ? [] : [{ code: 'no-version' as const, about, facts: { recipe: thing.name } }]),
  ];
}
