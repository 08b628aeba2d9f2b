import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));
const alias = { '@': root.replace(/\/$/, '') };

/** The folder of an installed PostgreSQL 15 (with bin/postgres in it), or null where this machine has none. */
function postgres15(): string | null {
  const asked = spawnSync('pg_config', ['--bindir'], { encoding: 'utf8' });
  const homes = [
    '/usr/lib/postgresql/15',
    '/usr/pgsql-15',
    ...(asked.status === 0 ? [dirname(asked.stdout.trim())] : []),
  ];
  const isFifteen = (home: string) =>
    existsSync(`${home}/bin/initdb`) &&
    / 15\.\d/.test(spawnSync(`${home}/bin/postgres`, ['--version'], { encoding: 'utf8' }).stdout ?? '');
  return homes.find(isFifteen) ?? null;
}

function databaseProject(name: string, systemServer: string | null, folders: string, exclude: readonly string[]) {
  return {
    root,
    resolve: { alias },
    test: {
      name,
      provide: { systemServer },
      include: [`test/{${folders}}/**/*.test.ts`],
      exclude: [...exclude],
      globalSetup: ['test/database-servers.ts'],
      testTimeout: 120_000,
      hookTimeout: 120_000,
    },
  };
}

const system = postgres15();
if (!system) console.log('PostgreSQL 15 is not installed here: the database tests run on the embedded server alone.');

// unit: pure code, no server. database: real PostgreSQL, each file in a database of its own. browser: the built program in a real browser.
export default defineConfig({
  root,
  test: {
    reporters: ['default', './test/counts-reporter.ts'],
    // most tests wait for a server, a command or a browser: as many at once as there are processors
    maxWorkers: '100%',
    projects: [
      {
        root,
        resolve: { alias },
        test: {
          name: 'unit',
          include: [
            'test/{access,core,model,reports,format,intake,published,architecture,ui,session,seed,mutation}{,/**}/*.test.ts',
            'test/*.test.ts',
          ],
          // generated tests on a busy machine
          testTimeout: 60_000,
        },
      },
      databaseProject('database', null, 'db,changes,answers,commands,faults', []),
      // what reads and writes the database again on a full PostgreSQL 15 where there is one, as a user who is no superuser; answers and
      // commands go through the same reads and writes, and what is about the embedded server itself stays out
      ...(system
        ? [databaseProject('database-15', system, 'db,changes,faults', ['test/db/embedded/**', 'test/faults/server-*'])]
        : []),
      {
        root,
        resolve: { alias },
        test: {
          name: 'browser',
          include: ['test/browser/**/*.test.ts'],
          globalSetup: ['test/browser/program.ts'],
          testTimeout: 120_000,
          hookTimeout: 180_000,
          fileParallelism: false,
          // when all else is through, so that pages are timed on a quiet machine
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
