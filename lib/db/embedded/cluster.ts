import { spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import {
  chownSync,
  closeSync,
  existsSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { codeOf, DatabaseTrouble } from '../database-trouble';
import { isAlive } from './postmaster';
import type { ServerPrograms } from './programs';
import type { ServerUser } from './server-user';

/** The database's only user on an embedded server. */
export const SERVER_OWNER = 'plateworth';
/** The file in the server's folder that holds its generated password, readable by the server's user alone. */
export const PASSWORD_FILE = 'plateworth.password';

/**
 * Makes the server's folder: initdb with a generated password, UTF-8 and the C locale whatever the machine's is, and scram for
 * whoever connects. It is made aside and moved into place in one step, so a crash or a second start half-way leaves nothing half-made.
 */
export async function makeCluster(folder: string, programs: ServerPrograms, user: ServerUser | null): Promise<void> {
  const home = dirname(folder);
  if (existsSync(folder) && readdirSync(folder).length > 0) {
    throw new DatabaseTrouble(
      `${folder} is not empty and not a database. Move it away, or set DATA_DIR to another folder.`,
    );
  }
  mkdirSync(home, { recursive: true, mode: 0o700 });
  removeLeftovers(folder);
  const fresh = `${folder}.making-${process.pid}`;
  const password = `${fresh}.password`;
  mkdirSync(fresh, { mode: 0o700 });
  writeFileSync(password, randomBytes(24).toString('base64url'), { mode: 0o600 });
  if (user) for (const path of [fresh, password]) chownSync(path, user.uid, user.gid);
  await initdb(fresh, password, programs, user);
  renameSync(password, join(fresh, PASSWORD_FILE));
  try {
    renameSync(fresh, folder);
  } catch (error) {
    rmSync(fresh, { recursive: true });
    if (codeOf(error) !== 'ENOTEMPTY' && codeOf(error) !== 'EEXIST') throw error; // else another start was first
  }
}

/**
 * How the server's user reaches a path: as root through a descriptor that this program opened, because the folders above it may
 * be closed to that user; else simply by its name.
 */
export function reachable(
  path: string,
  slot: number,
  user: ServerUser | null,
): { name: string; descriptor: number | 'ignore' } {
  return user && process.platform === 'linux'
    ? { name: `/proc/self/fd/${slot}`, descriptor: openSync(path, 'r') }
    : { name: path, descriptor: 'ignore' };
}

/** What the server's programs see of the machine: nothing that could change how they sort, speak or tell the time. */
export const PLAIN_ENVIRONMENT: NodeJS.ProcessEnv = {
  NODE_ENV: 'production', // nothing to the server, but the type asks for it
  PATH: process.env.PATH ?? '',
  SystemRoot: process.env.SystemRoot ?? '', // Windows starts no program without it
  LC_ALL: 'C',
  TZ: 'UTC',
};

async function initdb(
  fresh: string,
  password: string,
  programs: ServerPrograms,
  user: ServerUser | null,
): Promise<void> {
  const data = reachable(fresh, 3, user);
  const secret = reachable(password, 4, user);
  const child = spawn(
    join(programs, 'bin', 'initdb'),
    // biome-ignore format: one option with its value a line
    ['-D', data.name, '-U', SERVER_OWNER, `--pwfile=${secret.name}`, '--auth-host=scram-sha-256', '--auth-local=reject',
      '--encoding=UTF8', '--locale=C', '--data-checksums', '--no-instructions'],
    {
      ...user,
      cwd: '/',
      env: PLAIN_ENVIRONMENT,
      stdio: ['ignore', 'ignore', 'pipe', data.descriptor, secret.descriptor],
    },
  );
  let said = '';
  child.stderr?.on('data', (text: Buffer) => {
    said += text;
  });
  const code = await new Promise((resolve) => child.on('error', resolve).on('close', resolve));
  for (const { descriptor } of [data, secret]) if (descriptor !== 'ignore') closeSync(descriptor);
  if (code === 0) return;
  rmSync(fresh, { recursive: true });
  rmSync(password);
  throw new DatabaseTrouble(`The database could not be made in ${dirname(fresh)}: ${said.trim() || String(code)}`);
}

function removeLeftovers(folder: string): void {
  const prefix = `${basename(folder)}.making-`;
  for (const name of readdirSync(dirname(folder))) {
    const pid = name.startsWith(prefix) ? Number.parseInt(name.slice(prefix.length), 10) : Number.NaN;
    if (pid === process.pid || (pid > 0 && !isAlive(pid))) rmSync(join(dirname(folder), name), { recursive: true });
  }
}
