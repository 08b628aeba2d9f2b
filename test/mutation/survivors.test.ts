import { expect, test } from 'vitest';
import { type Accepted, compared, type Mutant } from './survivors';

const mutant = (line: string, file = 'lib/model/a.ts'): Mutant => ({ file, line, from: 'x + y', to: 'x - y' });
const accepted = (line: string, file?: string): Accepted => ({ ...mutant(line, file), why: 'y is zero there' });
const A = new Set(['lib/model/a.ts']);

test('compared(survivors, accepted) names what has no reason, and reasons for what is killed', () => {
  expect(compared([mutant('new'), mutant('known')], [accepted('known'), accepted('old')], A)).toEqual({
    unexplained: [mutant('new')],
    stale: [accepted('old')],
  });
});

test('compared(two that read alike) needs a reason for each', () => {
  expect(compared([mutant('twin'), mutant('twin')], [accepted('twin')], A).unexplained).toEqual([mutant('twin')]);
  expect(compared([mutant('twin')], [accepted('twin'), accepted('twin')], A).stale).toEqual([accepted('twin')]);
});

test('compared(a run over some files) leaves the reasons of other files alone', () => {
  expect(compared([], [accepted('elsewhere', 'lib/model/b.ts')], A).stale).toEqual([]);
});
