'use client';

import dynamic from 'next/dynamic';
import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { useEffect, useRef, useState } from 'react';
import { PLANE } from '@/lib/format/words/mix-plane';
import { dishPage } from '../dish-page';
import { Said } from '../said';
import styles from './mix-plane.module.css';
import type { PlaneFacts } from './plane-mark';
import { MIDDLE, type PlaneSize, planeSizeFor } from './plane-size';

/** The chart library comes only where there is a picture, after the page stands; the picture's place is kept for it. */
const PlaneChart = dynamic(() => import('./plane-chart'), { ssr: false, loading: () => <Waiting /> });

function Waiting() {
  return <p className={styles.waiting}>{PLANE.waiting}</p>;
}

/**
 * The mix as one plane, with the line beneath that reads the chosen mark. `first` is the dish chosen to begin with; a dish stays chosen
 * from month to month, and Enter or its name in the line leads to its page.
 */
export function MixPlane({
  facts,
  first,
  pageQuery,
}: {
  facts: PlaneFacts;
  first: string | null;
  /** The query of the page of a dish. */
  pageQuery: string;
}) {
  const router = useRouter();
  const [item, chooseItem] = useState(first);
  const [over, setOver] = useState<HTMLElement | null>(null);
  const place = useRef<HTMLDivElement>(null);
  const size = usePlaneSize(place);
  const at = facts.marks.findIndex((one) => one.item === item);
  const chosen = at < 0 ? null : at;
  const choose = (index: number | null) => chooseItem(index === null ? null : (facts.marks[index]?.item ?? null));
  const mark = facts.marks[at];
  const open = (index: number) => {
    const opened = facts.marks[index];
    if (opened) router.push(dishPage(opened.item, pageQuery));
  };
  return (
    <>
      <div className={styles.place} ref={place}>
        <div className={styles.picture}>
          <div className={styles.onScreen} aria-hidden="true">
            {size && <PlaneChart key={size.name} facts={facts} size={size} choice={{ chosen, choose, open, over }} />}
          </div>
          <div ref={setOver} className={styles.over} />
          <div className={styles.onPaper} aria-hidden="true">
            {size && <PlaneChart facts={facts} size={MIDDLE} choice={null} />}
          </div>
        </div>
      </div>
      <p className={styles.reading} aria-live="polite">
        {mark ? (
          <>
            <Link className={styles.readingName} href={dishPage(mark.item, pageQuery)} prefetch={false}>
              {mark.item}
            </Link>{' '}
            <Said phrase={mark.reading} />
          </>
        ) : (
          <>
            <span className={styles.withKeys}>{PLANE.choose}</span>
            <span className={styles.withTouch}>{PLANE.chooseOnPhone}</span>
          </>
        )}
      </p>
    </>
  );
}

/** The drawing that fits the place; null until the place was measured. */
function usePlaneSize(place: React.RefObject<HTMLDivElement | null>): PlaneSize | null {
  const [size, setSize] = useState<PlaneSize | null>(null);
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry && entry.contentRect.width > 0) setSize(planeSizeFor(entry.contentRect.width));
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, [place]);
  return size;
}
