import type { Day } from '../core/days';
import { isNear } from '../core/near';
import type { Facts, Offer, PurchaseLine } from './facts';
import type { Issue } from './issue';
import { inBase, type Measure, missingBetween, type UnitReader } from './measure';
import { measureReader } from './measure-reader';

/** What came with a line, in packs of its offer; `charged` is what its amount is for. Both are null where the line does not say. */
export interface PacksBrought {
  readonly came: number | null;
  readonly charged: number | null;
  /** Base units of the ingredient in one pack; null where there is no way to them. */
  readonly content: number | null;
  readonly issue: Issue | null;
}

/** Reads what the lines of a venue's purchases brought. */
export type QuantityReader = (line: PurchaseLine, offer: Offer, day: Day) => PacksBrought;

/**
 * What a line brought, in packs: as many as it says, or the weight that was delivered / the content of a pack (catch weight).
 *
 * Where both are stated, what was delivered decides, and the amount is for that; unless it is a whole number of packs fewer than
 * were invoiced: then those are short, and the amount is for all that were invoiced.
 */
export function quantityReader(facts: Facts, units: UnitReader): QuantityReader {
  const measureOn = measureReader(facts);
  const nameOf = new Map(facts.items.map(({ id, name }) => [id, name]));
  return (line, offer, day) => {
    const about = nameOf.get(offer.item) ?? offer.code;
    const measure = measureOn(offer.item, day);
    const content = measure && inBase(measure, offer.packCount * offer.packSize, offer.packUnit, units);
    const inPacks = typeof content === 'number' ? content : null;
    if (line.quantity === null || line.unit === null) {
      const { packs } = line;
      return {
        came: packs,
        charged: packs,
        content: inPacks,
        issue: packs === null ? unsaid(line, offer, about) : null,
      };
    }
    const delivered = measure && inBase(measure, line.quantity, line.unit, units);
    if (typeof delivered !== 'number' || inPacks === null) {
      const fault = typeof delivered === 'number' ? content : delivered;
      const issue = measure && fault && typeof fault === 'object' ? noWay(fault, measure, line, offer, about) : null;
      return { came: null, charged: null, content: inPacks, issue };
    }
    const came = delivered / inPacks;
    const whole = Math.round(came);
    const isShort = line.packs !== null && whole < line.packs && whole >= 0 && isNear(came, whole);
    return { came: isShort ? whole : came, charged: isShort ? line.packs : came, content: inPacks, issue: null };
  };
}

function unsaid({ invoice, supplier }: PurchaseLine, { code }: Offer, about: string): Issue {
  return { code: 'goods-without-quantity', about, facts: { supplier, code, invoice } };
}

function noWay(
  fault: { readonly unknownUnit: string } | { readonly from: 'g' | 'ml' | 'each' },
  measure: Measure,
  { unit, supplier }: PurchaseLine,
  { code }: Offer,
  about: string,
): Issue {
  if ('unknownUnit' in fault) {
    return { code: 'unknown-unit', about, facts: { unit: fault.unknownUnit, where: `${supplier} ${code}` } };
  }
  const missing = missingBetween(measure, fault.from).join(' and ');
  return { code: 'pack-unit-mismatch', about, facts: { unit, missing, supplier, code } };
}
