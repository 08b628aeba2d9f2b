import { spawn } from 'node:child_process';
import { closeSync, fstatSync, openSync, readFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { DatabaseTrouble } from '../database-trouble';
import { PLAIN_ENVIRONMENT, reachable } from './cluster';
import { postmasterOf } from './postmaster';
import type { ServerPrograms } from './programs';
import type { ServerUser } from './server-user';

/** The server did not start, for a reason that passes: another one is starting or still dying, or its port was taken just then. */
export class NotYet extends Error {}

const PASSES = /postmaster\.pid|shared memory|could not bind|Address already in use|lock file/i;
const LOG_LIMIT = 1_000_000;

/**
 * Starts the server of a folder on 127.0.0.1 and a free port and waits until it takes connections. It runs apart from this program,
 * so that the program's death does not take it along: the next one adopts it. Throws NotYet, or DatabaseTrouble with the server's own words.
 */
export async function startServer(
  folder: string,
  programs: ServerPrograms,
  user: ServerUser | null,
  settings: readonly string[] = [],
): Promise<void> {
  const path = `${folder}.log`;
  const log = openLog(path);
  const said = fstatSync(log).size;
  const data = reachable(folder, 3, user);
  const port = await freePort();
  const own = [
    'listen_addresses=127.0.0.1',
    `port=${port}`,
    'unix_socket_directories=',
    'timezone=UTC',
    'log_timezone=UTC',
  ];
  const child = spawn(
    join(programs, 'bin', 'postgres'),
    ['-D', data.name, ...[...own, ...settings].flatMap((setting) => ['-c', setting])],
    { ...user, cwd: '/', env: PLAIN_ENVIRONMENT, detached: true, stdio: ['ignore', log, log, data.descriptor] },
  );
  for (const descriptor of [log, data.descriptor]) if (descriptor !== 'ignore') closeSync(descriptor);
  let ended: unknown = null;
  child.on('error', (error) => {
    ended = error;
  });
  child.on('exit', (code, signal) => {
    ended = code ?? signal;
  });
  child.unref();
  while (ended === null) {
    const server = postmasterOf(folder);
    if (server?.pid === child.pid && server?.ready) return;
    await sleep(10);
  }
  const words = readFileSync(path).subarray(said).toString('utf8').trim();
  if (PASSES.test(words)) throw new NotYet(words);
  throw new DatabaseTrouble(`The database server on ${folder} does not start: ${words || String(ended)}`);
}

/** The server's log, beside its folder; a long one starts anew. */
function openLog(path: string): number {
  const log = openSync(path, 'a', 0o600);
  if (fstatSync(log).size < LOG_LIMIT) return log;
  closeSync(log);
  return openSync(path, 'w', 0o600);
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => resolve(address !== null && typeof address === 'object' ? address.port : 0));
    });
  });
}
