import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readRecords } from '@/lib/intake/file/records';
import { ABC, recordsOf } from './reading';

const soak = process.env.SOAK ? 20_000 : 500;

test('readRecords(bytes) numbers lines from 1, the header included, and skips blank ones', async () => {
  const { records } = await recordsOf('a,b\n1,2\n\n ,\n3,4\n');
  expect(records).toEqual([
    [2, '1', '2'],
    [5, '3', '4'],
  ]);
});

test('readRecords(bytes) gives the line on which a record of several lines begins, whatever the line ends', async () => {
  for (const end of ['\n', '\r\n', '\r']) {
    const { records } = await recordsOf(['a,b', '1,"x', 'y', 'z"', '', '3,4', '5,"p', 'q"', '7,8', ''].join(end));
    expect(records.map(([line]) => line)).toEqual([2, 6, 7, 9]);
    expect(records[0]).toEqual([2, '1', ['x', 'y', 'z'].join(end)]);
  }
});

test('readRecords(bytes) takes separators , ; and tab from the header, and a BOM away', async () => {
  for (const separator of [',', ';', '\t']) {
    const { records, header } = await recordsOf(`\ufeffB ${separator}A\n1${separator}2`);
    expect(header).toEqual({ separator, names: ['b', 'a'], ignored: [] });
    expect(records).toEqual([[2, '1', '2']]);
  }
});

test('readRecords(bytes) keeps a quote inside an unquoted cell', async () => {
  expect((await recordsOf('a,b\n10" ring,"say ""hm"""\n')).records).toEqual([[2, '10" ring', 'say "hm"']]);
});

test('readRecords(bytes) lists columns that it does not know as ignored, and needs no name for blank ones', async () => {
  const { header, refusal } = await recordsOf('a,Colour,b,\n1,red,2,\n');
  expect(refusal).toBeNull();
  expect(header?.ignored).toEqual(['Colour']);
});

describe('readRecords(bytes) refuses the whole file:', () => {
  const refusalOf = async (bytes: Uint8Array | string) => (await recordsOf(bytes)).refusal;

  test('an empty one', async () => {
    for (const empty of ['', '\ufeff', '\n\n', ' \r\n;;\n'])
      expect(await refusalOf(empty)).toMatchObject({ rule: 'empty-file' });
  });

  test('one without a header, naming what it needs', async () => {
    expect(await refusalOf('1,2\n3,4\n')).toMatchObject({ rule: 'no-header', line: 1, facts: { missing: ['a', 'b'] } });
  });

  test('one that lacks a needed column', async () => {
    expect(await refusalOf('a,c\n1,2\n')).toMatchObject({
      rule: 'lacks-column',
      column: 'b',
      facts: { missing: ['b'] },
    });
  });

  test('one that names a column twice', async () => {
    expect(await refusalOf('a,b,A\n1,2,3\n')).toMatchObject({
      rule: 'column-twice',
      column: 'a',
      facts: { at: ['1', '3'] },
    });
  });

  test('one that is not UTF-8, with the byte and the line', async () => {
    const latin1 = Buffer.from('a,b\n1,2\nCr\u00e8me,3\n', 'latin1');
    expect(await refusalOf(latin1)).toMatchObject({ rule: 'not-utf8', line: 3, facts: { byte: 11 } });
    expect(await refusalOf(Buffer.from('\ufeffa,b\n1,2\n', 'utf16le'))).toMatchObject({
      rule: 'not-utf8',
      facts: { utf16: 'yes' },
    });
    expect(await refusalOf(Buffer.from('a,b\n1,2\n', 'utf16le'))).toMatchObject({ rule: 'binary', facts: { byte: 2 } });
  });

  test('a workbook under the name of a CSV file', async () => {
    expect(await refusalOf(Buffer.from('504b0304140006000800', 'hex'))).toMatchObject({ rule: 'workbook' });
  });

  test('an open quote, with the line on which its record begins', async () => {
    expect(await refusalOf('a,b\n1,2\n3,"4\n5,6\n')).toMatchObject({ rule: 'open-quote', line: 3 });
    expect(await refusalOf('a,b\n1,2\n3,"4\n5,6\n7,"8"\n')).toMatchObject({ rule: 'open-quote', line: 3 });
    expect(await refusalOf('a,"b\n1,2\n')).toMatchObject({ rule: 'open-quote', line: 1 });
    const swallowed = `a,b\n1,"2\n${'3,4\n'.repeat(600_000)}`;
    expect(await refusalOf(swallowed)).toMatchObject({ rule: 'open-quote', line: 2 });
  });

  test('one that ends inside its last record, or inside a letter', async () => {
    const cut = await refusalOf('a,b\n1,2\n3');
    expect(cut).toMatchObject({ rule: 'cut-off', line: 3, facts: { fields: 1, expected: 2 } });
    const letter = Buffer.from('a,b\n1,2\n3,\u00e8', 'utf8').subarray(0, -1);
    expect(await refusalOf(letter)).toMatchObject({ rule: 'cut-off', line: 3, facts: { fields: null } });
  });

  test('one line of 50 MB, at once and without holding it', async () => {
    async function* endless() {
      for (let sent = 0; sent < 50; sent++) yield Buffer.alloc(1 << 20, 'x');
      expect.unreachable('all of it was read');
    }
    const state = { refusal: null, header: null };
    for await (const _ of readRecords(endless(), ABC, state)) expect.unreachable('there is no record');
    expect(state.refusal).toMatchObject({ rule: 'record-too-long', line: 1 });
    const commas = `a,b\n1,2\n${','.repeat(5_000_000)}\n`;
    expect(await refusalOf(commas)).toMatchObject({ rule: 'record-too-long', line: 3 });
  });
});

test('readRecords(bytes) leaves a short row in the middle, and a last one that ends its line, to be refused alone', async () => {
  expect(await recordsOf('a,b\n1\n2,3\n4\n')).toMatchObject({
    refusal: null,
    records: [
      [2, '1'],
      [3, '2', '3'],
      [4, '4'],
    ],
  });
});

test('readRecords(bytes) gives back the cells that were written, in chunks of any size', async () => {
  const cell = fc.string({ unit: fc.constantFrom('a', '"', ',', ';', '\n', '\r\n', ' ', '\u00e8', '\u{1f36b}') });
  const written = (text: string) => `"${text.replaceAll('"', '""')}"`;
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(cell, cell), { maxLength: 8 }),
      fc.integer({ min: 1, max: 40 }),
      async (rows, size) => {
        // a cell over several lines that begins with a quote is taken for one whose quote was left open
        fc.pre(rows.flat().every((text) => !(text.startsWith('"') && /[\r\n]/.test(text))));
        const { records, refusal } = await recordsOf(
          ['a,b', ...rows.map((row) => row.map(written).join(','))].join('\n'),
          size,
        );
        expect(refusal).toBeNull();
        const lines = rows.map((row) => row.join('').split(/\r\n|\n/).length);
        const begins = lines.map((_, place) => 2 + lines.slice(0, place).reduce((sum, count) => sum + count, 0));
        const kept = rows
          .map((row, place) => [begins[place], ...row])
          .filter(([, ...row]) => row.join('').trim() !== '');
        expect(records).toEqual(kept);
      },
    ),
    { numRuns: soak },
  );
}, 120_000);

test('readRecords(bytes) of any bytes ends with records or one refusal, the same for chunks of any size', async () => {
  const bytes = fc.oneof(
    fc.uint8Array({ maxLength: 60 }),
    fc
      .string({ unit: fc.constantFrom('a', 'b', ',', ';', '"', '\n', '\r', '1', '\u00e8'), maxLength: 60 })
      .map((text) => Buffer.from(text)),
    fc.uint8Array({ maxLength: 60 }).map((tail) => Buffer.concat([Buffer.from('a,b\n1,2\n'), tail])),
  );
  await fc.assert(
    fc.asyncProperty(bytes, fc.integer({ min: 1, max: 9 }), async (file, size) => {
      const whole = await recordsOf(file);
      const inPieces = await recordsOf(file, size);
      expect(inPieces.refusal !== null).toBe(whole.refusal !== null);
      if (!whole.refusal) expect(inPieces).toEqual(whole);
    }),
    { numRuns: soak },
  );
}, 120_000);
