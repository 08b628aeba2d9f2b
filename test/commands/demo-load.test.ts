import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { loadExitCode } from '@/lib/changes/load-report-shape';
import { everythingStored } from '../changes/everything-stored';
import { revision } from '../changes/stored';
import { freshDatabase } from '../fresh-database';

const { db } = await freshDatabase();
const DEMO = fileURLToPath(new URL('../../seed/demo-house', import.meta.url));
const LONGEST_MS = 20_000;

/** Orders drawn with a seed, so that a failure can be seen again. */
function shuffled(names: readonly string[], seed: number): readonly string[] {
  let state = seed;
  const draw = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  return names
    .map((name) => ({ name, place: draw() }))
    .sort((a, b) => a.place - b.place)
    .map(({ name }) => name);
}

test('loadFolder(demo restaurant) refuses nothing, is in under 20 s, and the second time takes nothing', async () => {
  const from = performance.now();
  const report = await loadFolder(db, DEMO);
  const took = performance.now() - from;
  console.log(`the demo restaurant was loaded in ${(took / 1000).toFixed(1)} s`);
  expect(report.files.flatMap(({ file, refused }) => refused.map((row) => ({ file, ...row })))).toEqual([]);
  expect([report.venue, report.notRead, loadExitCode(report)]).toEqual(['Marram House', [], 0]);
  expect(report.files.flatMap(({ file, ignored }) => ignored.map((column) => [file, column]))).toEqual([]);
  expect(report.files.map(({ file, read }) => [file, read])).toEqual(
    report.files.map(({ file, taken, changed, unchanged }) => [file, taken + changed + unchanged]),
  );
  expect(took).toBeLessThan(LONGEST_MS);
  const at = await revision(db, 'Marram House');
  const again = await loadFolder(db, DEMO);
  expect(again.files.every(({ read, unchanged, withdrawn }) => read === unchanged && withdrawn === 0)).toBe(true);
  expect(await revision(db, 'Marram House')).toBe(at);
});

test.each([1, 2, 3])(
  'loadFolder(demo restaurant) file by file in an order of its own (%i) stores the same',
  async (seed) => {
    const whole = await everythingStored(db, 'Marram House');
    const venue = `Order ${seed}`;
    const order = shuffled(readdirSync(DEMO), seed).filter((name) => name !== 'venue.csv');
    for (const file of order) await loadFolder(db, join(DEMO, file), { venue });
    const { venue: _, ...facts } = await everythingStored(db, venue);
    const { venue: __, ...wholeFacts } = whole;
    expect(facts.waiting).toEqual([]);
    for (const [thing, rows] of Object.entries(facts)) expect([thing, rows]).toEqual([thing, wholeFacts[thing]]);
  },
);
