import type { ItemKind } from '../model/facts';
import { type ExportedRow, exportedRowsOf } from './export-rows';
import type { VenueTx } from './in-venue';
import { itemRevision } from './item-record';
import type { KnownItem } from './save-items';

/** One version as it was written: cells by column, as the files have them. An ingredient's has no lines. */
export interface WrittenVersion {
  /** ISO text; null: from the beginning. */
  readonly validFrom: string | null;
  readonly cells: ExportedRow;
  readonly lines: readonly ExportedRow[];
}

/** All that is stated of one item, as it was written, with the revision that an edit of it has to carry. */
export interface WrittenItem {
  readonly id: number;
  readonly item: string;
  readonly kind: ItemKind;
  readonly revision: number;
  /** Oldest first. */
  readonly versions: readonly WrittenVersion[];
  readonly measures: readonly ExportedRow[];
  readonly parts: readonly ExportedRow[];
  readonly yields: readonly ExportedRow[];
}

/** Blank cells are null; the columns that name the item and the day stand beside the cells, not among them. */
function cellsOf(row: ExportedRow): ExportedRow {
  const { recipe: _, ingredient: __, valid_from: ___, ...cells } = row;
  return cells;
}

export async function writtenItem(tx: VenueTx, { id, name, kind }: KnownItem): Promise<WrittenItem> {
  const isBought = kind === 'ingredient';
  const versions = await exportedRowsOf(tx, isBought ? 'ingredients' : 'recipes', name);
  const lines = isBought ? [] : await exportedRowsOf(tx, 'recipe_lines', name);
  const own = async (of: 'measures' | 'parts' | 'yields') =>
    isBought ? (await exportedRowsOf(tx, of, name)).map(cellsOf) : [];
  return {
    ...{ id, item: name, kind, revision: await itemRevision(tx, id) },
    versions: versions.map((row) => ({
      validFrom: row.valid_from ?? null,
      cells: cellsOf(row),
      lines: lines.filter((line) => (line.valid_from ?? null) === (row.valid_from ?? null)).map(cellsOf),
    })),
    measures: await own('measures'),
    parts: await own('parts'),
    yields: await own('yields'),
  };
}
