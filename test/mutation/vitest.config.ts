import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const root = fileURLToPath(new URL('../..', import.meta.url));

const draws = ({ moduleId }: TestSpecification) => /generated-books/.test(readFileSync(moduleId, 'utf8'));

/** Hand-worked examples first: they take milliseconds and find most mutants; tests over hundreds of drawn books follow. */
class ExamplesFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const byName = files.toSorted((a, b) => a.moduleId.localeCompare(b.moduleId));
    return [...byName.filter((file) => !draws(file)), ...byName.filter(draws)];
  }
}

// The tests that hold lib/model to its figures and need no server. Tests of speed would fail, and
// those that take whole minutes of resamples would run out of time, for running with every change built in.
export default defineConfig({
  root,
  resolve: { alias: { '@': root.replace(/\/$/, '') } },
  test: {
    include: ['test/{model,reports,published}/**/*.test.ts'],
    exclude: ['**/*-{speed,calibration}.test.ts'],
    sequence: { sequencer: ExamplesFirst },
    testTimeout: 120_000, // on a busy machine a slow test is not yet a mutant found
    isolate: false,
    fileParallelism: false,
  },
});
