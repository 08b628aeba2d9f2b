import { basename, extname } from 'node:path';
import { loadingWords } from '../format/words/loading';
import type { ArchiveFault } from '../intake/archive/damaged-archive';
import { workbookSheets } from '../intake/archive/workbook-sheets';
import { zipFiles } from '../intake/archive/zip-files';
import { fileKind } from '../intake/file-kinds';
import type { FolderFile, FolderFiles } from './folder-files';

const MEGABYTE = 1 << 20;
const MOST_ZIPPED = 2048 * MEGABYTE;
/** A workbook is held in memory whole. */
const MOST_IN_WORKBOOK = 256 * MEGABYTE;

type Found = Pick<FolderFiles, 'files' | 'notRead'>;

/** The CSV files of a ZIP archive, in whatever folder of it they lie. */
export async function filesInZip(path: string): Promise<Found | { readonly wrong: string }> {
  const archive = basename(path);
  const zipped = await zipFiles(path, MOST_ZIPPED);
  if ('fault' in zipped) return { wrong: faultWords(archive, zipped) };
  const files: FolderFile[] = [];
  const notRead: { file: string; why: string }[] = [];
  for (const { name, open } of zipped) {
    const file = basename(name);
    if (file.startsWith('.') || name.startsWith('__MACOSX/') || extname(file).toLowerCase() !== '.csv') continue;
    const kind = fileKind(file);
    if (kind === null) notRead.push({ file: name, why: loadingWords.unknownName(name) });
    else files.push({ file: name, kind, open });
  }
  return files.length + notRead.length === 0 ? { wrong: loadingWords.emptyArchive(archive) } : { files, notRead };
}

/** The sheets of a workbook, each a file by its name. */
export async function filesInWorkbook(path: string): Promise<Found | { readonly wrong: string }> {
  const workbook = basename(path);
  const sheets = await workbookSheets(path, MOST_IN_WORKBOOK);
  if ('fault' in sheets) return { wrong: faultWords(workbook, sheets) };
  const files: FolderFile[] = [];
  const notRead: { file: string; why: string }[] = [];
  for (const { name, csv } of sheets) {
    const kind = fileKind(name.trim().replace(/[\s-]+/g, '_'));
    const file = `${workbook}: ${name}`;
    if (kind === null) notRead.push({ file, why: loadingWords.unknownSheet(workbook, name) });
    else files.push({ file, kind, open: () => inOnePiece(csv) });
  }
  return { files, notRead };
}

async function* inOnePiece(text: string): AsyncGenerator<Uint8Array> {
  yield Buffer.from(text);
}

function faultWords(file: string, fault: ArchiveFault): string {
  if (fault.fault === 'damaged') return loadingWords.damaged(file, fault.reason);
  return loadingWords.tooLarge(file, Math.floor(fault.bytes / MEGABYTE), fault.limit / MEGABYTE);
}
