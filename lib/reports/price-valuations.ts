import { type Day, type DayRange, isWithin } from '../core/days';
import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { BaseUnit } from '../core/units';
import { deliveryDay } from '../model/accruals';
import type { Facts, ItemId, PurchaseKind, PurchaseLine, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { issueList } from '../model/issue-list';
import { unitReader } from '../model/measure';
import { boughtGoods, type Claim, claimsOf, purchaseIssues } from '../model/purchases';
import { stocksOf } from '../model/valuation/all-stocks';
import { atFifo } from '../model/valuation/fifo';
import { type IngredientStock, periodStock } from '../model/valuation/ingredient-stock';
import { atLastInvoice, atPriceInForce, atWeightedAverage } from '../model/valuation/one-price';
import { type Layer, sumOf, type Valuation, type ValuationName } from '../model/valuation/stock-flow';

/** One ingredient by one valuation. Money in venue currency; values are of the quantities of the row. */
export interface ValuedIngredient {
  readonly valuation: ValuationName;
  /** Of one base unit; null where it cannot be said. */
  readonly price: number | null;
  readonly opening: number | null;
  readonly closing: number | null;
  readonly used: number | null;
  readonly transferredOut: number | null;
}

export interface IngredientValuations {
  readonly id: ItemId;
  readonly ingredient: string;
  readonly unit: BaseUnit;
  /** The counts between which it stands; null: not counted before, or not in the period. */
  readonly countedFrom: Day | null;
  readonly countedTo: Day | null;
  /** Base units. Null where not counted. */
  readonly opening: number | null;
  readonly closing: number | null;
  /** Net of what went back, with its value net of credits. */
  readonly purchased: Layer;
  /** Of it, value that no invoice says yet. */
  readonly accrued: number;
  readonly transferredIn: Layer;
  readonly transferredOut: number;
  readonly valued: readonly ValuedIngredient[];
}

/** What belongs to no ingredient, in venue currency: each on its own line. */
export interface OwnLines {
  readonly freight: number;
  /** What suppliers gave back, when earned: above zero lowers cost. */
  readonly rebates: number;
  /** Crates and bottles: a receivable, no cost. */
  readonly deposits: number;
  readonly nonFood: number;
  /** Credits for nothing that is named: above zero lowers cost. */
  readonly otherCredits: number;
}

export interface PriceValuations {
  readonly venue: VenueSettings;
  readonly period: DayRange;
  readonly ingredients: readonly IngredientValuations[];
  readonly ownLines: OwnLines;
  readonly claims: readonly Claim[];
  readonly issues: readonly Issue[];
}

export interface ValuationOptions {
  /** Freight and surcharges spread over the goods of their invoice by line value; only where the venue says so. */
  readonly spreadFreight?: boolean;
  /** The least unit of the venue's currency: a claim within half of it is rounding. */
  readonly leastUnit: number;
}

const VALUATIONS: readonly Valuation[] = [atPriceInForce, atLastInvoice, atWeightedAverage, atFifo];

/**
 * What a base unit of each ingredient cost in a period, and what its stock and its use are worth, by every valuation side by side, each
 * named. By name.
 */
export function priceValuations(facts: Facts, range: DayRange, options: ValuationOptions): PriceValuations {
  const stocks = stocksOf(facts, { spreadFreight: options.spreadFreight ?? false });
  const inRange = <Dated extends { readonly day: Day }>(dated: Dated): boolean => isWithin(dated.day, range);
  const units = unitReader(facts.venue.kitchenMeasures);
  const bought = boughtGoods(facts, units);
  const found = issueList();
  for (const issue of [...purchaseIssues(bought, range), ...stocks.issues.filter(inRange)]) found.add(issue);
  const unitOf = new Map(facts.ingredientVersions.map(({ item, measure }) => [item, measure]));
  const ingredients = facts.items.flatMap(({ id, name }) => {
    const stock = stocks.of.get(id);
    const unit = unitOf.get(id);
    return stock && unit ? [{ id, ingredient: name, unit, ...rowOf(stock, range, facts.venue) }] : [];
  });
  return {
    venue: facts.venue,
    period: range,
    ingredients: ingredients.sort((a, b) => byText(nameKey(a.ingredient), nameKey(b.ingredient))),
    ownLines: ownLines(stocks.ownLines.filter((line) => isWithin(deliveryDay(line), range))),
    claims: claimsOf(bought.filter(inRange), options.leastUnit),
    issues: found.issues(),
  };
}

function rowOf(stock: IngredientStock, range: DayRange, { periods }: VenueSettings) {
  const each = VALUATIONS.map((valuation) => periodStock(stock, range, valuation, periods));
  const [first] = each;
  if (!first) throw new Error('there is always a valuation');
  const { countedFrom, countedTo, flow } = first;
  const bought = flow.receipts.filter(({ kind }) => kind !== 'transfer_in');
  const worth = (layers: readonly Layer[] | null): number | null => (layers === null ? null : sumOf(layers).value);
  return {
    countedFrom: countedFrom?.day ?? null,
    countedTo: countedTo?.day ?? null,
    opening: countedFrom?.quantity ?? null,
    closing: countedTo?.quantity ?? null,
    purchased: sumOf(bought),
    accrued: sumOf(bought.filter(({ accrued }) => accrued)).value,
    transferredIn: sumOf(flow.receipts.filter(({ kind }) => kind === 'transfer_in')),
    transferredOut: flow.transferredOut,
    valued: each.map(
      ({ flow: { opening }, valued }): ValuedIngredient => ({
        valuation: valued.name,
        price: valued.price,
        opening: worth(opening),
        closing: worth(valued.closing),
        used: valued.used?.value ?? null,
        transferredOut: valued.transferredOut?.value ?? null,
      }),
    ),
  };
}

function ownLines(lines: readonly PurchaseLine[]): OwnLines {
  const sum = (kind: PurchaseKind): number =>
    lines.filter((line) => line.kind === kind).reduce((total, { amount }) => total + (amount ?? 0), 0);
  const given = (kind: PurchaseKind): number =>
    lines.filter((line) => line.kind === kind).reduce((total, { amount }) => total + Math.abs(amount ?? 0), 0);
  return {
    freight: sum('freight'),
    rebates: given('rebate'),
    deposits: sum('deposit'),
    nonFood: sum('non_food'),
    otherCredits: given('credit'),
  };
}
