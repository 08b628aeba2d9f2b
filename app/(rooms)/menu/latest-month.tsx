import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { NO_SALES, problemState } from '@/lib/format/words/shell';
import { State } from '../../_ui/state';
import { periodsOf } from './asked';

/** A view without a month in its address: it goes to the latest one with sales; where there is none, it says what is missing. */
export async function LatestMonth({
  venue,
  title,
  hrefOf,
}: {
  venue: string | null;
  title: string;
  hrefOf: (month: string) => Route;
}) {
  const periods = await periodsOf(venue);
  const latest = periods.ok ? periods.answer.months.at(-1) : undefined;
  if (latest) redirect(hrefOf(latest.month));
  const isNothingThere = periods.ok || (venue === null && periods.problem.status === 404);
  return (
    <main id="main" className="wrap" tabIndex={-1}>
      <h1 className="unseen">{title}</h1>
      <State kind="empty" words={isNothingThere ? NO_SALES : problemState(periods.problem)} />
    </main>
  );
}
