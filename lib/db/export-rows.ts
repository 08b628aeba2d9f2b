import * as catalogue from './export-catalogue';
import * as trade from './export-trade';
import type { VenueTx } from './in-venue';

/** A row of a file, its cells by column as the files write them; null: blank. */
export type ExportedRow = Readonly<Record<string, string | null>>;

/** A row that was refused and waits, as it came. */
export interface ExportedWaiting {
  readonly kind: string;
  readonly raw: Readonly<Record<string, string>>;
  readonly rule: string;
  /** The business day that was read from it, as ISO text. */
  readonly day: string | null;
}

/** Each file of the data folder by its kind, in the order in which it is read. */
const QUERIES: Readonly<Record<string, string>> = {
  venue: catalogue.VENUE,
  labour: catalogue.LABOUR,
  exchange_rates: catalogue.EXCHANGE_RATES,
  ingredients: catalogue.INGREDIENTS,
  measures: catalogue.MEASURES,
  parts: catalogue.PARTS,
  yields: catalogue.YIELDS,
  suppliers: catalogue.SUPPLIERS,
  offers: catalogue.OFFERS,
  offer_prices: catalogue.OFFER_PRICES,
  recipes: catalogue.RECIPES,
  menu: catalogue.MENU,
  recipe_lines: catalogue.RECIPE_LINES,
  sales: trade.SALES,
  covers: trade.COVERS,
  purchases: trade.PURCHASES,
  counts: trade.COUNTS,
  moves: trade.MOVES,
  trials: trade.TRIALS,
  trial_lines: trade.TRIAL_LINES,
};

/** Everything of a venue that one kind of file can hold, in an order of its own. */
export async function exportedRows(tx: VenueTx, kind: string): Promise<readonly ExportedRow[]> {
  const query = QUERIES[kind];
  if (query === undefined) throw new Error(`nothing is known of a file ${kind}.csv`);
  const { rows } = await tx.bulk.query<ExportedRow>(query, [tx.venue]);
  return rows;
}

/** The rows of one kind of file that name something in a column: what the file says of one item. */
export async function exportedRowsOf(
  tx: VenueTx,
  kind: 'ingredients' | 'measures' | 'parts' | 'yields' | 'recipes' | 'recipe_lines',
  name: string,
): Promise<readonly ExportedRow[]> {
  const column = kind === 'recipes' || kind === 'recipe_lines' ? 'recipe' : 'ingredient';
  const { rows } = await tx.bulk.query<ExportedRow>(
    `select * from (${QUERIES[kind]}) of_venue where of_venue.${column} = $2`,
    [tx.venue, name],
  );
  return rows;
}

// Rows that would be taken by a venue whose books are open, or that is not asked for certain days alone.
const OF_THE_MOMENT = ['closed', 'outside-days'];

/** The rows that wait to be mended, or for something that another file may bring, in an order of their own. */
export async function exportedWaiting(tx: VenueTx): Promise<readonly ExportedWaiting[]> {
  const { rows } = await tx.bulk.query<ExportedWaiting>(
    `select kind, raw, rule, to_char(day, 'YYYY-MM-DD') as day from waiting_row
     where venue_id = $1 and status = 'waiting' and rule <> all($2)
     order by kind collate "C", row_key collate "C" nulls last, line, raw::text collate "C"`,
    [tx.venue, OF_THE_MOMENT],
  );
  return rows;
}
