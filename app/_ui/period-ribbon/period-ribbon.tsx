'use client';

import type { Route } from 'next';
import Link from 'next/link';
import { type KeyboardEvent, useRef, useState } from 'react';
import { RIBBON } from '@/lib/format/words/ribbon';
import styles from './period-ribbon.module.css';
import type { Bar } from './ribbon-bars';

export interface RibbonMonth {
  readonly month: string;
  readonly href: Route;
  /** Month, year, per cent and state, in full. */
  readonly name: string;
  readonly short: string;
  readonly figure: string;
  /** Printed above the first month shown and above each January. */
  readonly year: string | null;
  /** Printed where only twelve months are shown and this is the first of them. */
  readonly narrowYear: string | null;
  readonly bar: Bar | null;
  readonly hollow: boolean;
  readonly closed: boolean;
  /** Not shown where there is room for twelve only. */
  readonly wideOnly: boolean;
}

const STEP: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowRight: 1, PageUp: -12, PageDown: 12 };

/** The months as links: one tab stop, arrows move the focus and load nothing, Enter follows. */
export function PeriodRibbon({
  months,
  chosen,
  lineY,
  earlier,
  later,
}: {
  months: readonly RibbonMonth[];
  chosen: string | null;
  lineY: number;
  earlier: Route | null;
  later: Route | null;
}) {
  const list = useRef<HTMLElement>(null);
  const [stop, setStop] = useState<string | null>(null);
  const tabStop = stop ?? chosen ?? months.at(-1)?.month;

  function onKeyDown(event: KeyboardEvent) {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const shown = [...(list.current?.querySelectorAll<HTMLElement>('a[data-month]') ?? [])].filter(
      (link) => link.offsetParent !== null,
    );
    const last = shown.length - 1;
    const now = shown.indexOf(document.activeElement as HTMLElement);
    const step = STEP[event.key];
    const next = event.key === 'Home' ? 0 : event.key === 'End' ? last : step === undefined ? null : now + step;
    if (next === null || now < 0) return;
    event.preventDefault();
    shown[Math.min(last, Math.max(0, next))]?.focus();
  }

  return (
    <nav className={styles.months} aria-label={RIBBON.name} ref={list} onKeyDown={onKeyDown}>
      {earlier && (
        <Link className={styles.further} href={earlier} prefetch={false}>
          {RIBBON.earlier}
        </Link>
      )}
      {months.map((month) => (
        <Link
          key={month.month}
          href={month.href}
          prefetch={false}
          data-month={month.month}
          className={[styles.month, month.month === chosen && styles.chosen, month.wideOnly && styles.wideOnly]
            .filter(Boolean)
            .join(' ')}
          aria-current={month.month === chosen ? 'page' : undefined}
          tabIndex={month.month === tabStop ? 0 : -1}
          onFocus={() => setStop(month.month)}
        >
          <span className="unseen">{month.name}</span>
          <span className={styles.year} aria-hidden="true">
            {month.year}
            {month.narrowYear && <span className={styles.narrowYear}>{month.narrowYear}</span>}
          </span>
          <svg className={styles.bars} aria-hidden="true">
            {month.bar && (
              <rect
                className={month.hollow ? styles.hollowBar : styles.bar}
                x="34%"
                width="32%"
                y={month.bar.y}
                height={month.bar.height}
              />
            )}
            <line className={styles.target} x1="0" x2="100%" y1={lineY} y2={lineY} />
          </svg>
          <span className={styles.figure} aria-hidden="true">
            {month.figure}
          </span>
          <span className={styles.name} aria-hidden="true">
            {month.short}
          </span>
          <span className={month.closed ? styles.ruledOff : styles.open} />
        </Link>
      ))}
      {later && (
        <Link className={styles.further} href={later} prefetch={false}>
          {RIBBON.later}
        </Link>
      )}
    </nav>
  );
}
