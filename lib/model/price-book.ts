import { addDays, type Day, type DayRange } from '../core/days';
import { byText } from '../core/grouped';
import type { Exchange } from './exchange';
import type { IngredientVersion, Offer, OfferChoice, PriceKind, PricePoint } from './facts';
import { type InForce, inForce, onDay } from './in-force';
import type { Issue } from './issue';
import { inBase, ingredientMeasure, type Measure, missingBetween, type OwnMeasures, type UnitReader } from './measure';

/** Everything stated about buying one ingredient. */
export interface Buying {
  readonly name: string;
  readonly versions: readonly InForce<IngredientVersion>[];
  readonly own: OwnMeasures;
  readonly offers: readonly Offer[];
  readonly choices: readonly OfferChoice[];
  readonly pointsOf: (offer: Offer) => readonly PricePoint[];
}

/** The price of one base unit in venue currency with the way back to it, or what is missing. */
export type BasePrice =
  | {
      readonly price: number;
      readonly offer: Offer;
      readonly point: PricePoint;
      /** Venue currency for one unit of the price point's currency. */
      readonly rate: number;
      readonly issue: null;
    }
  | { readonly price: null; readonly issue: Issue };

/**
 * The price in force of an ingredient, as the days of the range on which it does not change. Days without a version in force are in none.
 *
 * p = pack price * rate / (pack count * pack size in base units of the ingredient), in venue currency per base unit.
 */
export function pricesInForce(
  buying: Buying,
  range: DayRange,
  exchange: Exchange,
  units: UnitReader,
): readonly InForce<BasePrice>[] {
  const choices = inForce(buying.choices, range);
  const points = buying.offers.flatMap(buying.pointsOf);
  const changes = new Set<Day>([...buying.versions, ...choices].flatMap(({ from, to }) => [from, to]));
  for (const point of points) {
    changes.add(point.validFrom);
    if (point.validTo !== null) changes.add(addDays(point.validTo, 1));
  }
  for (const currency of new Set(points.map((point) => point.currency))) {
    for (const day of exchange.changesOf(currency)) changes.add(day);
  }
  const days = [...changes.add(range.from)].filter((day) => day >= range.from && day < range.to).sort((a, b) => a - b);
  const spans: InForce<BasePrice>[] = [];
  const measureOf = new Map(buying.versions.map(({ fact }) => [fact, ingredientMeasure(fact, buying.own)]));
  for (const [index, from] of days.entries()) {
    const to = days[index + 1] ?? range.to;
    const version = onDay(buying.versions, from);
    const measure = version === null ? undefined : measureOf.get(version);
    if (!measure) continue;
    const fact = priceOn(buying, measure, onDay(choices, from), from, exchange, units);
    const before = spans.at(-1);
    if (before && before.to === from && samePrice(before.fact, fact)) spans[spans.length - 1] = { ...before, to };
    else spans.push({ from, to, fact });
  }
  return spans;
}

/** A delivery at the price of the last one changes nothing: the point from which on the price has held stays. */
function samePrice(a: BasePrice, b: BasePrice): boolean {
  if (a.issue === null) return b.issue === null && a.price === b.price && a.offer === b.offer;
  return b.issue !== null && JSON.stringify(a.issue) === JSON.stringify(b.issue);
}

/** The price in force of an ingredient on a day, by its measure and the offer chosen on that day. */
export function priceOn(
  buying: Pick<Buying, 'name' | 'offers' | 'pointsOf'>,
  measure: Measure,
  choice: OfferChoice | null,
  day: Day,
  exchange: Exchange,
  units: UnitReader,
): BasePrice {
  const missing = (code: Issue['code'], facts: Issue['facts']): BasePrice => ({
    price: null,
    issue: { code, about: buying.name, facts },
  });
  const offer = chosenOffer(buying.offers, choice);
  if (offer === 'none') return missing('no-offer', {});
  if (offer === 'several') {
    const names = buying.offers.map(({ supplier, code }) => `${supplier} ${code}`).sort(byText);
    return missing('offer-not-chosen', { offers: names });
  }
  const { supplier, code } = offer;
  const point = pricePointInForce(buying.pointsOf(offer), day);
  if (point === null) return missing('no-price', { supplier, code });
  const rate = exchange.rateOn(point.currency, rateDay(point, day));
  if (rate === null) return missing('no-exchange-rate', { currency: point.currency, supplier, code });
  const content = inBase(measure, offer.packCount * offer.packSize, offer.packUnit, units);
  if (typeof content === 'number') return { price: (point.price * rate) / content, offer, point, rate, issue: null };
  if ('unknownUnit' in content)
    return missing('unknown-unit', { unit: content.unknownUnit, where: `${supplier} ${code}` });
  const facts = missingBetween(measure, content.from).join(' and ');
  return missing('pack-unit-mismatch', { unit: offer.packUnit, missing: facts, supplier, code });
}

/** An invoice was paid at the rate of its delivery; a price in force is what a delivery of that day would pay. */
export function rateDay(point: PricePoint, day: Day): Day {
  return point.kind === 'invoice' ? point.validFrom : day;
}

/** The chosen offer; one offer alone is chosen by itself. */
export function chosenOffer(offers: readonly Offer[], choice: OfferChoice | null): Offer | 'none' | 'several' {
  const chosen = choice === null ? undefined : offers.find((offer) => offer.id === choice.offer);
  if (chosen) return chosen;
  const [only, another] = offers;
  if (!only) return 'none';
  return another ? 'several' : only;
}

/** Agreed before list before last invoice. A quote enters no cost until it is accepted. */
const IN_FORCE: readonly PriceKind[] = ['agreed', 'list', 'invoice'];

/**
 * The price point in force on a day: of the first kind that has one, the latest that has begun and not ended.
 *
 * A price that holds only from so many packs on is a tier of the same price: the one without a minimum is what an order of any size
 * pays, so it goes first; where every price has a minimum, the smallest is the easiest to reach.
 */
export function pricePointInForce(points: readonly PricePoint[], day: Day): PricePoint | null {
  for (const kind of IN_FORCE) {
    let best: PricePoint | null = null;
    for (const point of points) {
      if (point.kind !== kind || point.validFrom > day || (point.validTo !== null && point.validTo < day)) continue;
      if (best === null || goesBefore(point, best)) best = point;
    }
    if (best !== null) return best;
  }
  return null;
}

/** The price point of one kind that an order of so many packs meets on a day: that of the largest minimum within it, the latest of those. */
export function priceFor(points: readonly PricePoint[], kind: PriceKind, day: Day, packs: number): PricePoint | null {
  let best: PricePoint | null = null;
  for (const point of points) {
    if (point.kind !== kind || point.validFrom > day || (point.validTo !== null && point.validTo < day)) continue;
    if (minimum(point) > Math.max(1, packs)) continue;
    const larger = best === null ? 1 : minimum(point) - minimum(best);
    if (best === null || larger > 0 || (larger === 0 && point.validFrom > best.validFrom)) best = point;
  }
  return best;
}

/** A minimum of one pack or less asks for nothing. */
const minimum = (point: PricePoint): number => Math.max(1, point.minimumPacks ?? 1);

function goesBefore(point: PricePoint, best: PricePoint): boolean {
  return minimum(point) === minimum(best) ? point.validFrom > best.validFrom : minimum(point) < minimum(best);
}
