'use client';

import { useState } from 'react';
import { copied, TABLE_OUT } from '@/lib/format/words/table-out';
import styles from './table-out.module.css';

/** Where a table is folded on a narrow sheet: whether all columns are shown, and how that is changed. */
export interface Unfolding {
  readonly open: boolean;
  readonly setOpen: (open: boolean) => void;
}

/**
 * The right end of a table's caption: all columns where it is folded, Copy of what is shown, and the same rows as files. `href` is the
 * answer's address with all but its format.
 */
export function TableOut({
  text,
  rows,
  href,
  unfolding,
}: {
  text: () => string;
  rows: number;
  href: string;
  unfolding?: Unfolding;
}) {
  const [said, say] = useState('');
  async function copy() {
    try {
      await navigator.clipboard.writeText(text());
      say(copied(rows));
    } catch {
      say(TABLE_OUT.copyFailed);
    }
  }
  const as = (format: string) => `${href}${href.includes('?') ? '&' : '?'}format=${format}`;
  return (
    <span className={styles.out}>
      {unfolding && (
        <button
          type="button"
          className={styles.unfold}
          aria-pressed={unfolding.open}
          onClick={() => unfolding.setOpen(!unfolding.open)}
        >
          {unfolding.open ? TABLE_OUT.fewerColumns : TABLE_OUT.allColumns}
        </button>
      )}
      <span className={styles.said} role="status">
        {said}
      </span>
      <button type="button" onClick={copy}>
        {TABLE_OUT.copy}
      </button>
      <a href={as('csv')} download>
        {TABLE_OUT.csv}
      </a>
      <a href={as('xlsx')} download>
        {TABLE_OUT.xlsx}
      </a>
    </span>
  );
}
