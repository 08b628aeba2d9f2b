import { readdirSync, readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { z } from 'zod';
import { type Accepted, compared } from './survivors';
import { tryMutants } from './try-mutants';

const LIST = 'test/mutation/survivors.json';

/** With every change built in, code runs many times slower, so only a few files have theirs at a time; what resamples, by itself. */
const AT_ONCE = 10;
const ALONE = 'lib/model/mix/certainty.ts';

function batchesOf(files: readonly string[]): readonly (readonly string[])[] {
  const together = files.filter((file) => file !== ALONE);
  const batches = Array.from({ length: Math.ceil(together.length / AT_ONCE) }, (_, index) =>
    together.slice(index * AT_ONCE, (index + 1) * AT_ONCE),
  );
  return together.length < files.length ? [...batches, [ALONE]] : batches;
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { changed: { type: 'boolean', default: false }, help: { type: 'boolean', default: false } },
});
if (values.help) {
  console.log(`npm run mutate -- [--changed] [lib/model/file.ts ...]

Changes the operators of lib/model one at a time (+ to -, < to <=, && to ||, min to max, true to false ...) and runs the tests that
reach the place. A change that no test notices is a gap in the tests, unless ${LIST} says why it is none.

  --changed   take over the outcome of a mutant where neither its file nor the tests that reach it changed since the last run
Exit 0 every mutant killed or accepted, 1 some survived without a reason.`);
  process.exit(0);
}

const everyFile = readdirSync('lib/model', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => `lib/model/${name.replaceAll('\\', '/')}`)
  .sort();
const files = positionals.length > 0 ? positionals : everyFile;

const text = z.string().min(1);
const accepted: readonly Accepted[] = z
  .array(z.strictObject({ file: text, line: text, from: text, to: text, why: text }))
  .parse(JSON.parse(readFileSync(LIST, 'utf8')));

const began = Date.now();
const total = { mutants: 0, accepted: 0, unexplained: 0 };
for (const some of batchesOf(files)) {
  const { count, survived } = tryMutants(some, !values.changed);
  const { unexplained, stale } = compared(survived, accepted, new Set(some));
  for (const { file, line, from, to } of unexplained)
    console.log(`\nsurvived  ${file}\n  ${line}\n  ${from}  ->  ${to}`);
  for (const { file, line, to } of stale)
    console.log(`\nstale in ${LIST}: killed now, or gone  ${file}\n  ${line}\n  ->  ${to}`);
  total.mutants += count;
  total.accepted += survived.length - unexplained.length;
  total.unexplained += unexplained.length;
}

console.log(
  `\n${total.mutants} mutants in ${files.length} files: ${total.mutants - total.accepted - total.unexplained} killed, ` +
    `${total.accepted} accepted, ${total.unexplained} unexplained; ${((Date.now() - began) / 60_000).toFixed(1)} minutes`,
);
process.exitCode = total.unexplained > 0 ? 1 : 0;
