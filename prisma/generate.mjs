// Makes the Prisma client in lib/db/client, once for each state of the schema.
// Generating needs no native engine, but Prisma's command looks for one first and tries to download it: any existing program
// in its place is enough. (Never run `prisma migrate deploy` that way: it would report success and apply nothing.)
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const require = createRequire(import.meta.url);
const stamp = `${root}lib/db/client/.made-from`;
const digest = createHash('sha256')
  .update(readFileSync(`${root}prisma/schema.prisma`))
  .update(readFileSync(require.resolve('prisma/package.json')))
  .digest('hex');

if (!existsSync(stamp) || readFileSync(stamp, 'utf8') !== digest) {
  const made = spawnSync(
    process.execPath,
    [require.resolve('prisma/build/index.js'), 'generate', '--config', 'prisma/config.ts'],
    {
      cwd: root,
      encoding: 'utf8',
      env: { ...process.env, PRISMA_SCHEMA_ENGINE_BINARY: process.execPath, CHECKPOINT_DISABLE: '1' },
    },
  );
  if (made.status !== 0) {
    process.stderr.write(`The database client could not be made:\n${made.stdout}${made.stderr}\n`);
    process.exit(1);
  }
  writeFileSync(stamp, digest);
}
