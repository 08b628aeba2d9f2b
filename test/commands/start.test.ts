import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { otherProcess } from '../other-process';

const folder = mkdtempSync(join(tmpdir(), 'plateworth-start-'));
afterAll(() => rmSync(folder, { recursive: true }));

async function start(args: readonly string[], env: Readonly<Record<string, string>>) {
  const { child, end } = otherProcess('lib/commands/start.ts', args, {
    env: { DATABASE_URL: '', DATA_DIR: folder, ...env },
  });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream?.on('data', (text: Buffer) => {
      said += text;
    });
  }
  return { code: await end, said };
}

test('npm start on a folder that another one serves is refused with a sentence', async () => {
  const first = otherProcess('test/db/embedded/visitor.ts', [folder]);
  await first.line();
  expect(await first.line()).toBe('true');
  expect(await start([], { PORT: '0' })).toEqual({
    code: 1,
    said: `Plateworth already runs on ${folder}. Use that one, or set DATA_DIR to another folder.\n`,
  });
  first.child.stdin?.end();
  expect(await first.end).toBe(0);
});

test('npm start on a port that is taken is refused with a sentence', async () => {
  const other = createServer();
  const port = await new Promise<number>((resolve) => {
    other.listen(0, '127.0.0.1', () => {
      const address = other.address();
      resolve(address !== null && typeof address === 'object' ? address.port : 0);
    });
  });
  const { code, said } = await start([], { PORT: String(port) });
  other.close();
  expect([code, said]).toEqual([
    1,
    `Another program listens on 127.0.0.1:${port}. Stop it, or choose another port: PORT=${port + 1} npm start.\n`,
  ]);
});

test('npm start with a database or a folder that is of no use says so in a sentence', async () => {
  const unreachable = await start([], { DATABASE_URL: 'postgresql://127.0.0.1:1/plateworth' });
  expect(unreachable.code).toBe(1);
  expect(unreachable.said).toMatch(/^The database cannot be reached: .*ECONNREFUSED.* Check DATABASE_URL\.\n$/);
  const file = join(folder, 'a-file');
  writeFileSync(file, '');
  const misplaced = await start([], { DATA_DIR: file });
  expect(misplaced.code).toBe(1);
  expect(misplaced.said).toMatch(
    /^\S+a-file cannot hold the database: .* Set DATA_DIR to a folder that can be written to\.\n$/,
  );
});

test.each([
  [['--hepl'], {}, /There is no option “--hepl”\./],
  [[], { PORT: 'web' }, /PORT is “web”; it has to be a whole number from 0 to 65535\./],
])('npm start -- %j with %j is wrong use: exit code 2', async (args, env, sentence) => {
  const { code, said } = await start(args, env);
  expect(code).toBe(2);
  expect(said).toMatch(sentence);
  expect(said).not.toMatch(/\n\s+at /);
});

test('npm start -- --empty --book FOLDER is wrong use: one of the two', async () => {
  const { code, said } = await start(['--empty', '--book', 'seed/small'], {});
  expect([code, said]).toEqual([2, 'Either --empty or --book, not both.\nTry --help.\n']);
});
