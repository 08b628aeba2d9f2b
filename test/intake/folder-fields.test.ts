import { expect, test } from 'vitest';
import { FILE_KINDS } from '@/lib/intake/file-kinds';
import { FOLDER_FIELDS } from '@/lib/intake/folder-fields';
import { ROW_KINDS } from '@/lib/intake/row-kinds';
import { waitingCells } from '@/lib/intake/waiting-cells';

test.each(FILE_KINDS)('FOLDER_FIELDS of %s are the columns that are read', (kind) => {
  const { needed, optional } = ROW_KINDS[kind].columns;
  const read = new Set([...needed.flat(), ...optional]);
  read.delete('sold_at'); // a day sum has no time
  expect(FOLDER_FIELDS[kind].map(({ name }) => name).sort()).toEqual([...read].sort());
});

test('waitingCells(kind, row) gives the cells in the order of the file, so that they are refused again for the same reason', () => {
  const move = { date: '2026-10-01', item: 'Nougat', quantity: '1,5', unit: 'each', reason: 'broken' };
  const kept = { raw: move, rule: 'unknown-item', day: '2026-10-01' };
  expect(waitingCells('moves', kept)).toEqual(['2026-10-01', 'Nougat', '1.5', 'each', 'broken', '', '']);
  expect(waitingCells('moves', { ...kept, rule: 'not-a-number' })[2]).toBe('1,5');
  const long = { ...kept, rule: 'field-count', raw: { ...move, '+1': 'more' } };
  expect(waitingCells('moves', long)).toEqual(['2026-10-01', 'Nougat', '1,5', 'each', 'broken', '', '', 'more']);
  expect(waitingCells('moves', { ...kept, rule: 'field-count', raw: { date: '2026-10-01', item: 'Nougat' } })).toEqual([
    '2026-10-01',
    'Nougat',
  ]);
  const sale = {
    raw: { sold_at: '2026-10-02T03:00', item: 'Nougat', sold: '1' },
    rule: 'unknown-item',
    day: '2026-10-01',
  };
  expect(waitingCells('sales', sale).slice(0, 4)).toEqual(['2026-10-01', 'Nougat', '', '1']);
  expect(waitingCells('sales', { ...sale, day: null, rule: 'not-a-time' })[0]).toBe('2026-10-02T03:00');
});
