import { createWriteStream } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { type Day, parseDay } from '../core/days';
import { nameKey } from '../core/name-key';
import { openDatabase } from '../db/database';
import { venuesSeenBy } from '../db/venues';
import { loadingWords } from '../format/words/loading';
import { FILE_KINDS } from '../intake/file-kinds';
import type { Asker } from '../session/asker';
import { loadFolder } from './load-folder';
import type { LoadReport } from './load-report-shape';

/** A file that comes over HTTP, and what is to be done with it, as it was asked for. */
export interface Upload {
  readonly body: AsyncIterable<Uint8Array>;
  /** Media type, as it was stated. */
  readonly type: string;
  /** Name or number of a venue that is there. */
  readonly venue: string;
  /** Which file of the data folder a CSV is; an archive or a workbook says it itself. */
  readonly file: string | null;
  readonly source: string | null;
  /** A..B, both included. */
  readonly days: string | null;
  /** Says what would become of it, and keeps nothing. */
  readonly dryRun: boolean;
}

/** The report, or why nothing was tried: there is no such venue (with those there are), it is too large, or it was asked for wrongly. */
export type Uploaded =
  | { readonly report: LoadReport }
  | { readonly noVenue: readonly string[] }
  | { readonly tooLarge: string }
  | { readonly field: string; readonly value: string | null; readonly wrong: string };

/** Below what next.config.js lets pass, so that nothing is cut off unseen. */
const MOST_BYTES = 128 * (1 << 20);

class TooLarge extends Error {
  override readonly name = 'TooLarge';
}

/** Loads a file that comes over HTTP as the command would load it. It is set down on the disk first, since it is read more than once. */
export async function loadUpload(asker: Asker, upload: Upload): Promise<Uploaded> {
  const db = await openDatabase();
  const seen = await venuesSeenBy(db, asker.person);
  const venue =
    seen.find(({ name }) => nameKey(name) === nameKey(upload.venue)) ??
    seen.find(({ id }) => String(id) === upload.venue);
  if (!venue) return { noVenue: seen.map(({ name }) => name) };
  const name = fileName(upload);
  if (name === null) return { field: 'file', value: upload.file, wrong: loadingWords.whichFile(FILE_KINDS) };
  const days = daysIn(upload.days);
  if (days === 'none') return { field: 'days', value: upload.days, wrong: loadingWords.noSuchDays(upload.days ?? '') };
  const place = await mkdtemp(join(tmpdir(), 'plateworth-upload-'));
  try {
    const path = join(place, name);
    await pipeline(Readable.from(bounded(upload.body)), createWriteStream(path));
    const { source, dryRun } = upload;
    const options = { venue: venue.name, source: source ?? undefined, days, person: asker.person, dryRun };
    const report = await loadFolder(db, path, options);
    return report.wrongUse === null ? { report } : { field: 'body', value: null, wrong: report.wrongUse };
  } catch (error) {
    if (error instanceof TooLarge) return { tooLarge: loadingWords.uploadTooLarge(MOST_BYTES / (1 << 20)) };
    throw error;
  } finally {
    await rm(place, { recursive: true, force: true });
  }
}

/** What it would be called in a data folder; null where a CSV does not say which file it is. */
function fileName({ type, file }: Upload): string | null {
  const kind = FILE_KINDS.find(
    (known) =>
      known ===
      file
        ?.trim()
        .toLowerCase()
        .replace(/\.csv$/, ''),
  );
  if (/spreadsheetml/i.test(type)) return `${kind ?? 'upload'}.xlsx`;
  if (/\bzip\b/i.test(type)) return `${kind ?? 'upload'}.zip`;
  return kind === undefined ? null : `${kind}.csv`;
}

function daysIn(text: string | null): { readonly from: Day; readonly to: Day } | undefined | 'none' {
  if (text === null) return undefined;
  const [from = '', to = from, ...more] = text.split('..');
  const [first, last] = [parseDay(from), parseDay(to)];
  return first === null || last === null || first > last || more.length > 0 ? 'none' : { from: first, to: last };
}

async function* bounded(body: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let bytes = 0;
  for await (const chunk of body) {
    bytes += chunk.length;
    if (bytes > MOST_BYTES) throw new TooLarge('an upload is larger than any file of a restaurant');
    yield chunk;
  }
}
