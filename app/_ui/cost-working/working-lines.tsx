'use client';

import { type ReactNode, useState } from 'react';
import { WORKING } from '@/lib/format/words/cost-working';
import type { SheetRow } from '@/lib/format/working-sheet';
import styles from './cost-working.module.css';

/** What is opened: each line by its path, or all of them. */
interface Opened {
  readonly all: boolean;
  readonly paths: ReadonlySet<string>;
}

/** The lines of a working; what is made here opens to its own lines. */
export function WorkingLines({ rows, total, label }: { rows: readonly SheetRow[]; total: string; label: string }) {
  const [opened, setOpened] = useState<Opened>({ all: false, paths: new Set() });
  const toggle = (path: string): void => {
    const paths = new Set(opened.all ? everyPath(rows, '') : opened.paths);
    if (!paths.delete(path)) paths.add(path);
    setOpened({ all: false, paths });
  };
  const canOpen = rows.some((row) => row.rows.length > 0);
  return (
    <>
      {canOpen && (
        <button
          type="button"
          className={styles.every}
          aria-pressed={opened.all}
          onClick={() => setOpened({ all: !opened.all, paths: new Set() })}
        >
          {opened.all ? WORKING.fewerLines : WORKING.everyLine}
        </button>
      )}
      <Lines rows={rows} path="" opened={opened} onToggle={toggle} />
      {rows.length > 0 && (
        <p className={`${styles.row} ${styles.total}`}>
          <span>{label}</span>
          <span className={styles.cost}>{total}</span>
        </p>
      )}
    </>
  );
}

function everyPath(rows: readonly SheetRow[], above: string): readonly string[] {
  return rows.flatMap((row) => [`${above}/${row.key}`, ...everyPath(row.rows, `${above}/${row.key}`)]);
}

function Lines({
  rows,
  path,
  opened,
  onToggle,
}: {
  rows: readonly SheetRow[];
  path: string;
  opened: Opened;
  onToggle: (path: string) => void;
}): ReactNode {
  return (
    <ul className={styles.lines}>
      {rows.map((row) => {
        const own = `${path}/${row.key}`;
        const isOpen = opened.all || opened.paths.has(own);
        return (
          <li key={row.key}>
            <Line row={row} isOpen={isOpen} onToggle={() => onToggle(own)} />
            {isOpen && row.rows.length > 0 && <Lines rows={row.rows} path={own} opened={opened} onToggle={onToggle} />}
          </li>
        );
      })}
    </ul>
  );
}

function Line({ row, isOpen, onToggle }: { row: SheetRow; isOpen: boolean; onToggle: () => void }) {
  const isMade = row.rows.length > 0;
  return (
    <div className={styles.row}>
      {isMade ? (
        <button type="button" className={styles.made} aria-expanded={isOpen} onClick={onToggle}>
          <span className={styles.sign} aria-hidden="true">
            {isOpen ? '\u2212' : '+'}
          </span>
          {row.name}
        </button>
      ) : (
        <span className={styles.name}>{row.name}</span>
      )}
      <span className={styles.how}>{row.sum}</span>
      <span className={row.steps === null ? styles.unknown : styles.cost} data-column="cost">
        {row.cost}
      </span>
      {row.notes.length + row.missing.length > 0 && (
        <div className={isMade ? styles.notesOfMade : styles.notes}>
          {row.notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
          {row.missing.map((text) => (
            <p key={text} className={styles.missing}>
              {text}
            </p>
          ))}
        </div>
      )}
    </div>
  );
}
