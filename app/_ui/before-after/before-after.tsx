'use client';

import { useState } from 'react';
import { BEFORE_AFTER, moreDishes } from '@/lib/format/words/before-after';
import { TableOut } from '../table-out/table-out';
import styles from './before-after.module.css';
import { CHANGE_COLUMNS, type ChangeColumn, type ChangeRow, type ChangeTable } from './change-row';
import { Dumbbell } from './dumbbell';

/** What is left out first where there is little room. */
const FOLDS: Readonly<Partial<Record<ChangeColumn, string | undefined>>> = {
  before: styles.fold,
  foodCost: styles.foldOnPhone,
  holdMargin: styles.fold,
  holdPct: styles.fold,
  breakEven: styles.fold,
  class: styles.foldOnPhone,
};

/** The dishes that a change of prices touches, each before and after on one shared axis, and the period as their total. */
export function BeforeAfter({
  table,
  heads,
  locale,
  href,
  text,
  onMore,
}: {
  table: ChangeTable;
  heads: Readonly<Record<ChangeColumn, readonly [string, string]>>;
  locale: string;
  /** Where a spreadsheet fetches the same rows. */
  href: string;
  /** All rows as text, for the clipboard. */
  text: () => string;
  onMore: () => void;
}) {
  const [fromZero, setFromZero] = useState(false);
  const [open, setOpen] = useState(false);
  const { rows, axis, more } = table;
  return (
    <section
      className={`${styles.scroll} ${open ? styles.open : ''}`}
      tabIndex={open ? 0 : undefined}
      aria-label={BEFORE_AFTER.region}
    >
      <table className={styles.table}>
        <caption>
          {BEFORE_AFTER.caption}
          <TableOut text={text} rows={rows.length + more} href={href} unfolding={{ open, setOpen }} />
        </caption>
        <thead>
          <tr>
            <th scope="col" className={styles.dishHead}>
              {BEFORE_AFTER.dish}
            </th>
            <th scope="col" className={styles.picture}>
              <button type="button" aria-pressed={fromZero} onClick={() => setFromZero(!fromZero)}>
                {fromZero ? BEFORE_AFTER.asMargins : BEFORE_AFTER.asChanges}
              </button>
              <AxisHead table={table} fromZero={fromZero} what={heads.after[1]} />
            </th>
            {CHANGE_COLUMNS.map((column) => (
              <th key={column} scope="col" className={classOf(column, open)}>
                {heads[column][0]}
                <span className={styles.unit}>{heads[column][1] || '\u00a0'}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.item}>
              <th scope="row" className={styles.dish} data-column="item">
                {row.item}
                {!open && <span className={styles.classBelow}>{classText(row)}</span>}
              </th>
              <td className={styles.picture}>
                <Dumbbell row={row} axis={axis} fromZero={fromZero} />
              </td>
              {CHANGE_COLUMNS.map((column) => (
                <td key={column} className={classOf(column, open)} data-column={column}>
                  <RowCell row={row} column={column} />
                </td>
              ))}
            </tr>
          ))}
          {(table.untouched || more > 0) && (
            <tr className={styles.rest}>
              <th scope="row">
                {more > 0 && (
                  <button type="button" onClick={onMore}>
                    {moreDishes(more, locale)}
                  </button>
                )}
                {table.untouched && <span>{table.untouched}</span>}
              </th>
              <td className={styles.picture} />
              {CHANGE_COLUMNS.map((column) => (
                <td key={column} className={classOf(column, open)}>
                  {more <= 0 && column === 'class' && BEFORE_AFTER.noChange}
                </td>
              ))}
            </tr>
          )}
          <tr className={styles.total}>
            <th scope="row">{BEFORE_AFTER.total}</th>
            <td className={styles.picture} />
            {CHANGE_COLUMNS.map((column) => {
              const cell = table.total[column];
              return (
                <td key={column} className={classOf(column, open)} data-column={column}>
                  {cell && <span className={styles[cell.tone]}>{cell.text}</span>}
                </td>
              );
            })}
          </tr>
        </tbody>
      </table>
    </section>
  );
}

function classOf(column: ChangeColumn, open: boolean): string {
  return [column === 'class' ? styles.class : styles.number, open ? undefined : FOLDS[column]]
    .filter(Boolean)
    .join(' ');
}

function classText({ classNow, classWas }: ChangeRow): string {
  return classWas === null ? classNow : `${classNow}, ${BEFORE_AFTER.was(classWas)}`;
}

function RowCell({ row, column }: { row: ChangeRow; column: ChangeColumn }) {
  if (column === 'class') {
    if (row.classWas === null) return row.classNow;
    return (
      <>
        <b>{row.classNow}</b>, {BEFORE_AFTER.was(row.classWas)}
      </>
    );
  }
  const cell = row[column];
  if (typeof cell === 'string') return cell;
  return <span className={styles[cell.tone]}>{cell.text}</span>;
}

function AxisHead({ table: { axis }, fromZero, what }: { table: ChangeTable; fromZero: boolean; what: string }) {
  const ticks = fromZero ? axis.zero.ticks : axis.ticks;
  return (
    <span className={styles.axis} aria-hidden="true">
      <span className={styles.unit}>{fromZero ? BEFORE_AFTER.changeAxis(what) : BEFORE_AFTER.marginAxis(what)}</span>
      {!fromZero && axis.average && (
        <span
          className={styles.averageText}
          style={{ left: `${Math.min(0.8, Math.max(0.2, axis.average.after)) * 100}%` }}
        >
          {axis.average.text}
        </span>
      )}
      {ticks.map(({ at, text }) => (
        <span key={text} className={styles.tickText} style={{ left: `${(at * 100).toFixed(3)}%` }}>
          {text}
        </span>
      ))}
    </span>
  );
}
