import { type Day, type DayRange, isWithin } from '../core/days';
import { ascending } from '../core/grouped';
import { isByProduct } from './by-products';
import { type Compiled, compile } from './compile';
import type { CoversDay, Facts, ItemId, VenueSettings } from './facts';
import type { Issue } from './issue';
import { issueList } from './issue-list';
import { type Labour, labourOf } from './labour';
import { labourRatesOf, rateChanges } from './labour-rates';
import { unitReader } from './measure';
import { sectionsOf } from './offered';
import { upward } from './passes';
import { boughtGoods, invoicePoints, purchaseIssues } from './purchases';
import { itemNodes } from './recipe-graph';
import { type Segments, segmentsOf, segmentsWithin } from './segments';
import { settingIssues } from './settings';
import { type Scope, type Thing, thingsOf } from './things';
import { type WaitingInPeriod, waitingIn } from './waiting-sales';

/** Unit costs in venue currency per base unit (portion, for what is plated); entry node * segments + segment. */
export interface UnitCosts {
  /** Food and drink: what q is added to. */
  readonly food: Float64Array;
  readonly packaging: Float64Array;
  /** Owner's estimates. */
  readonly estimate: Float64Array;
}

/**
 * A period with everything costed, each day with what was in force on it: what every report is made from.
 *
 * A node is the index of a thing: items in the order of names, then parts, then packings. Where `complete` is 0, the unit costs are a
 * floor: the known part.
 */
export interface CostedPeriod extends Compiled {
  readonly venue: VenueSettings;
  readonly range: DayRange;
  readonly things: readonly Thing[];
  readonly nodeOf: ReadonlyMap<ItemId, number>;
  /** The menu sections of what is on the menu or sold, by name. */
  readonly sections: readonly string[];
  /** Guests of each day of the period of which they are known. */
  readonly covers: readonly CoversDay[];
  /** What was sold in it under names that nobody knows. */
  readonly waiting: WaitingInPeriod;
  /** Whether any stock was counted on its days. */
  readonly stockCounted: boolean;
  readonly segments: Segments;
  readonly prices: UnitCosts;
  readonly costs: UnitCosts;
  /** Recipe labour and plating, beside food: never inside a plate cost. Its issues stand in no other list. */
  readonly labour: Labour;
  readonly issues: readonly Issue[];
}

/**
 * Compiles the facts of a venue for some days, once, and costs everything that was on the menu or sold in them; with the scope
 * everything also what was neither. The scope changes no figure, only for what there is one and an issue.
 */
export function costPeriod(facts: Facts, range: DayRange, scope: Scope = 'offered'): CostedPeriod {
  const units = unitReader(facts.venue.kitchenMeasures);
  const bought = boughtGoods(facts, units);
  const pricePoints = [...facts.pricePoints, ...invoicePoints(bought)];
  const things = thingsOf({ ...facts, pricePoints }, range, units, scope);
  const rates = labourRatesOf(facts.labourRates, range);
  const segments = segmentsOf(range, [...things.flatMap(changesOf), ...rateChanges(things, rates)]);
  const found = issueList();
  for (const issue of [...settingIssues(facts.venue), ...purchaseIssues(bought, range)]) found.add(issue);
  const compiled = compile(things, segments, units, found, scope);
  const prices = { ...pricesBySegment(things, segments, compiled), estimate: compiled.estimates };
  const pass = (of: Float64Array): Float64Array => upward(compiled.lines, of, segments.count);
  let labour: Labour | null = null;
  return {
    ...compiled,
    venue: facts.venue,
    range,
    things,
    nodeOf: itemNodes(things),
    sections: sectionsOf(things),
    covers: ascending(
      facts.covers.filter(({ day }) => isWithin(day, range)),
      (a, b) => a.day - b.day,
    ),
    waiting: waitingIn(facts.waitingSales, range),
    stockCounted: facts.counts.some(({ day }) => isWithin(day, range)),
    segments,
    prices,
    costs: { food: pass(prices.food), packaging: pass(prices.packaging), estimate: pass(prices.estimate) },
    get labour() {
      // worked out when it is first asked for: the mix never asks
      labour ??= labourOf(things, compiled, segments, rates);
      return labour;
    },
    issues: found.issues(),
  };
}

/** The days on which something that a cost hangs on begins or ends. */
function changesOf(thing: Thing): readonly Day[] {
  return [...thing.recipes, ...thing.versions, ...thing.prices].flatMap(({ from, to }) => [from, to]);
}

/**
 * The price in force of each ingredient in each segment, and the credit of each by-product where it is made; 0 where there is none,
 * which `complete` tells apart from free.
 */
function pricesBySegment(
  things: readonly Thing[],
  segments: Segments,
  { makings, credits }: Compiled,
): Pick<UnitCosts, 'food' | 'packaging'> {
  const { count } = segments;
  const food = new Float64Array(things.length * count);
  const packaging = new Float64Array(things.length * count);
  things.forEach((thing, node) => {
    for (const span of thing.prices) {
      const { from, to } = segmentsWithin(segments, span);
      food.fill(span.fact.price ?? 0, node * count + from, node * count + to);
    }
    for (const version of thing.versions) {
      if (version.fact.department !== 'packaging') continue;
      const { from, to } = segmentsWithin(segments, version);
      const cells = [node * count + from, node * count + to] as const;
      packaging.set(food.subarray(...cells), cells[0]);
      food.fill(0, ...cells);
    }
  });
  for (const node of makings.keys()) {
    for (let segment = 0; segment < count; segment++) {
      if (!isByProduct(makings, node, segment)) continue;
      const cell = node * count + segment;
      food[cell] = credits[cell] ?? 0;
      packaging[cell] = 0;
    }
  }
  return { food, packaging };
}
