import Link from 'next/link';
import type { WeekAnswer } from '@/lib/answers/week-shape';
import { periodName } from '@/lib/format/periods';
import { WEEK } from '@/lib/format/words/week';
import { weekHref } from './asked-week';
import styles from './week.module.css';

/** The weeks with sales on either side of this one. */
export function WeekLinks({ venue, week }: { venue: string | null; week: WeekAnswer }) {
  const { previous, next, locale } = week;
  if (previous === null && next === null) return null;
  return (
    <nav className={styles.weeks} aria-label={WEEK.weeks}>
      {previous !== null && (
        <Link href={weekHref(venue, previous)} prefetch={false} rel="prev">
          {WEEK.previous}: {periodName(previous, locale)}
        </Link>
      )}
      {next !== null && (
        <Link href={weekHref(venue, next)} prefetch={false} rel="next">
          {WEEK.next}: {periodName(next, locale)}
        </Link>
      )}
    </nav>
  );
}
