/** Why a file is refused whole: it cannot be read as what it should be, so nothing of it is taken. */
export const FILE_RULES = [
  'unreadable-file', // facts: reason
  'empty-file',
  'not-utf8', // facts: byte, utf16 (yes or no)
  'binary', // a byte that no text has. facts: byte
  'damaged-archive', // a part of an archive that cannot be unpacked. facts: reason
  'workbook', // an XLSX, ODS or ZIP under the name of a CSV
  'no-header', // the first line names no column. facts: needed[], found[]
  'lacks-column', // facts: missing[], found[]
  'column-twice', // facts: at (the columns' numbers)
  'open-quote', // a quoted field that never ends
  'cut-off', // ends inside a record. facts: fields, expected; both null inside a character
  'record-too-long', // facts: limit
  'days-closed', // the days that the file was to speak for are closed. facts: through
  'period-closed', // the file would change what is closed. facts: through
] as const;

/** Why one row cannot be taken. */
export const ROW_RULES = [
  'field-count', // facts: fields, expected
  'blank',
  'too-long', // facts: limit
  'not-a-number', // facts: decimalComma (yes or no)
  'currency-sign',
  'number-size',
  'negative',
  'not-positive',
  'not-whole',
  'out-of-range', // facts: range
  'not-a-date', // facts: iso[] (what was probably meant)
  'no-such-day',
  'far-day', // facts: from, to
  'not-a-time',
  'not-yes-no',
  'not-one-of', // facts: allowed[]
  'not-a-currency',
  'not-a-locale',
  'not-a-time-zone',
  'not-a-clock-time',
  'unknown-setting', // facts: allowed[]
  'other-venue', // facts: venue
  'said-twice', // facts: line (of the first)
  'name-taken', // facts: kind (what the name already stands for)
  'measure-differs', // facts: measure, validFrom
  'kind-differs', // facts: kind, line
  'unknown-unit',
  'pair-incomplete', // facts: other (column)
  'same-dimension', // facts: other (column)
  'dish-output', // a dish is one portion
  'dish-loss',
  'estimate-without-dish',
  'batch-only', // says something of a batch, and a dish has none
  'nothing-delivered', // goods without packs and quantity
  'goods-without-code',
  'unknown-ingredient', // facts: kind (what it stands for, or null)
  'unknown-offer', // facts: supplier
  'unknown-recipe', // facts: validFrom (ISO or ''), known[] (its versions' days), kind
  'unknown-item',
  'unknown-trial', // facts: day (ISO)
  'not-countable', // facts: kind
  'not-tried', // a trial of an ingredient
  'tax-missing',
  'end-without-agreed',
  'end-before-start', // facts: start
  'gtin',
  'chosen-from-alone',
  'chosen-twice', // facts: line (of the first)
  'none-and-more',
  'void',
  'outside-days', // facts: from, to
  'closed', // facts: through
] as const;

export type FileRule = (typeof FILE_RULES)[number];
export type RowRule = (typeof ROW_RULES)[number];
export type RefusalFacts = Readonly<Record<string, string | number | null | readonly string[]>>;

/** What is wrong with one row: which column, what stands in it, which rule it breaks, and the particulars that the sentence needs. */
export interface RowFault {
  readonly rule: RowRule;
  readonly column: string | null;
  readonly value: string | null;
  readonly facts: RefusalFacts;
}

/** A refused row with its place: `line` counts the lines of the file from 1, the header's included. */
export interface RowRefusal extends RowFault {
  readonly line: number;
}

/** A file refused whole; line null where no line is at fault. */
export interface FileRefusal {
  readonly rule: FileRule;
  readonly line: number | null;
  readonly column: string | null;
  readonly value: string | null;
  readonly facts: RefusalFacts;
}

/** Rows that wait for something another file may bring; they are tried again after every load. All others wait to be mended. */
export const WAITS_FOR_ANOTHER_FILE: readonly RowRule[] = [
  'unknown-ingredient',
  'unknown-offer',
  'unknown-recipe',
  'unknown-item',
  'unknown-trial',
  'not-countable', // what only the menu knew may turn out to be a component
];
