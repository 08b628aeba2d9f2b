import { z } from 'zod';
import { type Day, dayText } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import { businessDay } from '../business-day';
import { CellFault, issueOf, needed, optional, type ReadCell, text } from '../cells';
import { rememberedDay } from '../dates';
import { type NumberStyle, notNegative, perCent, signed } from '../numbers';
import { channel, USUAL_CHANNEL } from './channel';
import type { Cells, RowKind, RowReading } from './row-kind';

/** One row of a till's export. Revenue net, or gross with its tax rate (a fraction), or neither: the day's menu price stands in. */
export interface SaleRow {
  readonly item: string;
  readonly day: Day;
  readonly channel: string;
  /** Paid portions. */
  readonly sold: DecimalText;
  readonly comps: DecimalText | null;
  readonly net: DecimalText | null;
  readonly gross: DecimalText | null;
  readonly tax: DecimalText | null;
  readonly discount: DecimalText | null;
}

/** Portions sold; fewer than none is a void, which a till's own import will bring. */
function portions(style: NumberStyle): ReadCell<DecimalText> {
  const number = notNegative(style);
  return (cell) => {
    const read = number(cell);
    return read instanceof CellFault && read.rule === 'negative' ? new CellFault('void') : read;
  };
}

/** date where it is filled in, else the business day of sold_at. */
function dayReader({ clock }: RowReading): (cells: Cells) => readonly [Day | CellFault, string] {
  const date = rememberedDay();
  const stamp = businessDay(clock);
  return (cells) => {
    const written = cells.date?.trim() ?? '';
    if (written !== '') return [date(written), 'date'];
    const soldAt = cells.sold_at?.trim() ?? '';
    if (soldAt !== '') return [stamp(soldAt), 'sold_at'];
    return [new CellFault('blank'), cells.date === undefined ? 'sold_at' : 'date'];
  };
}

const dayReaders = new WeakMap<RowReading, ReturnType<typeof dayReader>>();

function dayOf(cells: Cells, reading: RowReading): Day | null {
  const reader = dayReaders.get(reading) ?? dayReader(reading);
  dayReaders.set(reading, reader);
  const [day] = reader(cells);
  return day instanceof CellFault ? null : day;
}

const cell = z.string().optional();

export const saleRows: RowKind<SaleRow> = {
  columns: {
    needed: ['item', 'sold', ['date', 'sold_at']],
    optional: ['channel', 'comps', 'net_revenue', 'gross_revenue', 'tax_pct', 'discount', 'date', 'sold_at'],
    later: ['ticket'],
    together: { gross_revenue: { needs: 'tax_pct', unless: 'net_revenue' } },
  },
  schema(reading) {
    const { style } = reading;
    const readDay = dayReader(reading);
    return z
      .object({
        date: cell,
        sold_at: cell,
        item: needed(text()),
        channel: optional(channel),
        sold: needed(portions(style)),
        comps: optional(notNegative(style)),
        net_revenue: optional(signed(style)),
        gross_revenue: optional(signed(style)),
        tax_pct: optional(perCent({ from: 0, to: 100, open: 'to' }, style)),
        discount: optional(notNegative(style)),
      })
      .transform((row, context) => {
        const [day, column] = readDay(row as Cells);
        if (day instanceof CellFault) {
          context.addIssue(issueOf(day, column));
          return z.NEVER;
        }
        const net = row.net_revenue ?? null;
        const gross = net === null ? (row.gross_revenue ?? null) : null;
        const tax = row.tax_pct ?? null;
        if (gross !== null && tax === null) context.addIssue(issueOf(new CellFault('tax-missing'), 'tax_pct'));
        return {
          item: row.item,
          day,
          channel: row.channel ?? USUAL_CHANNEL,
          sold: row.sold,
          comps: row.comps ?? null,
          net,
          gross,
          tax,
          discount: row.discount ?? null,
        };
      });
  },
  key(cells, reading) {
    const day = dayOf(cells, reading);
    return day === null ? null : dayText(day);
  },
  day: dayOf,
};
