import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));
const alias = { '@': root.replace(/\/$/, '') };

// unit: pure code, no server. database: real PostgreSQL, each file in a database of its own. browser: the built program in a real browser.
export default defineConfig({
  root,
  test: {
    reporters: ['default', './test/counts-reporter.ts'],
    projects: [
      {
        root,
        resolve: { alias },
        test: {
          name: 'unit',
          include: ['test/{core,model,reports,format,intake,published,architecture}{,/**}/*.test.ts', 'test/*.test.ts'],
        },
      },
      {
        root,
        resolve: { alias },
        test: {
          name: 'database',
          include: ['test/{db,changes,answers,commands,faults}/**/*.test.ts'],
          globalSetup: ['test/database-servers.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
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
        },
      },
    ],
  },
});
