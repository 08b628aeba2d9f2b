import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { from as copyFrom } from 'pg-copy-streams';
import { type Day, dayText } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import type { RowFault } from '../model/refusal';
import type { VenueTx } from './in-venue';

/** A row of sales.csv as it was read. Null: not known. Tax is a fraction; revenue is net, or gross with its tax, or neither. */
export interface StatedSale {
  readonly sold: DecimalText;
  readonly comps: DecimalText | null;
  readonly net: DecimalText | null;
  readonly gross: DecimalText | null;
  readonly tax: DecimalText | null;
  readonly discount: DecimalText | null;
}

/** A row on its way into the database: what it says, or why it cannot be taken. Names and days that can be read stand in either. */
export type IncomingSale = {
  readonly line: number;
  readonly raw: Readonly<Record<string, string>>;
  readonly day: Day | null;
  /** nameKey of the item; '' where there is none. */
  readonly itemKey: string;
  readonly channel: string;
} & ({ readonly sale: StatedSale; readonly fault: null } | { readonly sale: null; readonly fault: RowFault });

const COLUMNS =
  'line, day, item_key, channel, sold, comps, net, gross, tax, discount, raw, rule, about_column, about_value, facts';

/** Makes the temporary table of a file's rows, empty. */
export async function clearIncoming(tx: VenueTx): Promise<void> {
  await tx.bulk.query('drop table if exists incoming_sale');
  await tx.bulk.query(`create temporary table incoming_sale (
    line int not null, day date, item_key text not null, channel text not null,
    sold numeric, comps numeric, net numeric, gross numeric, tax numeric, discount numeric,
    raw text not null, rule text, about_column text, about_value text, facts text
  ) on commit drop`);
}

/** Copies rows into it as they come, with bounded memory. `midway` is called once, when the first rows are on their way. */
export async function copyIncoming(
  tx: VenueTx,
  rows: AsyncIterable<IncomingSale>,
  midway: () => Promise<void>,
): Promise<void> {
  const copy = tx.bulk.query(copyFrom(`copy incoming_sale (${COLUMNS}) from stdin`));
  await pipeline(Readable.from(copyTexts(rows, midway), { objectMode: false }), copy);
}

const CHUNK = 1 << 16;

async function* copyTexts(rows: AsyncIterable<IncomingSale>, midway: () => Promise<void>): AsyncGenerator<Buffer> {
  let text = '';
  let halfway = false;
  for await (const row of rows) {
    text += copyLine(row);
    if (text.length < CHUNK) continue;
    yield Buffer.from(text);
    text = '';
    if (!halfway) await midway();
    halfway = true;
  }
  if (text !== '') yield Buffer.from(text);
  if (!halfway) await midway();
}

function copyLine({ line, day, itemKey, channel, sale, raw, fault }: IncomingSale): string {
  const numbers = sale
    ? `${sale.sold}\t${sale.comps ?? '\\N'}\t${sale.net ?? '\\N'}\t${sale.gross ?? '\\N'}\t${sale.tax ?? '\\N'}\t${sale.discount ?? '\\N'}`
    : NO_NUMBERS;
  const why = fault
    ? `${fault.rule}\t${escaped(fault.column)}\t${escaped(fault.value)}\t${escaped(JSON.stringify(fault.facts))}`
    : NO_FAULT;
  const date = day === null ? '\\N' : isoDay(day);
  return `${line}\t${date}\t${escaped(itemKey)}\t${escaped(channel)}\t${numbers}\t${escaped(JSON.stringify(raw))}\t${why}\n`;
}

const written = new Map<Day, string>();

/** A long file has few days. */
function isoDay(day: Day): string {
  const known = written.get(day);
  if (known !== undefined) return known;
  if (written.size > 10_000) written.clear();
  const text = dayText(day);
  written.set(day, text);
  return text;
}

const NO_NUMBERS = '\\N\t\\N\t\\N\t\\N\t\\N\t\\N';
const NO_FAULT = '\\N\t\\N\t\\N\t\\N';
const SPECIAL: Readonly<Record<string, string>> = { '\\': '\\\\', '\t': '\\t', '\n': '\\n', '\r': '\\r' };

/** A text in COPY's own writing. */
function escaped(text: string | null): string {
  return text === null ? '\\N' : text.replace(/[\\\t\n\r]/g, (letter) => SPECIAL[letter] ?? letter);
}
