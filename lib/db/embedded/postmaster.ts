import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { codeOf, DatabaseTrouble } from '../database-trouble';

/** A server that is running, or starting, on a folder. */
export interface Postmaster {
  readonly pid: number;
  readonly port: number;
  readonly ready: boolean;
}

/**
 * The server on this folder by its own note (postmaster.pid), or null where none runs. The note of a crashed server may name a
 * number that another program has by now, as after a restart of a container: such a note is removed, or the server would refuse to start.
 */
export function postmasterOf(folder: string): Postmaster | null {
  const note = join(folder, 'postmaster.pid');
  let lines: string[];
  try {
    lines = readFileSync(note, 'utf8').split('\n');
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return null;
    if (codeOf(error) !== 'EACCES') throw error;
    throw new DatabaseTrouble(
      `${folder} belongs to another user of this machine. Start as that user, or set DATA_DIR.`,
    );
  }
  const pid = Number(lines[0]);
  const port = Number(lines[3]);
  if (!(pid > 0) || !(port > 0) || !isAlive(pid)) return null;
  if (!isServer(pid)) {
    rmSync(note, { force: true });
    return null;
  }
  return { pid, port, ready: lines[7]?.trim() === 'ready' };
}

export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return codeOf(error) === 'EPERM';
  }
}

function isServer(pid: number): boolean {
  if (process.platform !== 'linux') return true;
  try {
    const [, state] = readFileSync(`/proc/${pid}/stat`, 'utf8').split(' (postgres) ');
    return state !== undefined && !/^[ZX]/.test(state); // a zombie runs no more
  } catch {
    return false;
  }
}

/** Stops the server of a folder and waits until it is gone: connections are cut, what was committed is kept. */
export async function stopPostmaster(folder: string): Promise<void> {
  const server = postmasterOf(folder);
  if (!server) return;
  process.kill(server.pid, 'SIGINT');
  for (let waited = 0; isAlive(server.pid) && isServer(server.pid); waited += 20) {
    if (waited > 60_000) throw new DatabaseTrouble(`The database server (process ${server.pid}) does not stop.`);
    await sleep(20);
  }
}
