'use client';

import Link from 'next/link';
import { useMemo, useState } from 'react';
import { nameKey } from '@/lib/core/name-key';
import { DISH_LIST, LIST_COLUMNS, type ListColumn, listSorted } from '@/lib/format/words/dish-list';
import { TableOut } from '../table-out/table-out';
import styles from './dish-list.module.css';
import type { DishRow } from './dish-rows';

interface Sorting {
  readonly column: ListColumn;
  readonly falling: boolean;
}

const isWords = (column: ListColumn) => column === 'item' || column === 'section' || column === 'class';

const FOLDS: Readonly<Partial<Record<ListColumn, string | undefined>>> = {
  section: styles.fold,
  price: styles.fold,
  labour: styles.fold,
  minute: styles.fold,
  sold: styles.foldOnPhone,
  class: styles.foldOnPhone,
};

/** Every dish of the period: sorted by any column, narrowed by name and section, copied as it is shown. */
export function DishList({
  rows,
  heads,
  locale,
  href,
}: {
  rows: readonly DishRow[];
  heads: Readonly<Record<ListColumn, readonly [string, string]>>;
  locale: string;
  href: string;
}) {
  const [sorting, setSorting] = useState<Sorting>({ column: 'item', falling: false });
  const [find, setFind] = useState('');
  const [section, setSection] = useState('');
  const [open, setOpen] = useState(false);
  const sections = [...new Set(rows.flatMap((row) => row.section ?? []))];
  const shown = useMemo(() => {
    const key = nameKey(find);
    const found = rows.filter((row) => nameKey(row.item).includes(key) && (section === '' || row.section === section));
    return sorted(found, sorting, locale);
  }, [rows, find, section, sorting, locale]);
  const text = () =>
    [
      LIST_COLUMNS.map((column) => heads[column].filter(Boolean).join(', ')),
      ...shown.map((row) => LIST_COLUMNS.map((column) => (column === 'item' ? row.item : row.cells[column]))),
    ]
      .map((cells) => cells.join('\t'))
      .join('\n');
  return (
    <>
      <div className={styles.fields}>
        <label>
          {DISH_LIST.find}
          <input type="search" value={find} onChange={(event) => setFind(event.target.value)} />
        </label>
        {sections.length > 1 && (
          <label>
            {DISH_LIST.section}
            <select value={section} onChange={(event) => setSection(event.target.value)}>
              <option value="">{DISH_LIST.every}</option>
              {sections.map((name) => (
                <option key={name}>{name}</option>
              ))}
            </select>
          </label>
        )}
      </div>
      <section
        className={`${styles.scroll} ${open ? styles.open : ''}`}
        tabIndex={open ? 0 : undefined}
        aria-label={DISH_LIST.region}
      >
        <table className={styles.table}>
          <caption>
            {DISH_LIST.caption}
            <TableOut text={text} rows={shown.length} href={href} unfolding={{ open, setOpen }} />
          </caption>
          <thead>
            <tr>
              {LIST_COLUMNS.map((column) => (
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
            {shown.map((row) => (
              <tr key={row.key}>
                {LIST_COLUMNS.map((column) =>
                  column === 'item' ? (
                    <th key={column} scope="row" data-column="item">
                      <Link href={row.href} prefetch={false}>
                        {row.item}
                      </Link>
                      {!open && <span className={styles.classBelow}>{row.cells.class}</span>}
                      {row.note && <span className={styles.note}>{row.note}</span>}
                    </th>
                  ) : (
                    <td key={column} className={classOf(column, open)} data-column={column}>
                      {row.cells[column]}
                    </td>
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
        {shown.length === 0 && <p className={styles.empty}>{DISH_LIST.noMatch}</p>}
      </section>
    </>
  );
}

function Head({
  column,
  head: [name, unit],
  sorting,
  open,
  onSort,
}: {
  column: ListColumn;
  head: readonly [string, string];
  sorting: Sorting;
  open: boolean;
  onSort: () => void;
}) {
  const isSorted = sorting.column === column;
  const units = [unit, isSorted && listSorted(column, sorting.falling)].filter(Boolean).join(', ');
  return (
    <th
      scope="col"
      className={classOf(column, open)}
      aria-sort={isSorted ? (sorting.falling ? 'descending' : 'ascending') : undefined}
    >
      <button type="button" className={styles.sort} onClick={onSort}>
        {name}
      </button>
      <span className={styles.onPaper}>{name}</span>
      <span className={styles.unit}>{units || '\u00a0'}</span>
    </th>
  );
}

function classOf(column: ListColumn, open: boolean): string {
  const kind = column === 'class' ? `${styles.gap} ${styles.class}` : isWords(column) ? styles.words : styles.number;
  return [kind, open ? undefined : FOLDS[column]].filter(Boolean).join(' ');
}

/** A click on a head: the other way round where it is sorted by already, else the way that is asked for most. */
function nextSorting(now: Sorting, column: ListColumn): Sorting {
  return now.column === column ? { column, falling: !now.falling } : { column, falling: !isWords(column) };
}

/** What is not known stands last either way, and equals keep their order. */
function sorted(rows: readonly DishRow[], { column, falling }: Sorting, locale: string): readonly DishRow[] {
  const sign = falling ? -1 : 1;
  const collate = new Intl.Collator(locale, { sensitivity: 'base', numeric: true });
  return [...rows].sort((a, b) => {
    const [left, right] = [a.sorts[column], b.sorts[column]];
    if (left === null || right === null) return Number(left === null) - Number(right === null);
    if (typeof left === 'string' || typeof right === 'string')
      return sign * collate.compare(String(left), String(right));
    return sign * (left - right);
  });
}
