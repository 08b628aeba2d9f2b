import type { Day } from '../core/days';
import type { VenueTx } from '../db/in-venue';
import { isFault, type Outcome, type Saved, type Stated } from '../db/plan-keyed';
import { saveCounts } from '../db/save-counts';
import { saveCovers } from '../db/save-covers';
import { saveExchangeRates } from '../db/save-exchange-rates';
import { saveIngredients } from '../db/save-ingredients';
import { saveLabour } from '../db/save-labour';
import { saveMeasures } from '../db/save-measures';
import { saveMenu } from '../db/save-menu';
import { saveMoves } from '../db/save-moves';
import { saveOfferPrices } from '../db/save-offer-prices';
import { saveOffers } from '../db/save-offers';
import { saveParts } from '../db/save-parts';
import { savePurchases } from '../db/save-purchases';
import { saveRecipeLines } from '../db/save-recipe-lines';
import { saveRecipes } from '../db/save-recipes';
import { saveSuppliers } from '../db/save-suppliers';
import { saveTrialLines } from '../db/save-trial-lines';
import { saveTrials } from '../db/save-trials';
import { saveVenueSettings } from '../db/save-venue-settings';
import { CLOSED_KEY, type RefusedRow } from '../db/save-waiting';
import { saveYields } from '../db/save-yields';
import type { VenueClock } from '../intake/business-day';
import type { RecordsState } from '../intake/file/records';
import type { FileKind } from '../intake/file-kinds';
import { type FileRow, readRows, rowReader } from '../intake/read-rows';
import { ROW_KINDS } from '../intake/row-kinds';
import type { Cells, RowKind } from '../intake/rows/row-kind';

/** Every kind of file but sales: their rows fit into memory and are compared one by one with what is stored. */
export type KeyedKind = Exclude<FileKind, 'sales'>;

/** For whom rows are saved: the load and source that bring them, and the keys for which the file is the whole truth (null: rows that had waited). */
export interface SavingFor {
  readonly load: number;
  readonly source: string;
  readonly closedThrough: Day | null;
  readonly speaksFor: ReadonlySet<string> | null;
}

/** The same, with what could not be read: the keys that a faulty row speaks for, and whether there is a row without even a key. */
interface Saving extends SavingFor {
  readonly incomplete: ReadonlySet<string>;
  readonly withdrawsNothing: boolean;
}

/** A row on its way to be saved, with its place among the rows of its file that speak for the same thing. */
interface PlacedRow<Row> extends Stated<Row> {
  readonly position: number;
}

type Save<Row> = (
  tx: VenueTx,
  rows: readonly PlacedRow<Row>[],
  saving: Saving,
) => Promise<Saved & { readonly clockChanged?: boolean }>;

/** What saving came to: what is refused and must be kept, and an outcome for each row. */
export interface SavedRows {
  readonly outcomes: readonly Outcome[];
  readonly refused: readonly RefusedRow[];
  readonly withdrawn: number;
  readonly clockChanged: boolean;
}

/** A row of whatever kind, without what it says. */
export type AnyRow = Pick<FileRow<unknown>, 'line' | 'raw' | 'key' | 'day'>;

/** The rows of a file, read, with the way to save them. */
export interface ReadFile {
  readonly rows: readonly AnyRow[];
  readonly save: (tx: VenueTx, saving: SavingFor) => Promise<SavedRows>;
}

interface KeyedKindOf {
  readonly read: (bytes: AsyncIterable<Uint8Array>, state: RecordsState) => Promise<ReadFile>;
  /** Rows that had waited, to be saved again; each with the position that it was given when its file was read. */
  readonly again: (rows: readonly (AnyRow & { readonly position: number })[]) => ReadFile;
}

// No row of these kinds carries a time of day.
const NO_CLOCK: VenueClock = { timeZone: 'UTC', dayEnds: 0 };

function keyed<Row>(kind: RowKind<Row>, save: Save<Row>, keepsPosition = false): KeyedKindOf {
  const readFile = (rows: readonly (FileRow<Row> & { readonly position: number })[]): ReadFile => ({
    rows,
    async save(tx, saving) {
      const sound = rows.flatMap(({ line, row, position }) => (row === null ? [] : [{ line, row, position }]));
      const faulty = rows.flatMap(({ row, key }) => (row === null && key !== null ? [key] : []));
      const withdrawsNothing = rows.some(({ key }) => key === null);
      const saved = await save(tx, sound, { ...saving, incomplete: new Set(faulty), withdrawsNothing });
      let next = 0;
      const outcomes = rows.map((row): Outcome => row.fault ?? saved.outcomes[next++] ?? 'unchanged');
      const refused = rows.flatMap(({ line, raw, key, day, position }, place): RefusedRow[] => {
        const fault = outcomes[place] ?? 'unchanged';
        if (!isFault(fault)) return [];
        const facts = keepsPosition ? { ...fault.facts, position } : fault.facts;
        const closed = keepsPosition && fault.rule === 'closed' && key !== null;
        return [{ line, raw, key: closed ? `${CLOSED_KEY}${key}` : key, day, fault: { ...fault, facts } }];
      });
      return { outcomes, refused, withdrawn: saved.withdrawn, clockChanged: saved.clockChanged ?? false };
    },
  });
  return {
    async read(bytes, state) {
      const rows: (FileRow<Row> & { position: number })[] = [];
      const places = new Map<string, number>();
      for await (const row of readRows(bytes, kind, NO_CLOCK, state)) {
        const position = (places.get(row.key ?? '') ?? 0) + 1;
        places.set(row.key ?? '', position);
        rows.push({ ...row, position });
      }
      return readFile(rows);
    },
    again(rows) {
      // what waits for another file was read well before; a decimal comma in it was one
      const reader = rowReader(kind, { style: { decimalComma: true }, clock: NO_CLOCK });
      return readFile(rows.map((row) => ({ ...row, ...reader(row.raw as Cells) })));
    },
  };
}

/** How the rows of each kind are read and saved. */
export const KEYED_KINDS: Readonly<Record<KeyedKind, KeyedKindOf>> = {
  venue: keyed(ROW_KINDS.venue, (tx, rows, { closedThrough }) => saveVenueSettings(tx, rows, closedThrough)),
  labour: keyed(ROW_KINDS.labour, (tx, rows, { closedThrough }) => saveLabour(tx, rows, closedThrough)),
  exchange_rates: keyed(ROW_KINDS.exchange_rates, (tx, rows, { closedThrough }) =>
    saveExchangeRates(tx, rows, closedThrough),
  ),
  ingredients: keyed(ROW_KINDS.ingredients, (tx, rows, { closedThrough }) => saveIngredients(tx, rows, closedThrough)),
  measures: keyed(ROW_KINDS.measures, (tx, rows) => saveMeasures(tx, rows)),
  parts: keyed(ROW_KINDS.parts, (tx, rows) => saveParts(tx, rows)),
  yields: keyed(ROW_KINDS.yields, (tx, rows) => saveYields(tx, rows)),
  suppliers: keyed(ROW_KINDS.suppliers, (tx, rows) => saveSuppliers(tx, rows)),
  offers: keyed(ROW_KINDS.offers, (tx, rows, { closedThrough }) => saveOffers(tx, rows, closedThrough)),
  offer_prices: keyed(ROW_KINDS.offer_prices, (tx, rows, { closedThrough }) =>
    saveOfferPrices(tx, rows, closedThrough),
  ),
  recipes: keyed(ROW_KINDS.recipes, (tx, rows, { closedThrough }) => saveRecipes(tx, rows, closedThrough)),
  menu: keyed(ROW_KINDS.menu, (tx, rows, { closedThrough }) => saveMenu(tx, rows, closedThrough)),
  recipe_lines: keyed(
    ROW_KINDS.recipe_lines,
    (tx, rows, { closedThrough, speaksFor }) => saveRecipeLines(tx, rows, closedThrough, speaksFor),
    true,
  ),
  covers: keyed(ROW_KINDS.covers, (tx, rows, { closedThrough, load, source }) =>
    saveCovers(tx, rows, closedThrough, { load, source }),
  ),
  purchases: keyed(ROW_KINDS.purchases, savePurchases),
  counts: keyed(ROW_KINDS.counts, (tx, rows, { closedThrough, load, source }) =>
    saveCounts(tx, rows, closedThrough, { load, source }),
  ),
  moves: keyed(ROW_KINDS.moves, saveMoves),
  trials: keyed(ROW_KINDS.trials, (tx, rows, { closedThrough }) => saveTrials(tx, rows, closedThrough)),
  trial_lines: keyed(
    ROW_KINDS.trial_lines,
    (tx, rows, { closedThrough, speaksFor }) => saveTrialLines(tx, rows, closedThrough, speaksFor),
    true,
  ),
};
