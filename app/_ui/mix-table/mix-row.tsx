'use client';

import Link from 'next/link';
import { type MouseEvent, type ReactNode, useId, useRef, useState } from 'react';
import type { Purse } from '@/lib/format/money';
import { type Phrase, plainText } from '@/lib/format/phrase';
import { ADVICE } from '@/lib/format/words/advice';
import { openWords, WORKING } from '@/lib/format/words/cost-working';
import { MIX_COLUMNS } from '@/lib/format/words/mix-table';
import { CostWorking } from '../cost-working/cost-working';
import { dishPage } from '../dish-page';
import { Mark } from '../mark';
import { Said } from '../said';
import { classOf } from './column-class';
import type { Cell, MixRow } from './mix-rows';
import styles from './mix-table.module.css';

/** Where the workings of the plate costs are read and the pages of the dishes stand, and how their money is written. */
export interface Workings {
  /** The address of the dishes; the name of one and `tail` follow. */
  readonly dishes: string;
  readonly tail: string;
  /** The query of the page of a dish. */
  readonly pageQuery: string;
  readonly purse: Purse;
}

/** One dish; its plate cost opens to its working below the row, and closing gives the focus back to what opened it. */
export function Row({
  row,
  open,
  missingHref,
  workings,
}: {
  row: MixRow;
  open: boolean;
  missingHref: string;
  workings: Workings;
}) {
  const [isOpen, setIsOpen] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const id = useId();
  const close = (): void => {
    setIsOpen(false);
    opener.current?.focus();
  };
  const onToggle = ({ currentTarget }: MouseEvent<HTMLButtonElement>): void => {
    opener.current = currentTarget;
    setIsOpen(!isOpen);
  };
  const figure = (before: string) => (
    <Opening row={row} before={before} isOpen={isOpen} controls={id} onToggle={onToggle} onClose={close} />
  );
  return (
    <>
      <tr className={isOpen ? styles.worked : undefined}>
        {MIX_COLUMNS.map((column) =>
          column === 'item' ? (
            <th key={column} scope="row" className={styles.dish} data-column="item">
              <span className={styles.dishMark}>
                <Mark shape={row.shape} hollow={row.hollow} />
              </span>
              <Link className={styles.name} href={dishPage(row.item, workings.pageQuery)} prefetch={false}>
                {row.item}
              </Link>
              {row.note && <span className={styles.note}>{row.note}</span>}
              {!open && (
                <span className={styles.classBelow}>
                  {row.className}
                  {row.opens && <> · {figure(WORKING.costs)}</>}
                </span>
              )}
            </th>
          ) : (
            <td key={column} className={`${classOf(column, open)} ${styles[column] ?? ''}`} data-column={column}>
              {column === 'sure' && row.bar && <SureBar shares={row.bar} />}
              {column === 'plateCost' && row.opens ? (
                figure('')
              ) : (
                <CellText cell={row.cells[column]} missingHref={missingHref} />
              )}
            </td>
          ),
        )}
      </tr>
      {isOpen && (
        <tr className={styles.opened}>
          <td colSpan={MIX_COLUMNS.length}>
            {row.advice && <RowAdvice advice={row.advice} />}
            <CostWorking
              id={id}
              item={row.item}
              href={`${workings.dishes}${encodeURIComponent(row.item)}${workings.tail}`}
              purse={workings.purse}
              onClose={close}
            />
          </td>
        </tr>
      )}
    </>
  );
}

/** What it would take for a dish that asks for a decision: conditions, never commands. */
function RowAdvice({ advice }: { advice: readonly Phrase[] }) {
  return (
    <div className={styles.advice}>
      <h3>{ADVICE.title}</h3>
      <ul>
        {advice.map((phrase) => (
          <li key={plainText(phrase)}>
            <Said phrase={phrase} />
          </li>
        ))}
      </ul>
    </div>
  );
}

/** A figure that opens, and lets itself be closed where it stands. */
function Opening({
  row,
  before,
  isOpen,
  controls,
  onToggle,
  onClose,
}: {
  row: MixRow;
  before: string;
  isOpen: boolean;
  controls: string;
  onToggle: (event: MouseEvent<HTMLButtonElement>) => void;
  onClose: () => void;
}) {
  const { text } = row.cells.plateCost;
  return (
    <button
      type="button"
      className={styles.figure}
      aria-expanded={isOpen}
      aria-controls={isOpen ? controls : undefined}
      aria-label={openWords(row.item, `${before}${text}`)}
      onClick={onToggle}
      onKeyDown={(event) => {
        if (event.key === 'Escape' && isOpen) onClose();
      }}
    >
      {before}
      {text}
    </button>
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
