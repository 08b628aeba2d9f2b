'use client';

import { PERIOD_COLUMNS, PERIODS, type PeriodColumn } from '@/lib/format/words/dish-periods';
import { TableOut } from '../table-out/table-out';
import styles from './dish-periods.module.css';
import type { PeriodRow } from './period-rows';

const FOLDS: Readonly<Partial<Record<PeriodColumn, string | undefined>>> = {
  foodCost: styles.foldOnPhone,
  share: styles.foldOnPhone,
  events: styles.fold,
};

/** The same as the picture, a row a period, the latest first. */
export function PeriodsTable({
  rows,
  heads,
  href,
}: {
  rows: readonly PeriodRow[];
  heads: Readonly<Record<PeriodColumn, readonly [string, string]>>;
  href: string;
}) {
  const text = () =>
    [
      PERIOD_COLUMNS.map((column) => heads[column].filter(Boolean).join(', ')),
      ...rows.map(({ cells }) => PERIOD_COLUMNS.map((column) => cells[column])),
    ]
      .map((cells) => cells.join('\t'))
      .join('\n');
  return (
    <table className={styles.table}>
      <caption>
        {PERIODS.table}
        <TableOut text={text} rows={rows.length} href={href} />
      </caption>
      <thead>
        <tr>
          {PERIOD_COLUMNS.map((column) => (
            <th key={column} scope="col" className={classOf(column)}>
              {heads[column][0]}
              <span className={styles.unit}>{heads[column][1] || '\u00a0'}</span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ key, onSale, cells }) => (
          <tr key={key} className={onSale ? undefined : styles.offRow}>
            {PERIOD_COLUMNS.map((column) =>
              column === 'month' ? (
                <th key={column} scope="row" data-column={column}>
                  {cells[column]}
                  {cells.events && <span className={styles.eventsBelow}>{cells.events}</span>}
                </th>
              ) : (
                <td key={column} className={classOf(column)} data-column={column}>
                  {cells[column]}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function classOf(column: PeriodColumn): string {
  const kind = column === 'month' ? undefined : column === 'events' ? styles.gap : styles.number;
  return [kind, FOLDS[column]].filter(Boolean).join(' ');
}
