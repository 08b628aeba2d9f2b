'use client';

import dynamic from 'next/dynamic';
import { useEffect, useRef, useState } from 'react';
import { PERIODS } from '@/lib/format/words/dish-periods';
import styles from './dish-periods.module.css';
import type { PeriodsFacts } from './period-facts';
import { MIDDLE, type PeriodsSize, periodsSizeFor } from './periods-size';

/** The chart library comes only where there is a picture, after the page stands; the picture's place is kept for it. */
const PeriodsChart = dynamic(() => import('./periods-chart'), {
  ssr: false,
  loading: () => <p className={styles.waiting}>{PERIODS.waiting}</p>,
});

/** Price, cost and what is between them, and portions, period by period; the table below holds the same. */
export function PeriodsPicture({ facts }: { facts: PeriodsFacts }) {
  const place = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<PeriodsSize | null>(null);
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry && entry.contentRect.width > 0) setSize(periodsSizeFor(entry.contentRect.width));
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return (
    <figure className={styles.figure}>
      <h2>{PERIODS.title}</h2>
      <div className={styles.place} ref={place} role="img" aria-label={PERIODS.pictureName}>
        <div className={styles.onScreen}>{size && <PeriodsChart facts={facts} size={size} />}</div>
        <div className={styles.onPaper}>{size && <PeriodsChart facts={facts} size={MIDDLE} />}</div>
      </div>
      <figcaption className={styles.caption}>{facts.isExtra ? PERIODS.extraCaption : PERIODS.caption}</figcaption>
    </figure>
  );
}
