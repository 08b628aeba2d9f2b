import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const FOLDER = process.env.OPEN_DATA ?? fileURLToPath(new URL('../../shared/data/', import.meta.url));

/** Path of a file of the open data that is not shipped with the project, or null where it does not stand on this machine. */
export function openData(file: string): string | null {
  const path = `${FOLDER.replace(/\/$/, '')}/${file}`;
  return existsSync(path) ? path : null;
}
