import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { z } from 'zod';
import type { Mutant } from './survivors';

export interface Tried {
  /** How many mutants were run, killed or not; one that makes a loop endless is killed. */
  readonly count: number;
  readonly survived: readonly Mutant[];
}

const position = z.object({ line: z.number(), column: z.number() });
const reported = z.object({
  files: z.record(
    z.string(),
    z.object({
      source: z.string(),
      mutants: z.array(
        z.object({
          location: z.object({ start: position, end: position }),
          replacement: z.string(),
          status: z.string(),
        }),
      ),
    }),
  ),
});
type ReportedFile = z.infer<typeof reported>['files'][string];

/** A mutant of a report, with the place that tells it from all others. */
interface Outcome {
  readonly mutant: Mutant;
  readonly place: string;
  readonly lines: string;
  readonly isAlive: boolean;
}

/** Hand-worked examples alone, or the tests over drawn books too. */
type Tests = 'examples' | 'all';

/**
 * Changes every operator of `files`, one at a time, and runs the tests that reach it: first the hand-worked examples, which take
 * milliseconds; what they do not notice is tried again by all tests.
 *
 * @param again false takes over the outcome of the last run where neither the file nor the tests that reach the mutant changed.
 */
export function tryMutants(files: readonly string[], again: boolean): Tried {
  const first = outcomesOf(files, files, 'examples', again);
  const unnoticed = first.filter(({ isAlive }) => isAlive);
  if (unnoticed.length === 0) return { count: first.length, survived: [] };
  const lines = [...new Set(unnoticed.map((each) => each.lines))];
  const alive = new Set(outcomesOf(files, lines, 'all', again).flatMap((each) => (each.isAlive ? [each.place] : [])));
  const survived = unnoticed.filter(({ place }) => alive.has(place)).map(({ mutant }) => mutant);
  return { count: first.length, survived };
}

/**
 * stryker.json beside this says how: operators alone, neither words nor whole blocks; no tsconfig, since that would be rewritten through
 * TypeScript's own API, which TypeScript 7 has no more. `parts` are files, or lines of files (a.ts:3-5).
 */
function outcomesOf(
  files: readonly string[],
  parts: readonly string[],
  tests: Tests,
  again: boolean,
): readonly Outcome[] {
  const report = `test/.cache/mutation-${tests}.json`;
  const options = ['--mutate', parts.join(','), '--incrementalFile', report, ...(again ? ['--force'] : [])];
  const { status } = spawnSync(
    process.execPath,
    ['node_modules/@stryker-mutator/core/bin/stryker.js', 'run', 'test/mutation/stryker.json', ...options],
    { stdio: 'inherit', env: { ...process.env, MUTATION_TESTS: tests } },
  );
  if (status !== 0) throw new Error(`The mutants of ${files.join(', ')} could not be run; the lines above say why.`);
  const read = reported.parse(JSON.parse(readFileSync(report, 'utf8')));
  return files.flatMap((file) => {
    const { source = '', mutants = [] } = read.files[file] ?? {};
    return mutants.filter((each) => each.status !== 'Ignored').map((each) => outcomeOf(file, source, each));
  });
}

const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim();

/** The report counts lines and columns from 1, and the end is the first place after. */
function outcomeOf(
  file: string,
  source: string,
  { location, replacement, status }: ReportedFile['mutants'][number],
): Outcome {
  const { start, end } = location;
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const whole = lines.join('\n');
  const after = (lines.at(-1)?.length ?? 0) - (end.column - 1);
  return {
    mutant: {
      file,
      line: oneLine(lines[0] ?? ''),
      from: oneLine(whole.slice(start.column - 1, whole.length - after)),
      to: oneLine(replacement),
    },
    place: JSON.stringify([file, location, replacement]),
    lines: `${file}:${start.line}-${end.line}`,
    isAlive: status === 'Survived' || status === 'NoCoverage',
  };
}
