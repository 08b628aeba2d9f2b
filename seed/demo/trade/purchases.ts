import { addDays, type Day, parseDay } from '../../../lib/core/days';
import { rounded } from '../rounding';
import { SUPPLIERS } from '../suppliers/all-suppliers';
import { LAST_DAY } from './calendar';
import { invoicesOf, type PurchaseLine } from './invoices';

const REBATE = { supplier: 'Quayside Cocoa & Nuts', share: 0.015, days: ['2026-01-15', '2026-07-15'] };
const NOT_INVOICED_YET = 'Saltmarsh Dairy';

function day(text: string): Day {
  const read = parseDay(text);
  if (read === null) throw new Error(`${text} is no day`);
  return read;
}

/** A share of the goods of the half year before, given back. */
function rebates(lines: readonly PurchaseLine[]): readonly PurchaseLine[] {
  return REBATE.days.map((text) => {
    const from = addDays(day(text), -197); // the half year that ended a fortnight ago
    const goods = lines.filter(
      (line) =>
        line.supplier === REBATE.supplier &&
        line.kind === 'goods' &&
        line.day >= from &&
        line.day < addDays(day(text), -14),
    );
    const spent = goods.reduce((sum, line) => sum + (line.amount ?? 0), 0);
    return {
      day: day(text),
      supplier: REBATE.supplier,
      invoice: `QC-R-${text.slice(0, 7)}`,
      kind: 'rebate',
      amount: -rounded(spent * REBATE.share, 2),
    };
  });
}

/** The dairy's last invoice of October is still on its way: its goods are known by the delivery note alone. */
function withoutLastInvoice(lines: readonly PurchaseLine[]): readonly PurchaseLine[] {
  const last = lines
    .filter((line) => line.supplier === NOT_INVOICED_YET)
    .reduce((latest, line) => Math.max(latest, line.day), 0);
  const isWaiting = (line: PurchaseLine): boolean => line.supplier === NOT_INVOICED_YET && line.day === last;
  return lines
    .filter((line) => !isWaiting(line) || line.kind === 'goods')
    .map((line) => (isWaiting(line) ? { ...line, invoice: undefined, amount: undefined } : line));
}

function drawPurchases(): readonly PurchaseLine[] {
  const invoices = SUPPLIERS.flatMap(invoicesOf);
  const lines = withoutLastInvoice([...invoices, ...rebates(invoices)]);
  return lines.filter((line) => line.day <= LAST_DAY).sort((a, b) => a.day - b.day);
}

export const PURCHASES: readonly PurchaseLine[] = drawPurchases();
