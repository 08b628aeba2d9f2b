import { readFileSync, statSync } from 'node:fs';
import { DatabaseTrouble } from '../database-trouble';

/** As whom the server runs. */
export interface ServerUser {
  readonly uid: number;
  readonly gid: number;
}

/**
 * The user under which the server of this folder has to run, or null for the program's own: PostgreSQL refuses to run as root,
 * so root hands it to whom the folder belongs, else to `postgres` or `nobody`. Throws DatabaseTrouble where there is none of these.
 */
export function serverUser(folder: string): ServerUser | null {
  if (process.getuid?.() !== 0) return null;
  const owner = statSync(folder, { throwIfNoEntry: false })?.uid ?? 0;
  const users = readFileSync('/etc/passwd', 'utf8')
    .split('\n')
    .map((line) => line.split(':'))
    .map(([name, , uid, gid]) => ({ name, uid: Number(uid), gid: Number(gid) }));
  const user =
    owner > 0
      ? users.find(({ uid }) => uid === owner)
      : (users.find(({ name }) => name === 'postgres') ?? users.find(({ name }) => name === 'nobody'));
  if (user) return { uid: user.uid, gid: user.gid };
  throw new DatabaseTrouble(
    owner > 0
      ? `${folder} belongs to the user number ${owner}, who is not known here. Give it to a user of this machine, or set DATA_DIR to another folder.`
      : 'The database server must not run as root, and this machine has neither a user postgres nor nobody. Start the program as another user, or set DATABASE_URL.',
  );
}
