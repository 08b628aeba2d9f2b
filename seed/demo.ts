import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { DEMO_FILES } from './demo/files/all-files';
import { csvText } from './demo/files/csv-table';

/** Writes the invented restaurant Marram House as the folder of files that a restaurant would bring: the same bytes every time. */
const folder = fileURLToPath(new URL('./demo-house/', import.meta.url));
mkdirSync(folder, { recursive: true });
for (const table of DEMO_FILES) {
  writeFileSync(`${folder}${table.file}`, csvText(table));
  console.log(`${table.file}: ${table.rows.length} rows`);
}
