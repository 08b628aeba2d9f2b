import { fileRefusalText, rowRefusalText } from '../format/words/refusals';
import type { FolderFile } from './folder-files';
import type { FileReport } from './load-report-shape';
import type { LoadedFile } from './one-load';

/** What became of a file, in words. */
export function fileReport({ file, kind }: FolderFile, source: string, loaded: LoadedFile): FileReport {
  if (loaded.refusedWhole) {
    const { line, column, value } = loaded.refusedWhole;
    const refused = [{ line, column, value, why: fileRefusalText(loaded.refusedWhole) }];
    const none = { taken: 0, changed: 0, unchanged: 0, withdrawn: 0, unlocked: 0, unlockedWithdrawn: 0, ignored: [] };
    return { file, kind, source, read: 1, ...none, refused, refusedRows: 1, refusedWhole: true };
  }
  const { read, taken, changed, unchanged, withdrawn, refusals, unlocked, unlockedWithdrawn, ignored } = loaded;
  return {
    file,
    kind,
    source,
    read,
    taken,
    changed,
    unchanged,
    withdrawn,
    refused: refusals.map((refusal) => ({
      line: refusal.line,
      column: refusal.column,
      value: refusal.value,
      why: rowRefusalText(refusal),
    })),
    refusedRows: loaded.refused,
    refusedWhole: false,
    unlocked,
    unlockedWithdrawn,
    ignored: [...ignored],
  };
}
