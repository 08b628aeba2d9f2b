import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

const root = mkdtempSync(join(tmpdir(), 'plateworth-folders-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
let made = 0;

/** Files by name; an array is lines. */
export type Files = Readonly<Record<string, string | Uint8Array | readonly string[]>>;

/** A folder of files, taken away when the test file is through. The name is that of the folder. */
export function folder(files: Files, name = 'house'): string {
  const path = join(root, String(made++), name);
  mkdirSync(path, { recursive: true });
  for (const [file, content] of Object.entries(files)) {
    writeFileSync(
      join(path, file),
      Array.isArray(content) ? content.map((line) => `${line}\n`).join('') : (content as string | Uint8Array),
    );
  }
  return path;
}

/** One file in a folder of its own. */
export function file(name: string, content: Files[string], folderName = 'house'): string {
  return join(folder({ [name]: content }, folderName), name);
}
