import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { demoUnfinished } from '../changes/demo-unfinished';
import { loadFolder } from '../changes/load-folder';
import { loadExitCode } from '../changes/load-report-shape';
import { type Database, openDatabase } from '../db/database';
import { venuesSeenBy } from '../db/venues';
import {
  alreadyServed,
  building,
  emptyOrBook,
  finishingDemo,
  loadingBook,
  loadingDemo,
  noPages,
  noSuchPort,
  openAtAddress,
  portTaken,
  startUsage,
  stopping,
} from '../format/words/start';
import { currentAsker } from '../session/asker';
import { loadTable } from './load-table';
import { buildPages, pagesAreStale } from './pages-build';
import { complain, run, wrongUse } from './run';

/** The demo of an empty database. */
const DEMO = 'seed/demo-house';

const OPTIONS = {
  book: { type: 'string' },
  empty: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

/** Starts the program and serves until it is told to stop. */
async function start(): Promise<number> {
  const { values } = parseArgs({ options: OPTIONS });
  if (values.help) {
    process.stdout.write(startUsage);
    return 0;
  }
  if (values.empty && values.book !== undefined) throw wrongUse(emptyOrBook);
  const port = portWanted();
  const stopped = untilStopped();
  const db = await openDatabase();
  if (db.presence && !(await db.presence.claim()))
    return refuse(alreadyServed(resolve(process.env.DATA_DIR || '.data')));

  // Next and React read it when they are loaded
  Object.assign(process.env, { NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1' });
  const { isFree, serve } = await import('./web-server');
  if (port !== 0 && !(await isFree(port))) return refuse(portTaken(port));

  if (!values.empty) await loadFirstBook(db, values.book ?? null);
  if (pagesAreStale()) {
    say(building);
    const trouble = buildPages();
    if (trouble !== null) return refuse(noPages(trouble));
  }
  const server = await serve(port);
  say(openAtAddress(server.address));
  await stopped;
  say(stopping);
  await server.stop();
  return 0;
}

/** Loads the book asked for, or the demo, into an empty database; and the rest of a demo whose loading was cut short. */
async function loadFirstBook(db: Database, book: string | null): Promise<void> {
  const seen = await venuesSeenBy(db, currentAsker().person);
  const unfinished = book === null ? await demoUnfinished(db, DEMO) : null;
  if (seen.length > 0 && unfinished === null) return;
  say(unfinished !== null ? finishingDemo : book === null ? loadingDemo : loadingBook(book));
  const report = await loadFolder(db, book ?? DEMO, { demo: book === null, venue: unfinished?.name });
  if (report.wrongUse !== null) throw wrongUse(report.wrongUse);
  if (loadExitCode(report) !== 0) say(loadTable(report)); // what of it was not taken
}

function portWanted(): number {
  const text = process.env.PORT || '3000';
  const port = Number(text);
  if (!/^\d+$/.test(text) || port > 65_535) throw wrongUse(noSuchPort(text));
  return port;
}

/**
 * Resolves on the first SIGINT or SIGTERM; more of them change nothing, since what follows is bounded in time. A signal to npm ends
 * the shell between npm and this program and comes no further: then the end of that shell is the signal.
 */
function untilStopped(): Promise<void> {
  const shell = process.ppid;
  return new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => resolve());
    if (process.env.npm_lifecycle_event === undefined) return;
    setInterval(() => {
      if (process.ppid !== shell) resolve();
    }, 500).unref();
  });
}

const say = (sentence: string): void => void process.stdout.write(`${sentence}\n`);

function refuse(sentence: string): number {
  complain(sentence);
  return 1;
}

await run(start);
