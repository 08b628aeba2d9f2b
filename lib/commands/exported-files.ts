import { grouped } from '../core/grouped';
import { exportedRows, exportedWaiting } from '../db/export-rows';
import type { VenueTx } from '../db/in-venue';
import { type DataFile, dataCsv, dataPackage } from '../format/data-folder';
import { FILE_KINDS } from '../intake/file-kinds';
import { FOLDER_FIELDS } from '../intake/folder-fields';
import { waitingCells } from '../intake/waiting-cells';

/** A venue as the files of a data folder. */
export interface ExportedFiles {
  /** By file name: those that hold a row, and datapackage.json. */
  readonly files: ReadonlyMap<string, string>;
  readonly rows: readonly { readonly file: string; readonly rows: number }[];
  /** Refused rows among them. */
  readonly waiting: number;
}

/** Writes a venue as the files of a data folder, each in an order of its own; what waits stands at the end. */
export async function exportedFiles(tx: VenueTx, venueName: string): Promise<ExportedFiles> {
  const waiting = await exportedWaiting(tx);
  const waitingOf = grouped(waiting, ({ kind }) => kind);
  const written: DataFile[] = [];
  for (const kind of FILE_KINDS) {
    const fields = FOLDER_FIELDS[kind];
    const stored = (await exportedRows(tx, kind)).map((row) => fields.map(({ name }) => row[name] ?? ''));
    const refused = (waitingOf.get(kind) ?? []).map((row) => waitingCells(kind, row));
    const rows = [...stored, ...refused];
    if (rows.length > 0) written.push({ name: kind, fields, rows });
  }
  const files = new Map(written.map((file) => [`${file.name}.csv`, dataCsv(file)]));
  files.set('datapackage.json', dataPackage(venueName, written));
  return {
    files,
    rows: written.map(({ name, rows }) => ({ file: `${name}.csv`, rows: rows.length })),
    waiting: waiting.length,
  };
}
