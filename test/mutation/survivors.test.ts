import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type Accepted, compared, type Mutant } from './survivors';
import accepted from './survivors.json';

const mutant = (line: string, file = 'lib/model/a.ts'): Mutant => ({ file, line, from: 'x + y', to: 'x - y' });
const reasoned = (line: string, file?: string): Accepted => ({ ...mutant(line, file), why: 'y is zero there' });
const A = new Set(['lib/model/a.ts']);

test('compared(survivors, accepted) names what has no reason, and reasons for what is killed', () => {
  expect(compared([mutant('new'), mutant('known')], [reasoned('known'), reasoned('old')], A)).toEqual({
    unexplained: [mutant('new')],
    stale: [reasoned('old')],
  });
});

test('compared(two that read alike) needs a reason for each', () => {
  expect(compared([mutant('twin'), mutant('twin')], [reasoned('twin')], A).unexplained).toEqual([mutant('twin')]);
  expect(compared([mutant('twin')], [reasoned('twin'), reasoned('twin')], A).stale).toEqual([reasoned('twin')]);
});

test('compared(a run over some files) leaves the reasons of other files alone', () => {
  expect(compared([], [reasoned('elsewhere', 'lib/model/b.ts')], A).stale).toEqual([]);
});

test('survivors.json names lines that stand in the source', () => {
  const gone = accepted.filter(({ file, line }) => {
    const lines = readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8').split('\n');
    return !lines.some((each) => each.replace(/\s+/g, ' ').trim() === line);
  });
  expect(gone).toEqual([]);
});
