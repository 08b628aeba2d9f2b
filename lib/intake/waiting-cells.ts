import { WAITS_FOR_ANOTHER_FILE } from '../model/refusal';
import type { FileKind } from './file-kinds';
import { FOLDER_FIELDS } from './folder-fields';

/** A refused row as it was kept. */
export interface KeptRow {
  readonly raw: Readonly<Record<string, string>>;
  readonly rule: string;
  /** The business day that was read from it, as ISO text. */
  readonly day: string | null;
}

const DECIMAL_COMMA = /^\s*[+-]?\d*,\d+\s*$/;

/**
 * The cells of a refused row in the columns of the file that the program writes, so that it is refused there again for the same reason:
 * one that had too many cells has too many, one that had too few ends early. A decimal comma of a row that could be read was one, and is written
 * as a point; the day of a time stamp stands in for it.
 */
export function waitingCells(kind: FileKind, { raw, rule, day }: KeptRow): readonly string[] {
  const wellRead = WAITS_FOR_ANOTHER_FILE.some((known) => known === rule);
  const cells = FOLDER_FIELDS[kind].map(({ name, type }) => {
    const cell = raw[name] ?? '';
    if (kind === 'sales' && name === 'date') return cell.trim() === '' ? (day ?? raw.sold_at ?? '') : cell;
    return wellRead && type === 'number' && DECIMAL_COMMA.test(cell) ? cell.replace(',', '.') : cell;
  });
  if (rule !== 'field-count') return cells;
  const extra = Object.entries(raw).flatMap(([name, cell]) => (name.startsWith('+') ? [cell] : []));
  return extra.length > 0 ? [...cells, ...extra] : withoutBlankEnd(cells);
}

function withoutBlankEnd(cells: readonly string[]): readonly string[] {
  const last = cells.findLastIndex((cell) => cell.trim() !== '');
  return cells.slice(0, last + 1);
}
