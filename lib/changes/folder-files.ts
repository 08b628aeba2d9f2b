import { createReadStream } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { basename, dirname, extname, join, resolve } from 'node:path';
import { byText } from '../core/grouped';
import { loadingWords } from '../format/words/loading';
import { FILE_KINDS, type FileKind, fileKind } from '../intake/file-kinds';
import { filesInWorkbook, filesInZip } from './archived-files';

/** A file that can be read, by name and kind. */
export interface FolderFile {
  readonly file: string;
  readonly kind: FileKind;
  readonly open: () => AsyncIterable<Uint8Array>;
}

/** What a path holds for a load: its files in the order in which they are loaded, those that are not read, and the name of its folder. */
export interface FolderFiles {
  readonly folder: string;
  readonly files: readonly FolderFile[];
  readonly notRead: readonly { readonly file: string; readonly why: string }[];
  /** Whether the path names one file of a data folder, not the folder. */
  readonly oneFile: boolean;
}

const BYTES_AT_ONCE = 1 << 18;
const ARCHIVES = ['.xlsx', '.zip', '.ods', '.xls', '.7z', '.rar', '.gz'];

/** The files of a folder, an archive or a workbook, or the one file that the path names; or a sentence saying why there is nothing to load. */
export async function folderFiles(path: string): Promise<FolderFiles | { readonly wrong: string }> {
  const full = resolve(path);
  const there = await stat(full).catch(() => null);
  if (!there) return { wrong: loadingWords.noSuchPath(path) };
  if (!there.isDirectory()) return there.isFile() ? oneFile(full, path) : { wrong: loadingWords.noFile(path) };
  const names = await readdir(full).catch(() => null);
  if (!names) return { wrong: loadingWords.closedFolder(path) };
  const sorted = names.filter((name) => !name.startsWith('.')).sort((a, b) => byNumber.compare(a, b) || byText(a, b));
  const files: FolderFile[] = [];
  const notRead: { file: string; why: string }[] = [];
  for (const name of sorted) {
    const file = readable(join(full, name));
    if (await isNoFile(join(full, name))) {
      if (file) notRead.push({ file: name, why: loadingWords.noFile(name) });
    } else if (file) files.push(file);
    else notRead.push(...(notReadable(name) ?? []));
  }
  if (files.length + notRead.length === 0) return { wrong: loadingWords.emptyFolder(path) };
  return { folder: basename(full), files: inOrder(files), notRead, oneFile: false };
}

/** A folder, or a pipe or device, which has no end. What cannot be looked at is refused when it is read. */
async function isNoFile(full: string): Promise<boolean> {
  const there = await stat(full).catch(() => null);
  return there !== null && !there.isFile();
}

function inOrder(files: readonly FolderFile[]): readonly FolderFile[] {
  return FILE_KINDS.flatMap((kind) => files.filter((file) => file.kind === kind));
}

// sales-2.csv before sales-10.csv
const byNumber = new Intl.Collator('en', { numeric: true });

async function oneFile(full: string, path: string): Promise<FolderFiles | { readonly wrong: string }> {
  const name = basename(full);
  const ending = extname(name).toLowerCase();
  if (ending === '.zip' || ending === '.xlsx') {
    const found = await (ending === '.zip' ? filesInZip(full) : filesInWorkbook(full));
    if ('wrong' in found) return found;
    const sorted = [...found.files].sort((a, b) => byNumber.compare(a.file, b.file) || byText(a.file, b.file));
    return { folder: basename(full, extname(full)), files: inOrder(sorted), notRead: found.notRead, oneFile: false };
  }
  if (ARCHIVES.includes(ending)) return { wrong: loadingWords.oldWorkbook(name) };
  if (ending !== '.csv') return { wrong: loadingWords.notCsv(path) };
  const file = readable(full);
  if (!file && fileKind(name) === null) return { wrong: loadingWords.unknownName(name) };
  return {
    folder: basename(dirname(full)),
    files: file ? [file] : [],
    notRead: notReadable(name) ?? [],
    oneFile: true,
  };
}

function readable(full: string): FolderFile | null {
  const file = basename(full);
  const kind = extname(file).toLowerCase() === '.csv' ? fileKind(file) : null;
  if (kind === null) return null;
  return { file, kind, open: () => createReadStream(full, { highWaterMark: BYTES_AT_ONCE }) };
}

function notReadable(file: string): FolderFiles['notRead'] | null {
  const ending = extname(file).toLowerCase();
  if (ARCHIVES.includes(ending)) return [{ file, why: archiveWords(file, ending) }];
  if (ending !== '.csv') return null;
  return fileKind(file) === null ? [{ file, why: loadingWords.unknownName(file) }] : null;
}

function archiveWords(file: string, ending: string): string {
  return ending === '.xlsx' || ending === '.zip' ? loadingWords.archive(file) : loadingWords.oldWorkbook(file);
}
