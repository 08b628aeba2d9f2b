import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Test files that go through hundreds of drawn books. */
const DRAWN = readdirSync(`${root}test`, { recursive: true, encoding: 'utf8' })
  .filter((name) => /^(model|reports|published)\b.*\.test\.ts$/.test(name))
  .map((name) => `test/${name.replaceAll('\\', '/')}`)
  .filter((name) => readFileSync(`${root}${name}`, 'utf8').includes('acyclicBooks'));

// The tests that hold lib/model to its figures and need no server. Tests of speed would fail, and
// those that take whole minutes of resamples would run out of time, for running with every change built in.
export default defineConfig({
  root,
  resolve: { alias: { '@': root.replace(/\/$/, '') } },
  test: {
    include: ['test/{model,reports,published}/**/*.test.ts'],
    exclude: ['**/*-{speed,calibration}.test.ts', ...(process.env.MUTATION_TESTS === 'examples' ? DRAWN : [])],
    testTimeout: 120_000, // on a busy machine a slow test is not yet a mutant found
    isolate: false,
    fileParallelism: false,
  },
});
