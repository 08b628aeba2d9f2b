'use client';

import { useState } from 'react';
import { YEAR } from '@/lib/format/words/year';
import { YEAR_COLUMNS, type YearColumn, yearCaption } from '@/lib/format/words/year-table';
import type { PrintedYearRow } from '@/lib/format/year-rows';
import table from '../mix-table/mix-table.module.css';
import { TableOut } from '../table-out/table-out';
import styles from './year-table.module.css';

type Sum = Readonly<Partial<Record<YearColumn, string>>>;

/** What is left out first where there is little room: below 1,100 px, or on a phone only. */
const FOLDS: Readonly<Partial<Record<YearColumn, 'fold' | 'foldOnPhone'>>> = {
  days: 'fold',
  known: 'fold',
  before: 'fold',
  sold: 'foldOnPhone',
  margin: 'foldOnPhone',
  menu: 'foldOnPhone',
};

function classOf(column: YearColumn, open: boolean): string {
  const fold = open ? undefined : FOLDS[column];
  const kind = column === 'period' ? undefined : column === 'menu' ? `${table.gap} ${styles.menu}` : table.number;
  return [fold && table[fold], kind].filter(Boolean).join(' ');
}

/** The table as a spreadsheet takes it from the clipboard. */
function textOf(
  heads: Readonly<Record<YearColumn, readonly [string, string]>>,
  rows: readonly PrintedYearRow[],
  sum: Sum,
) {
  const head = YEAR_COLUMNS.map((column) => heads[column].filter(Boolean).join(', '));
  const body = rows.map(({ cells }) => YEAR_COLUMNS.map((column) => cells[column]));
  const foot = YEAR_COLUMNS.map((column) => sum[column] ?? '');
  return [head, ...body, foot].map((cells) => cells.join('\t')).join('\n');
}

/** The periods of the year, latest first, with the sum of the last year at the foot. */
export function YearTable({
  rows,
  sum,
  heads,
  isMonths,
  href,
}: {
  rows: readonly PrintedYearRow[];
  sum: Sum;
  heads: Readonly<Record<YearColumn, readonly [string, string]>>;
  isMonths: boolean;
  href: string;
}) {
  const [open, setOpen] = useState(false);
  return (
    <section
      className={`${table.scroll} ${open ? table.open : ''}`}
      tabIndex={open ? 0 : undefined}
      aria-label={YEAR.region}
    >
      <table className={table.table}>
        <caption>
          {yearCaption(isMonths)}
          <TableOut
            text={() => textOf(heads, rows, sum)}
            rows={rows.length}
            href={href}
            unfolding={{ open, setOpen }}
          />
        </caption>
        <thead>
          <tr>
            {YEAR_COLUMNS.map((column) => (
              <th key={column} scope="col" className={classOf(column, open)}>
                {heads[column][0]}
                <span className={table.unit}>{heads[column][1] || '\u00a0'}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ period, note, cells }) => (
            <tr key={period} data-period={period}>
              {YEAR_COLUMNS.map((column) =>
                column === 'period' ? (
                  <th key={column} scope="row" className={styles.period} data-column="period">
                    {cells.period}
                    {note && <span className={table.note}>{note}</span>}
                  </th>
                ) : (
                  <td key={column} className={classOf(column, open)} data-column={column}>
                    {cells[column] === YEAR.none ? <span className={table.faint}>{YEAR.none}</span> : cells[column]}
                  </td>
                ),
              )}
            </tr>
          ))}
          <tr className={table.total}>
            {YEAR_COLUMNS.map((column) =>
              column === 'period' ? (
                <th key={column} scope="row">
                  {sum.period}
                </th>
              ) : (
                <td key={column} className={classOf(column, open)} data-column={column}>
                  {sum[column]}
                </td>
              ),
            )}
          </tr>
        </tbody>
      </table>
    </section>
  );
}
