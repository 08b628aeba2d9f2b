import type { MixColumn } from '@/lib/format/words/mix-table';
import type { MixRow } from './mix-rows';

export interface Sorting {
  readonly column: MixColumn;
  readonly falling: boolean;
}

/** The rows in the order asked for; what is not known stands last either way, and equals keep their order. */
export function sortedRows(rows: readonly MixRow[], { column, falling }: Sorting, locale: string): readonly MixRow[] {
  const sign = falling ? -1 : 1;
  const collate = new Intl.Collator(locale, { sensitivity: 'base', numeric: true });
  return [...rows].sort((a, b) => {
    const left = a.keys[column];
    const right = b.keys[column];
    if (left === null || right === null) return Number(left === null) - Number(right === null);
    if (typeof left === 'string' || typeof right === 'string')
      return sign * collate.compare(String(left), String(right));
    return sign * (left - right);
  });
}

/** A click on a head: the other way round where it is sorted by already, else the way that is asked for most. */
export function nextSorting(now: Sorting, column: MixColumn): Sorting {
  if (now.column === column) return { column, falling: !now.falling };
  return { column, falling: column !== 'item' && column !== 'class' && column !== 'sure' };
}
