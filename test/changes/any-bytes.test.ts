import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { loadReportShape } from '@/lib/changes/load-report-shape';
import { FILE_KINDS } from '@/lib/intake/file-kinds';
import { freshDatabase } from '../fresh-database';
import { file } from './folders';
import { revision, stored } from './stored';

const { db } = await freshDatabase();
const VENUE = 'Marram House';
await loadFolder(db, 'seed/small');

const soak = process.env.SOAK ? 1_500 : 40;
const FILES = FILE_KINDS.map((kind) => {
  const lines = readFileSync(`seed/demo-house/${kind}.csv`, 'utf8').split('\n');
  return { kind, lines: lines.slice(0, 9) };
});

/** Cells that are wrong somewhere, or nearly right. */
const CELLS = [
  '',
  '-1',
  '0',
  '1e9',
  '12,5',
  '31/12/2026',
  '2026-02-30',
  'none',
  'yes',
  'Tart',
  'Double cream',
  'Sweet pastry',
  '"',
  'x'.repeat(300),
  '\u20ac4',
  'g',
  '100.1',
  '\ufb01g',
  '\u{1f36b}',
  '99999999999999',
  '9007199254740993',
  '0.00000000000000000001',
  '__proto__',
  "';--",
  '\\N',
  '\\.',
  'a\tb',
  '{"a":1}',
  '\ud7ff',
];

type Edit = (lines: string[], at: number, cell: string) => void;
const EDITS: readonly Edit[] = [
  (lines, at) => lines.splice(at % lines.length, 1),
  (lines, at) => lines.splice(at % lines.length, 0, lines[at % lines.length] ?? ''),
  (lines, at, cell) => {
    const row = at % lines.length;
    const cells = (lines[row] ?? '').split(',');
    cells[at % cells.length] = cell;
    lines[row] = cells.join(',');
  },
  (lines, at) => {
    const row = at % lines.length;
    lines[row] = (lines[row] ?? '').slice(0, at % 40);
  },
  (lines, at) => {
    const row = at % lines.length;
    lines[row] = (lines[row] ?? '').replaceAll(',', ';');
  },
];

const mutated = fc
  .tuple(
    fc.constantFrom(...FILES),
    fc.array(fc.tuple(fc.constantFrom(...EDITS), fc.nat(400), fc.constantFrom(...CELLS)), { maxLength: 5 }),
    fc.option(fc.tuple(fc.nat(300), fc.integer({ min: 0, max: 255 })), { nil: null, freq: 4 }),
    fc.constantFrom('\n', '\r\n', '\r'),
  )
  .map(([{ kind, lines }, edits, byte, end]) => {
    const changed = [...lines];
    for (const [edit, at, cell] of edits) edit(changed, at, cell);
    const bytes = Buffer.from(changed.join(end));
    if (byte && bytes.length > 0) bytes[byte[0] % bytes.length] = byte[1];
    return { kind, bytes };
  });

test('loadFolder of any bytes never throws, its counts add up, and a second time nothing alters', async () => {
  await fc.assert(
    fc.asyncProperty(mutated, async ({ kind, bytes }) => {
      const path = file(`${kind}.csv`, bytes);
      const report = loadReportShape.parse(await loadFolder(db, path, { venue: VENUE }));
      for (const { read, taken, changed, unchanged, refusedRows, refused } of report.files) {
        expect(read).toBe(taken + changed + unchanged + refusedRows);
        expect(refused).toHaveLength(refusedRows);
        expect(refused.every(({ why }) => !/undefined|\[object/.test(why))).toBe(true);
      }
      const at = await revision(db, VENUE);
      const facts = await stored(db, VENUE);
      const again = await loadFolder(db, path, { venue: VENUE });
      expect(again.files.map(({ refused }) => refused)).toEqual(report.files.map(({ refused }) => refused));
      expect(again.files.every(({ taken, changed, withdrawn }) => taken + changed + withdrawn === 0)).toBe(true);
      expect(await revision(db, VENUE)).toBe(at);
      expect(await stored(db, VENUE)).toEqual(facts);
    }),
    { numRuns: soak },
  );
}, 1_200_000);
