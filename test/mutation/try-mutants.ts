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

const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim();

/** The report counts lines and columns from 1, and the end is the first place after. */
function mutantOf(file: string, source: string, { location, replacement }: ReportedFile['mutants'][number]): Mutant {
  const { start, end } = location;
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const whole = lines.join('\n');
  const after = (lines.at(-1)?.length ?? 0) - (end.column - 1);
  return {
    file,
    line: oneLine(lines[0] ?? ''),
    from: oneLine(whole.slice(start.column - 1, whole.length - after)),
    to: oneLine(replacement),
  };
}

/**
 * Changes every operator of `files`, one at a time, and runs the tests that reach it. stryker.json beside this says how: operators alone,
 * neither words nor whole blocks; no tsconfig, since that would be rewritten through TypeScript's own API, which TypeScript 7 has no more.
 *
 * @param again false takes over the outcome of the last run where neither the file nor the tests that reach the mutant changed.
 */
export function tryMutants(files: readonly string[], again: boolean): Tried {
  const asked = ['run', 'test/mutation/stryker.json', '--mutate', files.join(','), ...(again ? ['--force'] : [])];
  const { status } = spawnSync(process.execPath, ['node_modules/@stryker-mutator/core/bin/stryker.js', ...asked], {
    stdio: 'inherit',
  });
  if (status !== 0) throw new Error(`The mutants of ${files.join(', ')} could not be run; the lines above say why.`);
  const report = reported.parse(JSON.parse(readFileSync('test/.cache/mutation.json', 'utf8')));
  const tried = files.flatMap((file) => {
    const { source = '', mutants = [] } = report.files[file] ?? {};
    return mutants.filter((each) => each.status !== 'Ignored').map((each) => ({ file, source, each }));
  });
  return {
    count: tried.length,
    survived: tried
      .filter(({ each: { status } }) => status === 'Survived' || status === 'NoCoverage')
      .map(({ file, source, each }) => mutantOf(file, source, each)),
  };
}
