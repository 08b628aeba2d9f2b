import { Decimal } from 'decimal.js';
import type { Day } from '@/lib/core/days';
import { nameKey } from '@/lib/core/name-key';
import { type BaseUnit, unitNamed } from '@/lib/core/units';
import type { Facts, IngredientVersion, ItemId, NamedMeasure, RecipeLine, RecipeVersion } from '@/lib/model/facts';

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

/** A day in a book, and the channel in which a portion is sold; null: what it takes in every channel. */
interface On {
  readonly facts: Facts;
  readonly day: Day;
  readonly channel: string | null;
}

/**
 * What a plate costs on one day, by plain recursion over the facts in exact decimals, q included; null where it cannot be known.
 * Written from the definitions alone, line by line, with nothing of the model but unit sizes.
 */
export function plainCost(facts: Facts, item: ItemId, day: Day, channel: string | null = null): Decimal | null {
  const parts = add(plateParts(item, { facts, day, channel }), plateMore(item, { facts, day, channel }));
  return parts?.food.mul(exact(1).add(exact(facts.venue.qFactor))).add(parts.plain) ?? null;
}

const NOTHING: Parts = { food: exact(0), plain: exact(0) };
const add = (a: Parts | null, b: Parts | null): Parts | null =>
  a && b && { food: a.food.add(b.food), plain: a.plain.add(b.plain) };
const scaled = (parts: Parts | null, by: Known): Parts | null =>
  parts && by && { food: parts.food.mul(by), plain: parts.plain.mul(by) };
const sumOf = <T>(each: readonly T[], of: (one: T) => Parts | null): Parts | null =>
  each.reduce((sum: Parts | null, one) => add(sum, of(one)), NOTHING);

/** Needed for one that is served. */
const served = (version: RecipeVersion): Decimal => exact(1).div(exact(1).sub(exact(version.breakage)));

/** What a plate takes wherever it is sold. */
function plateParts(item: ItemId, on: On): Parts | null {
  const version = latest(on.facts.recipeVersions, item, on.day);
  if (!version) return null;
  const batch = batchParts(version, on);
  if (batch) return scaled(batch, served(version));
  return version.estimatedCost === null ? null : { food: exact(0), plain: exact(version.estimatedCost) };
}

/** What a plate takes more in the channel: its own lines of that channel, and what the plates in it take more. */
function plateMore(item: ItemId, on: On): Parts | null {
  const version = latest(on.facts.recipeVersions, item, on.day);
  if (!version || on.channel === null) return version && NOTHING;
  const own = sumOf(
    version.lines.filter(({ channel }) => channel === on.channel),
    (line) => lineParts(version, line, on),
  );
  const below = sumOf(
    version.lines.filter(({ channel, item: child }) => channel === null && isPlate(child, on)),
    (line) => scaled(plateMore(line.item, on), times(shareOf(version, line), stated(line))),
  );
  return scaled(add(own, below), served(version));
}

const kindOf = (item: ItemId, { facts }: On): string | undefined => facts.items.find(({ id }) => id === item)?.kind;
const isPlate = (item: ItemId, on: On): boolean => !['ingredient', 'component'].includes(kindOf(item, on) ?? '');

function batchParts(version: RecipeVersion, on: On): Parts | null {
  const lines = version.lines.filter(({ channel }) => channel === null);
  return lines.length === 0 || version.refusedLines > 0 ? null : sumOf(lines, (line) => lineParts(version, line, on));
}

/** The share of a line in its choice; null where the shares of that choice do not sum to 1. */
function shareOf(version: RecipeVersion, { choice, choiceShare }: RecipeLine): Known {
  if (choice === null) return exact(1);
  const sum = version.lines
    .filter((line) => line.choice === choice)
    .reduce((total, line) => total.add(exact(line.choiceShare ?? 0)), exact(0));
  return sum.sub(1).abs().lt(1e-9) ? exact(choiceShare ?? 0) : null;
}

/** What a line costs in a batch of its recipe. */
function lineParts(version: RecipeVersion, line: RecipeLine, on: On): Parts | null {
  return scaled(wholeLineParts(line, on), shareOf(version, line));
}

function wholeLineParts(line: RecipeLine, on: On): Parts | null {
  const credit = creditOf(line.item, on);
  if (credit !== 'none') {
    const grams = baseOf(line) === 'g' && (line.use === null || line.as === 'bought') ? stated(line) : null;
    const cost = times(grams, credit);
    return cost && { food: line.byProductCredit === null ? cost : cost.neg(), plain: exact(0) };
  }
  if (kindOf(line.item, on) === 'ingredient') return line.part === null ? boughtParts(line, on) : partParts(line, on);
  if (line.use !== null && line.as === 'prepared') return null;
  if (isPlate(line.item, on)) {
    return baseOf(line) === 'each' ? scaled(plateParts(line.item, on), stated(line)) : null;
  }
  const version = latest(on.facts.recipeVersions, line.item, on.day);
  const batch = version && batchParts(version, on);
  const share = version && over(quantityIn(line), outputIn(version, baseOf(line), on));
  return batch && share && scaled(batch, share.mul(served(version)));
}

/** What one gram of a by-product is worth; 'none' where nothing makes it that day, null where recipes say different things. */
function creditOf(item: ItemId, { facts, day }: On): Known | 'none' {
  const inForce = new Set(facts.recipeVersions.map((version) => latest(facts.recipeVersions, version.item, day)));
  const made = [...inForce].flatMap((version) => version?.lines ?? []).filter((line) => line.item === item);
  const credits = made.flatMap(({ byProductCredit }) => (byProductCredit === null ? [] : [byProductCredit]));
  const [first] = credits; // generated ones are in grams
  if (first === undefined) return 'none';
  return credits.every((credit) => Math.abs(credit - first) < 1e-9) ? exact(first) : null;
}

const stated = (line: RecipeLine): Decimal =>
  exact(line.quantity).mul(exact(unitNamed(line.unit, 'metric')?.size ?? 0));
const baseOf = (line: RecipeLine): BaseUnit | null => unitNamed(line.unit, 'metric')?.base ?? null;
const quantityIn = (line: RecipeLine): Known => (baseOf(line) === null ? null : stated(line));

function boughtParts(line: RecipeLine, { facts, day }: On): Parts | null {
  const version = latest(facts.ingredientVersions, line.item, day);
  const grams = version && lineGrams(facts, line, version);
  const direct =
    version && baseOf(line) === version.measure
      ? stated(line)
      : over(grams, version && gramsIn(version, version.measure));
  const usable = facts.yieldUses.find(
    ({ item, use }) => item === line.item && nameKey(use) === nameKey(line.use ?? ''),
  );
  const y = line.use === null ? (version?.usableYield ?? null) : (usable?.usableYield ?? null);
  const quantity = line.as === 'prepared' ? over(direct, y === null ? null : exact(y)) : direct;
  const cost = times(quantity, version && priceOf(facts, version, day));
  return version && cost && departed(version, cost);
}

/** A part: unit price * s / o, the usable yield not applied again. */
function partParts(line: RecipeLine, { facts, day }: On): Parts | null {
  const version = latest(facts.ingredientVersions, line.item, day);
  const parts = facts.parts.filter(({ item }) => item === line.item);
  const part = parts.find(({ name }) => nameKey(name) === nameKey(line.part ?? ''));
  const shares = parts.reduce((sum, { costShare }) => sum.add(exact(costShare)), exact(0));
  if (!version || !part || shares.sub(1).abs().gt(1e-9)) return null;
  const price = times(priceOf(facts, version, day), exact(part.costShare).div(exact(part.outputQuantity)));
  const cost = times(partQuantity(facts, line), price);
  return cost && departed(version, cost);
}

function partQuantity(facts: Facts, line: RecipeLine): Known {
  const own = ownMeasure(facts, line);
  const unit = own ? 'g' : baseOf(line);
  const part = facts.parts.find(({ item, name }) => item === line.item && nameKey(name) === nameKey(line.part ?? ''));
  if (part?.outputUnit !== unit) return null;
  return own ? exact(line.quantity).mul(exact(own.quantity)) : stated(line);
}

function departed(version: IngredientVersion, cost: Decimal): Parts {
  const isPackaging = version.department === 'packaging';
  return { food: isPackaging ? exact(0) : cost, plain: isPackaging ? cost : exact(0) };
}

/** Grams in one unit of a dimension of an ingredient. */
function gramsIn(version: IngredientVersion, base: BaseUnit): Known {
  const grams = { g: 1, ml: version.densityGPerMl, each: version.gramsEach }[base];
  return grams === null ? null : exact(grams);
}

function ownMeasure(facts: Facts, line: RecipeLine): NamedMeasure | undefined {
  return facts.namedMeasures.find((each) => each.item === line.item && nameKey(each.name) === nameKey(line.unit));
}

function lineGrams(facts: Facts, line: RecipeLine, version: IngredientVersion): Known {
  const own = ownMeasure(facts, line);
  if (own) return exact(line.quantity).mul(exact(own.quantity)); // generated ones are in grams
  const base = baseOf(line);
  return base === null ? null : times(stated(line), gramsIn(version, base));
}

/** Usable output of a batch in a dimension. */
function outputIn(version: RecipeVersion, base: BaseUnit | null, on: On): Known {
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
    const weight = version.lines.reduce((sum: Known, line) => plus(sum, weightOf(line, on)), exact(0));
    if (!weight) return null;
    outputs.set('g', weight);
  }
  if (version.overrun !== null) {
    const mix = outputs.get('ml');
    if (!mix) return null;
    outputs.set('ml', mix.mul(exact(1).add(exact(version.overrun))));
  }
  const grams = outputs.get('g') ?? null;
  const loss = exact(version.batchLossG ?? 0);
  if (loss.gt(0) && !grams) return null;
  if (grams?.lte(loss)) return null;
  const left = grams ? grams.sub(loss).div(grams) : exact(1);
  return times(base === null ? null : (outputs.get(base) ?? null), left);
}

function weightOf(line: RecipeLine, on: On): Known {
  if (line.byProductCredit !== null) return times(baseOf(line) === 'g' ? stated(line) : null, exact(-1));
  if (line.part !== null)
    return ownMeasure(on.facts, line) || baseOf(line) === 'g' ? partQuantity(on.facts, line) : null;
  const isUsed = line.use === null || line.as === 'bought' || kindOf(line.item, on) === 'ingredient';
  const ingredient = latest(on.facts.ingredientVersions, line.item, on.day);
  if (ingredient) return lineGrams(on.facts, line, ingredient);
  if (!isUsed) return null;
  const version = latest(on.facts.recipeVersions, line.item, on.day);
  const asked = version && outputIn(version, baseOf(line), on);
  return version && over(times(quantityIn(line), outputIn(version, 'g', on)), asked);
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
