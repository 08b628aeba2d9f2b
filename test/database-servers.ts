import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client, type ClientConfig } from 'pg';
import type { TestProject } from 'vitest/node';
import { openEmbedded } from '../lib/db/embedded/open-embedded';
import { postmasterOf } from '../lib/db/embedded/postmaster';
import type { ServerPrograms } from '../lib/db/embedded/programs';
import { migrate } from '../lib/db/migrate';

/** Where the tests of a project find their server: a user who may make databases there, and a migrated database to copy. */
export interface TestServer {
  readonly host: string;
  readonly port: number;
  readonly user: string;
  readonly password: string;
  readonly template: string;
}

declare module 'vitest' {
  interface ProvidedContext {
    testServer: TestServer;
    /** Folder of an installed PostgreSQL 15; null: the embedded server. */
    systemServer: string | null;
  }
}

/**
 * Starts the server of a test project in a temporary folder: `database` on the embedded one as its owner, `database-15` on the
 * installed PostgreSQL 15 as a user who is no superuser, as DATABASE_URL mostly names one.
 */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const made = spawnSync(process.execPath, ['prisma/generate.mjs'], { encoding: 'utf8' });
  if (made.status !== 0) throw new Error(made.stderr);
  const { systemServer } = project.getProvidedContext();
  const folder = mkdtempSync(join(tmpdir(), 'plateworth-test-'));
  // a test's server need not outlive the machine's power, only the processes
  const settings = ['fsync=off', 'max_connections=300'];
  const server = await openEmbedded(
    folder,
    systemServer ? { programs: systemServer as ServerPrograms, settings } : { settings },
  );
  const owner = systemServer ? await guest(server.connection) : server.connection;
  await migrate(owner);
  const { host = '', port = 0, user = '', password, database: template = '' } = owner;
  project.provide('testServer', { host, port, user, password: String(password), template });
  const guard = guardOf(folder);
  return async () => {
    await server.leave();
    guard.kill();
    rmSync(folder, { recursive: true });
  };
}

/** Stops the server and removes its folder when this run ends without doing so: when it is killed, the guard's input closes. */
function guardOf(folder: string): ChildProcess {
  const data = join(folder, 'postgres');
  const server = postmasterOf(data)?.pid;
  const script = `process.stdin.resume().on('end', () => {
    process.kill(${server}, 'SIGINT');
    setTimeout(() => fs.rmSync(${JSON.stringify(folder)}, { recursive: true, force: true }), 3000);
  })`;
  const guard = spawn(process.execPath, ['-e', script], { detached: true, stdio: ['pipe', 'ignore', 'ignore'] });
  guard.unref();
  return guard;
}

/** A user who owns a database and may make databases and roles, and is no superuser. */
async function guest(superuser: ClientConfig): Promise<ClientConfig> {
  const client = new Client(superuser);
  await client.connect();
  await client.query(`create role guest login createdb createrole password 'of the house'`);
  await client.query('create database guest_house owner guest template template0');
  await client.end();
  return { ...superuser, user: 'guest', password: 'of the house', database: 'guest_house' };
}
