'use client';

import { type ReactNode, useMemo, useState } from 'react';
import { MIX_COLUMNS, type MixColumn, sortedWords, TABLE } from '@/lib/format/words/mix-table';
import { Mark } from '../mark';
import { CopyTable } from './copy-table';
import type { Cell, MixRow } from './mix-rows';
import styles from './mix-table.module.css';
import type { MixTotal } from './mix-total';
import { nextSorting, type Sorting, sortedRows } from './sorted-rows';
import { tableText } from './table-text';

/** What is left out first where there is little room: below 1,100 px, or on a phone only. */
const FOLDS: Readonly<Partial<Record<MixColumn, 'fold' | 'foldOnPhone'>>> = {
  comps: 'fold',
  share: 'fold',
  price: 'fold',
  plateCost: 'foldOnPhone',
  foodCost: 'foldOnPhone',
  class: 'foldOnPhone',
  sure: 'foldOnPhone',
};

const isWords = (column: MixColumn) => column === 'item' || column === 'class' || column === 'sure';

function classOf(column: MixColumn, open: boolean): string {
  const fold = open ? undefined : FOLDS[column];
  const kind = column === 'class' ? styles.gap : isWords(column) ? undefined : styles.number;
  return [fold && styles[fold], kind].filter(Boolean).join(' ');
}

/** The dishes as a table that sorts, folds and copies; the same facts as the picture. */
export function MixTable({
  rows,
  total,
  heads,
  locale,
  csv,
  missingHref,
}: {
  rows: readonly MixRow[];
  total: MixTotal;
  heads: Readonly<Record<MixColumn, readonly [string, string]>>;
  locale: string;
  csv: string;
  missingHref: string;
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
          <span className={styles.out}>
            <button type="button" className={styles.unfold} aria-pressed={open} onClick={() => setOpen(!open)}>
              {open ? TABLE.fewerColumns : TABLE.allColumns}
            </button>
            <CopyTable text={() => tableText(heads, sorted, total)} rows={rows.length} />
            <a href={csv} download>
              {TABLE.csv}
            </a>
          </span>
        </caption>
        <thead>
          <tr>
            {MIX_COLUMNS.map((column) => (
              <Head
                key={column}
                column={column}
                head={heads[column]}
                sorting={sorting}
                open={open}
                onSort={() => setSorting(nextSorting(sorting, column))}
              />
            ))}
          </tr>
        </thead>
        <tbody>
          {sorted.map((row) => (
            <Row key={row.item} row={row} open={open} missingHref={missingHref} />
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
  open,
  onSort,
}: {
  column: MixColumn;
  head: readonly [string, string];
  sorting: Sorting;
  open: boolean;
  onSort: () => void;
}) {
  const isSorted = sorting.column === column;
  const direction = sorting.falling ? 'descending' : 'ascending';
  const units = [unit, isSorted && sortedWords(column, sorting.falling)].filter(Boolean).join(', ');
  return (
    <th scope="col" className={classOf(column, open)} aria-sort={isSorted ? direction : undefined}>
      <button type="button" className={styles.sort} onClick={onSort}>
        {name}
      </button>
      <span className={styles.unit}>{units || '\u00a0'}</span>
    </th>
  );
}

function Row({ row, open, missingHref }: { row: MixRow; open: boolean; missingHref: string }) {
  return (
    <tr>
      {MIX_COLUMNS.map((column) =>
        column === 'item' ? (
          <th key={column} scope="row" className={styles.dish} data-column="item">
            <span className={styles.dishMark}>
              <Mark shape={row.shape} hollow={row.hollow} />
            </span>
            {row.item}
            {row.note && <span className={styles.note}>{row.note}</span>}
            {!open && <span className={styles.classBelow}>{row.className}</span>}
          </th>
        ) : (
          <td key={column} className={`${classOf(column, open)} ${styles[column] ?? ''}`} data-column={column}>
            {column === 'sure' && row.bar && <SureBar shares={row.bar} />}
            <CellText cell={row.cells[column]} missingHref={missingHref} />
          </td>
        ),
      )}
    </tr>
  );
}

function CellText({ cell, missingHref }: { cell: Cell; missingHref: string }): ReactNode {
  if (cell.tone === 'unknown') return <a href={missingHref}>{cell.text}</a>;
  return cell.tone === 'faint' ? <span className={styles.faint}>{cell.text}</span> : cell.text;
}

const BAR_PX = 52;

/** How the resamples split: the own class first, the other hatched. */
function SureBar({ shares: [own, other] }: { shares: readonly [number, number] }) {
  return (
    <span className={styles.bar} aria-hidden="true">
      <span className={styles.own} style={{ width: own * BAR_PX }} />
      <span className={styles.other} style={{ width: other * BAR_PX }} />
    </span>
  );
}
