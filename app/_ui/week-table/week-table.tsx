'use client';

import { useState } from 'react';
import type { WeekCells } from '@/lib/format/week-rows';
import { WEEK } from '@/lib/format/words/week';
import { WEEK_COLUMNS, type WeekColumn } from '@/lib/format/words/week-table';
import table from '../mix-table/mix-table.module.css';
import { TableOut } from '../table-out/table-out';
import styles from './week-table.module.css';

/** What is left out first where there is little room: below 1,100 px, or on a phone only. */
const FOLDS: Readonly<Partial<Record<WeekColumn, 'fold' | 'foldOnPhone'>>> = {
  coversUsual: 'foldOnPhone',
  spendUsual: 'fold',
  soldUsual: 'foldOnPhone',
  leftUsual: 'foldOnPhone',
  leftBefore: 'fold',
};

const isHeld = (column: WeekColumn): boolean => column.endsWith('Usual') || column.endsWith('Before');

function classOf(column: WeekColumn, open: boolean): string {
  const fold = open ? undefined : FOLDS[column];
  const kind = column === 'day' ? undefined : table.number;
  return [fold && table[fold], kind, isHeld(column) && styles.held].filter(Boolean).join(' ');
}

/** The days of the week, Monday first, with the week at the foot. */
export function WeekTable({
  rows,
  sum,
  heads,
  href,
}: {
  rows: readonly { readonly day: string; readonly cells: WeekCells }[];
  sum: WeekCells;
  heads: Readonly<Record<WeekColumn, readonly [string, string]>>;
  href: string;
}) {
  const [open, setOpen] = useState(false);
  const text = () => {
    const head = WEEK_COLUMNS.map((column) => heads[column].filter(Boolean).join(', '));
    const body = [...rows.map(({ cells }) => cells), sum].map((cells) => WEEK_COLUMNS.map((column) => cells[column]));
    return [head, ...body].map((cells) => cells.join('\t')).join('\n');
  };
  return (
    <section
      className={`${table.scroll} ${open ? table.open : ''}`}
      tabIndex={open ? 0 : undefined}
      aria-label={WEEK.region}
    >
      <table className={table.table}>
        <caption>
          {WEEK.caption}
          <TableOut text={text} rows={rows.length} href={href} unfolding={{ open, setOpen }} />
        </caption>
        <thead>
          <tr>
            {WEEK_COLUMNS.map((column) => (
              <th key={column} scope="col" className={classOf(column, open)}>
                {heads[column][0]}
                <span className={table.unit}>{heads[column][1] || '\u00a0'}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ day, cells }) => (
            <Row key={day} cells={cells} open={open} />
          ))}
          <Row cells={sum} open={open} isTotal />
        </tbody>
      </table>
    </section>
  );
}

function Row({ cells, open, isTotal = false }: { cells: WeekCells; open: boolean; isTotal?: boolean }) {
  return (
    <tr className={isTotal ? table.total : undefined}>
      {WEEK_COLUMNS.map((column) =>
        column === 'day' ? (
          <th key={column} scope="row" className={styles.day} data-column="day">
            {cells.day}
          </th>
        ) : (
          <td key={column} className={classOf(column, open)} data-column={column}>
            {cells[column] === WEEK.none ? <span className={table.faint}>{WEEK.none}</span> : cells[column]}
          </td>
        ),
      )}
    </tr>
  );
}
