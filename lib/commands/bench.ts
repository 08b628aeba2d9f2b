import os from 'node:os';
import { LARGE, largeBook, MONTH } from '../../test/bench/large-book';
import { largeMix } from '../../test/bench/large-mix';
import { medianMs } from '../../test/bench/measure';
import { plainResamples } from '../../test/bench/plain-resamples';
import { copyLoop, plainRecursion, spreadsheet } from '../../test/bench/rivals';
import { type CostedPeriod, costPeriod } from '../model/costed-period';
import { certainty } from '../model/mix/certainty';
import { KASAVANA_SMITH } from '../model/mix/kasavana-smith';
import { downward, upward } from '../model/passes';
import { demoYear, mixesOfYear } from './demo-year';

const HELP = `npm run bench

Times the two passes over a book of ${LARGE.dishes} dishes, ${LARGE.components} components, ${LARGE.ingredients} ingredients and ${LARGE.lines} lines beside an
indexed loop that copies the lines, plain recursion and a general spreadsheet engine: medians of 21 batches of 50.
Then 2,000 resamples of 31 days and 200 dishes beside a plain loop over objects: the median of 5. Then the last twelve months of the demo
restaurant, loaded into an embedded database of its own: compiled and answered as menu mixes, the median of 5 once warm.
Ends with 0 where an upward pass takes at most 3 times the copy loop and is at least 20 times faster than the spreadsheet engine, and the
resamples take at most a fifth of the plain loop, and the year less than a second; with 1 where that does not hold.`;

const AT_MOST_COPIES = 3;
const AT_LEAST_FASTER = 20;
const AT_MOST_PLAIN = 0.2;
const RESAMPLES = 2000;
const YEAR_UNDER_MS = 1000;

/** The largest relative distance between two ways to the same costs. */
function distance(a: ArrayLike<number>, b: ArrayLike<number>): number {
  return Array.from(a).reduce((most, value, index) => {
    const other = b[index] ?? Number.NaN;
    return Math.max(most, Math.abs(value - other) / Math.max(Math.abs(value), Math.abs(other), 1e-300));
  }, 0);
}

function row(what: string, ms: number, upwardMs: number): void {
  const ratio = (ms / upwardMs).toFixed(2).padStart(9);
  console.log(`${what.padEnd(46)} ${ms.toFixed(3).padStart(9)} ms ${ratio} x the first`);
}

/** How sure the classes of a large menu are, beside a plain loop: what the first takes of the second. */
function resampling(): number {
  const mix = largeMix();
  const plain = plainResamples(mix, RESAMPLES, 1);
  const taken = medianMs({ certainty: () => certainty(mix, KASAVANA_SMITH, RESAMPLES, 1), plain }, 5, 1);
  console.log(`\n${RESAMPLES} resamples of ${mix.days.length} days and ${mix.items} dishes`);
  row('certainty', taken.certainty, taken.certainty);
  row('plain loop over objects', taken.plain, taken.certainty);
  return taken.certainty / taken.plain;
}

/** The demo's year, read from a database and warm: milliseconds to compile its months and answer the menu mix of each. */
async function year(): Promise<number> {
  const facts = await demoYear();
  const taken = medianMs({ year: () => mixesOfYear(facts) }, 5, 1);
  console.log(`\nThe demo restaurant, ${mixesOfYear(facts).length} months compiled and answered as menu mixes`);
  console.log(`${'a year, warm'.padEnd(46)} ${(taken.year / 1000).toFixed(3).padStart(9)} s`);
  return taken.year;
}

async function bench(): Promise<number> {
  console.log(`Node ${process.version}, ${os.cpus()[0]?.model ?? 'unknown processor'}, ${os.cpus().length} cores`);
  const facts = largeBook(LARGE);
  const once: CostedPeriod = costPeriod(facts, MONTH);
  const { lines } = once;
  const { food } = once.prices;
  const wanted = food.map((_, node) => (once.things[node]?.kind === 'dish' ? 30 : 0));
  console.log(`${lines.parent.length} lines, ${once.things.length} things\n`);

  const recursion = plainRecursion(lines, food);
  const sheet = spreadsheet(lines, food);
  sheet.change();
  const costs = upward(lines, food, 1);
  const apart = Math.max(distance(costs, recursion()), distance(costs, sheet.costs()));
  console.log(`The three ways to the costs agree to a relative ${apart.toExponential(1)}.\n`);

  const dated = largeBook(LARGE, 30);
  const month = costPeriod(dated, MONTH);
  const { count } = month.segments;
  const passes = medianMs({
    upward: () => upward(lines, food, 1),
    downward: () => downward(lines, wanted, 1),
    copy: copyLoop(lines),
    recursion,
    spreadsheet: sheet.change,
    segments: () => upward(month.lines, month.prices.food, count),
  });
  const compiling = medianMs({ once: () => costPeriod(facts, MONTH), dated: () => costPeriod(dated, MONTH) }, 5, 3);
  const up = passes.upward;
  row('upward pass', up, up);
  row('downward pass', passes.downward, up);
  row('loop that copies parent, child and amount', passes.copy, up);
  row('plain recursion, each recipe once', passes.recursion, up);
  row('spreadsheet engine, all prices changed', passes.spreadsheet, up);
  row(`upward pass, ${count} segments`, passes.segments, up);
  row('compiling the facts, 1 segment', compiling.once, up);
  row(`compiling the facts, ${count} segments`, compiling.dated, up);

  const copies = up / passes.copy;
  const faster = passes.spreadsheet / up;
  const sampling = resampling();
  const yearly = await year();
  const passesHold = copies <= AT_MOST_COPIES && faster >= AT_LEAST_FASTER && apart <= 1e-9;
  const holds = passesHold && sampling <= AT_MOST_PLAIN && yearly < YEAR_UNDER_MS;
  console.log(`\nAn upward pass takes ${copies.toFixed(2)} times the copy loop (at most ${AT_MOST_COPIES}).`);
  console.log(`It is ${faster.toFixed(0)} times faster than the spreadsheet engine (at least ${AT_LEAST_FASTER}).`);
  console.log(`Resampling takes ${sampling.toFixed(3)} of a plain loop over objects (at most ${AT_MOST_PLAIN}).`);
  console.log(`The demo's year takes ${(yearly / 1000).toFixed(3)} s (under ${YEAR_UNDER_MS / 1000} s).`);
  console.log(holds ? 'All hold.' : 'That does not hold.');
  return holds ? 0 : 1;
}

if (process.argv.includes('--help')) console.log(HELP);
else process.exitCode = await bench();
