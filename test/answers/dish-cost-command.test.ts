import { expect, test } from 'vitest';
import { dishCostShape } from '@/lib/answers/dish-cost-shape';
import { command } from '../commands/command';
import { freshDatabase } from '../fresh-database';

const { url } = await freshDatabase();
const report = (...words: string[]) => command(url, 'report', 'dish-cost', ...words);

test('report dish-cost gives the working as JSON, as CSV and in plain text, and says in a sentence what is wrong', async () => {
  expect((await command(url, 'load', 'seed/small')).code).toBe(0);

  const asked = ['--item', 'Lemon choux', '--date', '2026-10-14'];
  const json = await report(...asked, '--json');
  expect([json.code, json.stderr]).toEqual([0, '']);
  const answer = dishCostShape.parse(JSON.parse(json.stdout));
  expect(answer).toMatchObject({ item: 'Lemon choux', date: '2026-10-14', venue: 'Marram House', period: null });

  const csv = await report(...asked, '--csv');
  expect(csv.stdout.split('\r\n')[0]).toContain('level,item,kind');

  const plain = await report(...asked);
  expect(plain.code).toBe(0);
  expect(plain.stdout).toContain('Lemon choux, one portion, on 14 October 2026, dine in');
  // the last line is the sum of the lines that are not set in, to a tenth of a cent
  const lines = plain.stdout.split('\n').filter((line) => /\d\.\d{3}(?: {2}|$)/.test(line));
  const printed = (line: string) => Number(/(\d+\.\d{3})(?: {2}|$)/.exec(line)?.[1]?.replace('.', ''));
  const top = lines.slice(0, -1).filter((line) => !line.startsWith(' '));
  expect(top.reduce((sum, line) => sum + printed(line), 0)).toBe(printed(lines.at(-1) ?? ''));
  expect(printed(lines.at(-1) ?? '')).toBe(Math.round(Number(answer.plateCost) * 1000));

  const inMonth = await report('--item', 'Lemon choux', '--month', '2026-10');
  expect(inMonth.stdout).toContain('October 2026: ');

  const wrong = async (...words: string[]) => {
    const { code, stderr } = await report(...words);
    expect(stderr).not.toMatch(/\n\s+at /);
    return [code, stderr.split('\n')[0]];
  };
  expect(await wrong()).toEqual([2, expect.stringContaining('--item NAME')]);
  expect(await wrong('--item', 'Xyz')).toEqual([1, expect.stringContaining('“Xyz”')]);
  expect(await wrong('--item', 'Lemon choux', '--date', '14.10.2026')).toEqual([
    2,
    expect.stringContaining('14.10.2026'),
  ]);
});
