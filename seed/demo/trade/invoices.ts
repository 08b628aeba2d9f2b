import { addDays, type Day, dayText, weekday } from '../../../lib/core/days';
import { seededRandom } from '../../../lib/core/random';
import { between } from '../dice';
import { SEED } from '../house';
import { rounded } from '../rounding';
import type { Offer, Supplier } from '../shapes';
import { type DeliveredLine, type Delivery, STORE_RUN } from './deliveries';
import { packPriceOn, rateOn } from './price-in-force';

/** A line of an invoice or a credit note, net of tax, in the house's currency; what the house gets back is negative. */
export interface PurchaseLine {
  readonly day: Day;
  readonly supplier: string;
  /** Undefined: the goods came, the invoice has not. */
  readonly invoice: string | undefined;
  readonly kind: 'goods' | 'credit' | 'freight' | 'deposit' | 'rebate' | 'non_food';
  readonly code?: string;
  readonly packs?: number;
  /** What came, where the packs do not say it: by weight, or fewer than were invoiced. */
  readonly quantity?: number;
  readonly unit?: string;
  readonly amount: number | undefined;
  readonly deliveredOn?: Day;
}

const CRATE_DEPOSIT = 3.5;
const TUBS_IN_A_CRATE = 6;
const CRATED = new Set(['DC-2', 'MK-2']);
const DAYS_UNTIL_CREDIT = 5;
const NON_FOOD_FROM = 'Tern Street Stores';

function priceOf(offer: Offer, { supplier, day }: Delivery): number {
  return (packPriceOn(offer, dayText(day)) ?? 0) * rateOn(supplier, dayText(day));
}

function goodsLine(line: DeliveredLine, delivery: Delivery, invoice: string): PurchaseLine {
  const { offer, packs, mishap } = line;
  const over = mishap?.what.kind === 'overcharged' ? mishap.what.perPack : 0;
  const [count, size, unit] = offer.pack;
  const came = mishap?.what.kind === 'short' ? packs - mishap.what.packs : packs;
  const isWeighed = offer.catchWeight === true || came !== packs;
  return {
    day: delivery.day,
    supplier: delivery.supplier.name,
    invoice,
    kind: 'goods',
    code: offer.code,
    ...(offer.catchWeight ? {} : { packs }),
    ...(isWeighed ? { quantity: rounded(came * count * size, 3), unit } : {}),
    amount: rounded(packs * (priceOf(offer, delivery) + over), 2),
    deliveredOn: delivery.day,
  };
}

/** What the supplier owes for a line that went wrong; null where it went right, or nobody has asked yet. */
function creditFor(line: DeliveredLine, delivery: Delivery, invoice: string): PurchaseLine | null {
  const { offer, packs, mishap } = line;
  if (!mishap || (mishap.what.kind === 'overcharged' && !mishap.what.credited)) return null;
  const { what } = mishap;
  const value = what.kind === 'overcharged' ? packs * what.perPack : what.packs * priceOf(offer, delivery);
  const due = addDays(delivery.day, DAYS_UNTIL_CREDIT);
  return {
    day: weekday(due) === 7 ? addDays(due, 1) : due,
    supplier: delivery.supplier.name,
    invoice: `${invoice}C`,
    kind: 'credit',
    code: offer.code,
    ...(what.kind === 'returned' ? { packs: -what.packs } : {}),
    amount: -rounded(value, 2),
  };
}

function cratesIn({ lines }: Delivery): number {
  const tubs = lines.filter(({ offer }) => CRATED.has(offer.code)).reduce((sum, { packs }) => sum + packs, 0);
  return Math.ceil(tubs / TUBS_IN_A_CRATE);
}

/** The invoices of one supplier: goods, then freight, crates and what is no food. */
export function invoicesOf(supplier: Supplier, at: number): readonly PurchaseLine[] {
  const random = seededRandom(SEED + 10 + at);
  const lines: PurchaseLine[] = [];
  let number = supplier.firstInvoice;
  let cratesBefore = 0;
  let monthBefore = '';
  for (const delivery of STORE_RUN.deliveries.filter((each) => each.supplier === supplier)) {
    const { day } = delivery;
    const invoice = `${supplier.invoicePrefix}-${number}`;
    number += 1 + Math.floor(between(random, 0, 9));
    const beside = { day, supplier: supplier.name, invoice, deliveredOn: day };
    for (const line of delivery.lines) {
      lines.push(goodsLine(line, delivery, invoice));
      const credit = creditFor(line, delivery, invoice);
      if (credit) lines.push(credit);
    }
    const freight = supplier.deliveryCharge * rateOn(supplier, dayText(day));
    if (freight > 0) lines.push({ ...beside, kind: 'freight', amount: rounded(freight, 2) });
    const crates = cratesIn(delivery);
    if (crates !== cratesBefore) {
      lines.push({ ...beside, kind: 'deposit', amount: rounded((crates - cratesBefore) * CRATE_DEPOSIT, 2) });
    }
    cratesBefore = crates;
    const month = dayText(day).slice(0, 7);
    if (supplier.name === NON_FOOD_FROM && month !== monthBefore) {
      lines.push({ ...beside, kind: 'non_food', amount: rounded(between(random, 24, 61), 2) });
    }
    monthBefore = month;
  }
  return lines;
}
