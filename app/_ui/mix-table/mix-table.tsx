'use client';

import { useMemo, useState } from 'react';
import { MIX_COLUMNS, type MixColumn, sortedWords, TABLE } from '@/lib/format/words/mix-table';
import { TableOut } from '../table-out/table-out';
import { classOf } from './column-class';
import { Row, type Workings } from './mix-row';
import type { MixRow } from './mix-rows';
import styles from './mix-table.module.css';
import type { MixTotal } from './mix-total';
import { nextSorting, type Sorting, sortedRows } from './sorted-rows';
import { tableText } from './table-text';

/** The dishes as a table that sorts, folds and copies; the same facts as the picture. */
export function MixTable({
  rows,
  total,
  heads,
  locale,
  href,
  missingHref,
  workings,
}: {
  rows: readonly MixRow[];
  total: MixTotal;
  heads: Readonly<Record<MixColumn, readonly [string, string]>>;
  locale: string;
  /** The answer's address. */
  href: string;
  missingHref: string;
  workings: Workings;
}) {
  const [sorting, setSorting] = useState<Sorting>({ column: 'contribution', falling: true });
  const [open, setOpen] = useState(false);
  const sorted = useMemo(() => sortedRows(rows, sorting, locale), [rows, sorting, locale]);
  return (
    <section
      className={`${styles.scroll} ${open ? styles.open : ''}`}
      tabIndex={open ? 0 : undefined}
      aria-label={TABLE.region}
    >
      <table className={styles.table}>
        <caption>
          {TABLE.caption}
          <TableOut
            text={() => tableText(heads, sorted, total)}
            rows={rows.length}
            href={href}
            unfolding={{ open, setOpen }}
          />
        </caption>
        <thead>
          <tr>
            {MIX_COLUMNS.map((column) => (
              <Head
                key={column}
                column={column}
                head={heads[column]}
                sorting={sorting}
                opens={column === 'plateCost' && rows.some((row) => row.opens)}
                open={open}
                onSort={() => setSorting(nextSorting(sorting, column))}
              />
            ))}
          </tr>
        </thead>
        <tbody>
          {sorted.map((row) => (
            <Row key={row.item} row={row} open={open} missingHref={missingHref} workings={workings} />
          ))}
          <tr className={styles.total}>
            {MIX_COLUMNS.map((column) =>
              column === 'item' ? (
                <th key={column} scope="row">
                  {total.label}
                  {total.note && <span className={styles.note}>{total.note}</span>}
                </th>
              ) : (
                <td key={column} className={classOf(column, open)} data-column={column}>
                  {total.cells[column]}
                </td>
              ),
            )}
          </tr>
        </tbody>
      </table>
    </section>
  );
}

function Head({
  column,
  head: [name, unit],
  sorting,
  opens,
  open,
  onSort,
}: {
  column: MixColumn;
  head: readonly [string, string];
  sorting: Sorting;
  /** Its figures open to their workings. */
  opens: boolean;
  open: boolean;
  onSort: () => void;
}) {
  const isSorted = sorting.column === column;
  const direction = sorting.falling ? 'descending' : 'ascending';
  const units = [unit, isSorted && sortedWords(column, sorting.falling)].filter(Boolean).join(', ');
  return (
    <th scope="col" className={classOf(column, open)} aria-sort={isSorted ? direction : undefined}>
      <button type="button" className={styles.sort} onClick={onSort}>
        {opens ? <span className={styles.opens}>{name}</span> : name}
      </button>
      <span className={styles.onPaper}>{name}</span>
      <span className={styles.unit}>{units || '\u00a0'}</span>
    </th>
  );
}
