import { expect, test } from 'vitest';
import { terminalJson, terminalLines, terminalText } from '@/lib/format/terminal-text';
import { textTable } from '@/lib/format/text-table';

const NASTY = '\u001b[2Jred\u202etraT\u2066\u009b\r\n';
const HARMLESS = 'Crème brûlée “Marée” 🍮 שלום';

test('terminalText(text) writes what would steer a terminal out, and leaves letters alone', () => {
  expect(terminalText(NASTY)).toBe('\\u001b[2Jred\\u202etraT\\u2066\\u009b\\u000d\\u000a');
  expect(terminalText(HARMLESS)).toBe(HARMLESS);
});

test('terminalLines(text) keeps its lines', () => {
  expect(terminalLines('a\u0007\nb\n')).toBe('a\\u0007\nb\n');
});

test('terminalJson(value) reads back as the same value and holds nothing that steers a terminal', () => {
  const text = terminalJson({ item: NASTY });
  expect(JSON.parse(text)).toEqual({ item: NASTY });
  for (const sign of NASTY.match(/[\p{Cc}\p{Cf}]/gu) ?? []) if (sign !== '\n') expect(text).not.toContain(sign);
});

test('textTable(columns, rows) lets no cell break out of its row', () => {
  const columns = [{ head: 'item', side: 'left' }] as const;
  expect(textTable(columns, [['a\nb\u001b[1m']])).toBe('item\n-----------------\na\\u000ab\\u001b[1m\n');
});
