import type { ZodType } from 'zod';
import { type Day, dayText } from '../../core/days';
import { nameKey } from '../../core/name-key';
import type { VenueClock } from '../business-day';
import { CellFault, NAME_LIMIT } from '../cells';
import { day } from '../dates';
import type { Columns } from '../file/header';
import type { NumberStyle } from '../numbers';

/** How the rows of one file are to be understood. */
export interface RowReading {
  readonly style: NumberStyle;
  readonly clock: VenueClock;
}

/** The cells of a row by column, as they stand in the file. */
export type Cells = Readonly<Record<string, string>>;

/** One kind of file: its columns, how a row of it is read, and what a row speaks for. */
export interface RowKind<Row> {
  readonly columns: Columns;
  readonly schema: (reading: RowReading) => ZodType<Row>;
  /**
   * What a row speaks for, however the rest of it reads: a later row for the same thing takes its place. Null where that cannot be
   * read.
   */
  readonly key: (cells: Cells, reading: RowReading) => string | null;
  /** The business day that a row belongs to, for files that speak for days; null where it cannot be read. */
  readonly day?: (cells: Cells, reading: RowReading) => Day | null;
}

/** A name's part of a key; null where the cell is blank or no name. */
export function keyOfName(cell: string | undefined): string | null {
  const key = nameKey(cell ?? '');
  return key === '' || key.length > NAME_LIMIT ? null : key;
}

/** A day's part of a key: blank is "from the beginning"; null where it cannot be read. */
export function keyOfDay(cell: string | undefined): string | null {
  const text = (cell ?? '').trim();
  if (text === '') return '';
  const found = day(text);
  return found instanceof CellFault ? null : dayText(found);
}

/** The parts of a key joined; null where one of them is. */
export function keyOf(...parts: readonly (string | null)[]): string | null {
  return parts.includes(null) ? null : parts.join('|');
}
