'use client';

import { useState } from 'react';
import { copied, TABLE } from '@/lib/format/words/mix-table';
import styles from './mix-table.module.css';

/** Copies the table as it is sorted now, and says so. */
export function CopyTable({ text, rows }: { text: () => string; rows: number }) {
  const [said, say] = useState('');
  async function copy() {
    try {
      await navigator.clipboard.writeText(text());
      say(copied(rows));
    } catch {
      say(TABLE.copyFailed);
    }
  }
  return (
    <>
      <span className={styles.said} role="status">
        {said}
      </span>
      <button type="button" onClick={copy}>
        {TABLE.copy}
      </button>
    </>
  );
}
