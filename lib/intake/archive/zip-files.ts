import { type Entry, openPromise, type ZipFile } from 'yauzl';
import { type ArchiveFault, DamagedArchive } from './damaged-archive';

/** A file inside a ZIP archive. */
export interface ZippedFile {
  /** Its name with the folders that it lies in. */
  readonly name: string;
  /** Its bytes from the beginning; may be asked for again. Throws DamagedArchive. */
  readonly open: () => AsyncIterable<Uint8Array>;
}

const MOST_ENTRIES = 10_000;

/**
 * The files of a ZIP archive by name, or why it is not read. `mostBytes` bounds what they unpack to, all together: no entry gives more bytes
 * than the archive says that it holds, so that a small archive cannot fill the memory or the disk.
 */
export async function zipFiles(path: string, mostBytes: number): Promise<readonly ZippedFile[] | ArchiveFault> {
  const files: { readonly name: string; readonly at: number }[] = [];
  let bytes = 0;
  let at = -1;
  try {
    for await (const entry of entriesOf(path)) {
      at++;
      bytes += entry.uncompressedSize;
      if (bytes > mostBytes) return { fault: 'too-large', bytes, limit: mostBytes };
      if (at >= MOST_ENTRIES) return { fault: 'damaged', reason: `more than ${MOST_ENTRIES} entries` };
      if (!entry.fileName.endsWith('/')) files.push({ name: entry.fileName, at });
    }
  } catch (error) {
    return { fault: 'damaged', reason: reasonOf(error) };
  }
  return files.map((file) => ({ name: file.name, open: () => bytesAt(path, file.at) }));
}

async function* entriesOf(path: string): AsyncGenerator<Entry> {
  const archive = await opened(path);
  try {
    yield* archive.eachEntry();
  } finally {
    archive.close();
  }
}

async function* bytesAt(path: string, wanted: number): AsyncGenerator<Uint8Array> {
  try {
    const archive = await opened(path);
    try {
      let at = 0;
      for await (const entry of archive.eachEntry()) {
        if (at++ < wanted) continue;
        yield* await archive.openReadStreamPromise(entry);
        return;
      }
      throw new DamagedArchive('the archive was changed while it was read');
    } finally {
      archive.close();
    }
  } catch (error) {
    throw error instanceof DamagedArchive ? error : new DamagedArchive(reasonOf(error));
  }
}

function opened(path: string): Promise<ZipFile> {
  return openPromise(path, { lazyEntries: true, autoClose: false, validateEntrySizes: true });
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
