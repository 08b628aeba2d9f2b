import { mkdir, mkdtemp, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { FOLDER_NAME } from '../format/data-folder';
import { exportWords } from '../format/words/export';

const PACKAGE = 'datapackage.json';

/**
 * Why a folder cannot be written into, or null. It has to be missing, empty, or an export of ours: nothing that somebody else put there is
 * overwritten.
 */
export async function folderFault(path: string): Promise<string | null> {
  const there = await stat(path).catch(() => null);
  if (!there) return null;
  if (!there.isDirectory()) return exportWords.notAFolder(path);
  const names = await readdir(path);
  return names.length === 0 || (await namedInPackage(path)) !== null ? null : exportWords.notOurs(path);
}

/** The files of an earlier export, by its datapackage.json; null where the folder is none. */
async function namedInPackage(path: string): Promise<readonly string[] | null> {
  const text = await readFile(join(path, PACKAGE), 'utf8').catch(() => null);
  if (text === null) return null;
  try {
    const read: unknown = JSON.parse(text);
    if (!isObject(read) || read.name !== FOLDER_NAME || !Array.isArray(read.resources)) return null;
    return read.resources.flatMap((resource: unknown) =>
      isObject(resource) && /^[a-z_]+\.csv$/.test(String(resource.path)) ? [String(resource.path)] : [],
    );
  } catch {
    return null;
  }
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

/**
 * Writes files into a folder: all of them beside it first, then each takes its place, datapackage.json last, so that a folder that was cut
 * short is still an export of ours. Files of an earlier export that are not written again are taken out.
 */
export async function writeFolder(path: string, files: ReadonlyMap<string, string>): Promise<void> {
  const target = resolve(path);
  const before = (await namedInPackage(target)) ?? [];
  await mkdir(dirname(target), { recursive: true });
  const beside = await mkdtemp(`${target}.writing-`);
  try {
    for (const [name, text] of files) await writeFile(join(beside, name), text);
    await mkdir(target, { recursive: true });
    for (const name of files.keys()) if (name !== PACKAGE) await rename(join(beside, name), join(target, name));
    await rename(join(beside, PACKAGE), join(target, PACKAGE));
    for (const name of before) if (!files.has(name)) await rm(join(target, name), { force: true });
  } finally {
    await rm(beside, { recursive: true, force: true });
  }
}
