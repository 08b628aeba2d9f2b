import { existsSync, mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { DatabaseTrouble, isOutOfReach, wordsOf } from '../database-trouble';
import { makeCluster } from './cluster';
import { postmasterOf } from './postmaster';
import { enter, type Presence } from './presence';
import { type ServerPrograms, serverPrograms } from './programs';
import { serverUser } from './server-user';
import { NotYet, startServer } from './start-server';

/** How long a crashed server may take to die, or a stopping one to stop. */
const PATIENCE_MS = 20_000;

/**
 * The server of a data folder: made where there is none, started where it does not run, adopted where it does.
 * Several processes share it; none owns it.
 */
export async function openEmbedded(
  dataFolder: string,
  given: { programs?: ServerPrograms; settings?: readonly string[] } = {},
): Promise<Presence> {
  const home = resolve(dataFolder);
  const folder = join(home, 'postgres');
  const deadline = Date.now() + PATIENCE_MS;
  let last: unknown = 'it is being stopped';
  for (;;) {
    try {
      const server = postmasterOf(folder);
      const presence = server && (await enter(folder, server));
      if (presence) return presence;
      if (!server) {
        mkdirSync(home, { recursive: true, mode: 0o700 });
        const user = serverUser(folder);
        const programs = given.programs ?? serverPrograms(home, user);
        if (!existsSync(join(folder, 'PG_VERSION'))) await makeCluster(folder, programs, user);
        await startServer(folder, programs, user, given.settings);
        continue;
      }
    } catch (error) {
      if (isOfFolder(error)) {
        throw new DatabaseTrouble(
          `${home} cannot hold the database: ${wordsOf(error)}. Set DATA_DIR to a folder that can be written to.`,
        );
      }
      if (!(error instanceof NotYet) && !isOutOfReach(error)) throw error;
      last = error;
    }
    if (Date.now() > deadline)
      throw new DatabaseTrouble(`The database server on ${folder} does not answer: ${wordsOf(last)}.`);
    await sleep(30 + Math.random() * 40);
  }
}

/** Whether the file system refused something: a folder that is a file, a full disk, no right to write. */
function isOfFolder(error: unknown): boolean {
  return error instanceof Error && 'syscall' in error && 'path' in error;
}
