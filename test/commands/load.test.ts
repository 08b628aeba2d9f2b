import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { loadReportShape } from '@/lib/changes/load-report-shape';
import { file, folder } from '../changes/folders';
import { freshDatabase } from '../fresh-database';

const { url } = await freshDatabase();

/** The command as package.json runs it. */
function load(...args: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--import', 'tsx', 'lib/commands/load.ts', ...args], {
    encoding: 'utf8',
    env: { ...process.env, DATABASE_URL: url },
  });
  expect(`${stdout}${stderr}`).not.toMatch(/^\s+at .*:\d+/m); // no stack trace
  return { status, stdout, stderr };
}

const MENU = ['item,valid_from,price,tax_pct,tax_included', 'Tart,,11,10,yes'];
const SALES = ['date,item,sold', '2026-10-01,Tart,2', '1.10.2026,Tart,2'];
const house = folder({ 'menu.csv': MENU, 'sales.csv': SALES, 'budget.csv': 'x' }, 'Marram House');

test('load FOLDER prints the files, what was refused and what is not read, and ends with 3', () => {
  const { status, stdout } = load(house);
  expect(status).toBe(3);
  expect(stdout).toContain('Loaded into Marram House.');
  expect(stdout).toMatch(/^sales\.csv +2 +1 +0 +0 +0 +1$/m);
  expect(stdout).toContain('Refused in sales.csv:\n  line 3, date “1.10.2026”: ');
});

test('load FOLDER says the same refusal of many rows once, and lets nothing of a file steer the terminal', () => {
  const rows = ['2026-10-02,Eclair,1', '2026-10-02,Eclair,2', '2026-10-02,Eclair,3', '2026-10-02,Fl\u001b[31man,1'];
  const { stdout } = load(folder({ 'sales.csv': [SALES[0] ?? '', ...rows] }), '--venue', 'Marram House');
  expect(stdout).toMatch(/^ {2}line 2 and 2 more rows, item “Eclair”: There is no “Eclair” yet\./m);
  expect(stdout.match(/Eclair/g)).toHaveLength(2);
  expect(stdout).toContain('item “Fl\\u001b[31man”');
  expect(stdout).not.toContain('\u001b');
});

test('load FOLDER that holds no file that is known says that nothing was loaded, and ends with 1', () => {
  const { status, stdout } = load(folder({ 'budget.csv': 'x' }));
  expect([status, stdout]).toEqual([
    1,
    expect.stringMatching(/^Nothing was loaded\.\n\nNot read:\n {2}What budget\.csv holds/),
  ]);
});

test('load with an option that it does not have says so in plain words', () => {
  const said = (...args: string[]) => load(house, ...args).stderr;
  expect(said('--colour', 'red')).toBe('There is no option “--colour”.\nTry --help.\n');
  expect(said('--venue')).toBe('The option --venue needs a value after it.\nTry --help.\n');
  expect(said('--venue', '--json')).toBe('The option --venue needs a value after it.\nTry --help.\n');
  expect(said('--json=yes')).toBe('The option --json takes no value.\nTry --help.\n');
});

test('load CSV --json prints the report as its shape says, and ends with 0', () => {
  const { status, stdout } = load(
    file('sales.csv', SALES.slice(0, 2)),
    '--json',
    '--source',
    'till',
    '--days',
    '2026-10-01..2026-10-02',
  );
  expect(status).toBe(0);
  const report = loadReportShape.parse(JSON.parse(stdout));
  expect(report.files).toMatchObject([{ file: 'sales.csv', source: 'till', read: 1, taken: 1 }]);
});

test('load of a file of which nothing can be kept ends with 1 and a sentence', () => {
  const { status, stdout } = load(file('sales.csv', ''));
  expect(status).toBe(1);
  expect(stdout).toContain('The file is empty.');
});

test('load that is called wrongly ends with 2 and a sentence', () => {
  const wrong = [
    [],
    [house, house],
    ['/no/such/place'],
    [house, '--days', 'yesterday'],
    [house, '--colour', 'red'],
    [house, '--venue', ''],
  ];
  for (const args of wrong) {
    const { status, stdout, stderr } = load(...args);
    expect([args, status, stdout]).toEqual([args, 2, '']);
    expect(stderr).toMatch(/\nTry --help\.\n$/);
  }
});

test('load --help says what it brings in and how it ends', () => {
  const { status, stdout } = load('--help');
  expect(status).toBe(0);
  expect(stdout).toContain('Exit code: 0 nothing refused, 3 some rows refused, 1 nothing could be kept, 2 wrong use.');
});
