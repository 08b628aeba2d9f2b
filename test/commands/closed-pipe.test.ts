import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { freshDatabase } from '../fresh-database';

const { url } = await freshDatabase();
const root = fileURLToPath(new URL('../..', import.meta.url));

// A server whose terminal was closed wrote its own error about that to the same terminal, and about that one again, for ever.
test('load whose reader has gone away finishes its work, and says nothing more', async () => {
  const child = spawn(process.execPath, ['--import', 'tsx', 'lib/commands/load.ts', 'seed/small'], {
    cwd: root,
    env: { ...process.env, DATABASE_URL: url },
  });
  child.stdout.destroy();
  child.stderr.destroy();
  const [code, signal] = await once(child, 'exit');
  expect([code, signal]).toEqual([0, null]);
});
