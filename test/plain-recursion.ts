import { Decimal } from 'decimal.js';
import type { Day } from '@/lib/core/days';
import { nameKey } from '@/lib/core/name-key';
import { type BaseUnit, unitNamed } from '@/lib/core/units';
import type { Facts, IngredientVersion, ItemId, RecipeLine, RecipeVersion } from '@/lib/model/facts';

const Exact = Decimal.clone({ precision: 60 });
const exact = (value: number): Decimal => new Exact(value);

/** A sum of which something may be unknown: then it is null. */
type Known = Decimal | null;
const times = (a: Known, b: Known): Known => (a && b ? a.mul(b) : null);
const over = (a: Known, b: Known): Known => (a && b ? a.div(b) : null);
const plus = (a: Known, b: Known): Known => (a && b ? a.add(b) : null);

/** Food and packaging or estimate: what takes q and what does not. */
interface Parts {
  readonly food: Decimal;
  readonly plain: Decimal;
}

/**
 * What a plate costs on one day, by plain recursion over the facts in exact decimals, q included; null where it cannot be known.
 * Written from the definitions alone, line by line, with nothing of the model but unit sizes.
 */
export function plainCost(facts: Facts, item: ItemId, on: Day): Decimal | null {
  const parts = plateParts(facts, item, on);
  return parts?.food.mul(exact(1).add(exact(facts.venue.qFactor))).add(parts.plain) ?? null;
}

function plateParts(facts: Facts, item: ItemId, on: Day): Parts | null {
  const version = latest(facts.recipeVersions, item, on);
  if (!version) return null;
  const batch = batchParts(facts, version, on);
  if (batch) return scaled(batch, exact(1).div(exact(1).sub(exact(version.breakage))));
  return version.estimatedCost === null ? null : { food: exact(0), plain: exact(version.estimatedCost) };
}

function batchParts(facts: Facts, version: RecipeVersion, on: Day): Parts | null {
  if (version.lines.length === 0 || version.refusedLines > 0) return null;
  let sum: Parts | null = { food: exact(0), plain: exact(0) };
  for (const line of version.lines) {
    const part = lineParts(facts, line, on);
    sum = sum && part && { food: sum.food.add(part.food), plain: sum.plain.add(part.plain) };
  }
  return sum;
}

const scaled = (parts: Parts, by: Decimal): Parts => ({ food: parts.food.mul(by), plain: parts.plain.mul(by) });

function lineParts(facts: Facts, line: RecipeLine, on: Day): Parts | null {
  const kind = facts.items.find(({ id }) => id === line.item)?.kind;
  if (kind === 'ingredient') return boughtParts(facts, line, on);
  if (kind !== 'component') {
    const parts = plateParts(facts, line.item, on);
    return parts && unitNamed(line.unit, 'metric')?.base === 'each' ? scaled(parts, stated(line)) : null;
  }
  const version = latest(facts.recipeVersions, line.item, on);
  const batch = version && batchParts(facts, version, on);
  const share = version && over(quantityIn(line), outputIn(facts, version, baseOf(line), on));
  return batch && share && scaled(batch, share.div(exact(1).sub(exact(version.breakage))));
}

const stated = (line: RecipeLine): Decimal =>
  exact(line.quantity).mul(exact(unitNamed(line.unit, 'metric')?.size ?? 0));
const baseOf = (line: RecipeLine): BaseUnit | null => unitNamed(line.unit, 'metric')?.base ?? null;
const quantityIn = (line: RecipeLine): Known => (baseOf(line) === null ? null : stated(line));

function boughtParts(facts: Facts, line: RecipeLine, on: Day): Parts | null {
  const version = latest(facts.ingredientVersions, line.item, on);
  const grams = version && lineGrams(facts, line, version);
  const direct =
    version && baseOf(line) === version.measure
      ? stated(line)
      : over(grams, version && gramsIn(version, version.measure));
  const quantity = version && line.as === 'prepared' ? over(direct, exact(version.usableYield)) : direct;
  const cost = times(quantity, version && priceOf(facts, version, on));
  if (!version || !cost) return null;
  const isPackaging = version.department === 'packaging';
  return { food: isPackaging ? exact(0) : cost, plain: isPackaging ? cost : exact(0) };
}

/** Grams in one unit of a dimension of an ingredient. */
function gramsIn(version: IngredientVersion, base: BaseUnit): Known {
  const grams = { g: 1, ml: version.densityGPerMl, each: version.gramsEach }[base];
  return grams === null ? null : exact(grams);
}

function lineGrams(facts: Facts, line: RecipeLine, version: IngredientVersion): Known {
  const own = facts.namedMeasures.find((each) => each.item === line.item && nameKey(each.name) === nameKey(line.unit));
  if (own) return exact(line.quantity).mul(exact(own.quantity)); // generated ones are in grams
  const base = baseOf(line);
  return base === null ? null : times(stated(line), gramsIn(version, base));
}

/** Usable output of a batch in a dimension. */
function outputIn(facts: Facts, version: RecipeVersion, base: BaseUnit | null, on: Day): Known {
  const outputs = new Map<BaseUnit, Decimal>();
  const pairs = [
    [version.yieldQuantity, version.yieldUnit],
    [version.alsoQuantity, version.alsoUnit],
  ] as const;
  for (const [quantity, name] of pairs) {
    const unit = name === null ? null : unitNamed(name, 'metric');
    if (quantity !== null && unit && !outputs.has(unit.base))
      outputs.set(unit.base, exact(quantity).mul(exact(unit.size)));
  }
  if (version.yieldQuantity === null && !outputs.has('g')) {
    const weight = version.lines.reduce((sum: Known, line) => plus(sum, weightOf(facts, line, on)), exact(0));
    if (!weight) return null;
    outputs.set('g', weight);
  }
  const grams = outputs.get('g') ?? null;
  const loss = exact(version.batchLossG ?? 0);
  if (loss.gt(0) && !grams) return null;
  if (grams?.lte(loss)) return null;
  const left = grams ? grams.sub(loss).div(grams) : exact(1);
  return times(base === null ? null : (outputs.get(base) ?? null), left);
}

function weightOf(facts: Facts, line: RecipeLine, on: Day): Known {
  const ingredient = latest(facts.ingredientVersions, line.item, on);
  if (ingredient) return lineGrams(facts, line, ingredient);
  const version = latest(facts.recipeVersions, line.item, on);
  const asked = version && outputIn(facts, version, baseOf(line), on);
  return version && over(times(quantityIn(line), outputIn(facts, version, 'g', on)), asked);
}

function priceOf(facts: Facts, version: IngredientVersion, on: Day): Known {
  const offer = facts.offers.find(({ item }) => item === version.item);
  const points = facts.pricePoints.filter(
    (point) => point.offer === offer?.id && point.validFrom <= on && (point.validTo === null || point.validTo >= on),
  );
  const inForce = (['agreed', 'list', 'invoice'] as const)
    .map((kind) => points.filter((point) => point.kind === kind))
    .find((kind) => kind.length > 0);
  if (!offer || !inForce) return null;
  const last = inForce.reduce((best, point) => (point.validFrom > best.validFrom ? point : best));
  return exact(last.price).div(exact(offer.packCount).mul(exact(offer.packSize))); // generated packs are in the measure
}

function latest<Fact extends { readonly item: ItemId; readonly validFrom: Day | null }>(
  facts: readonly Fact[],
  item: ItemId,
  on: Day,
): Fact | null {
  const begun = facts.filter((fact) => fact.item === item && (fact.validFrom === null || fact.validFrom <= on));
  const from = (fact: Fact): number => fact.validFrom ?? Number.NEGATIVE_INFINITY;
  return begun.length === 0 ? null : begun.reduce((best, fact) => (from(fact) >= from(best) ? fact : best));
}
