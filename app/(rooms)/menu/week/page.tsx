import type { Metadata } from 'next';
import { Suspense } from 'react';
import { NO_SALES, pageTitle, problemState } from '@/lib/format/words/shell';
import { WEEK, weekTitle } from '@/lib/format/words/week';
import { State } from '../../../_ui/state';
import { asked, type Query } from '../asked';
import { ViewFrame } from '../view-frame';
import { SentenceWait } from '../waits';
import { monthOfWeek, weekHref, weekOf } from './asked-week';
import { WeekPanel } from './week-panel';

interface AskedWeek {
  readonly venue: string | null;
  /** A week, or a month for its last one; null: the latest week. */
  readonly month: string | null;
}

function askedWeek(query: Query): AskedWeek {
  return { venue: asked(query, 'venue'), month: asked(query, 'week') ?? asked(query, 'month') };
}

async function titleOf({ venue, month }: AskedWeek): Promise<string> {
  const week = await weekOf(venue, month);
  return week.ok ? weekTitle(week.answer.month, week.answer.locale) : week.problem.title;
}

export async function generateMetadata({ searchParams }: PageProps<'/menu/week'>): Promise<Metadata> {
  return { title: pageTitle(await titleOf(askedWeek(await searchParams))) };
}

/** A week at a glance. The ribbon chooses months: the last week of one; the weeks beside it have links of their own. */
export default async function WeekPage({ searchParams }: PageProps<'/menu/week'>) {
  const question = askedWeek(await searchParams);
  const week = await weekOf(question.venue, question.month);
  if (!week.ok && question.month === null) {
    const isNothingThere = question.venue === null && week.problem.status === 404;
    return (
      <main id="main" className="wrap" tabIndex={-1}>
        <h1 className="unseen">{WEEK.title}</h1>
        <State kind="empty" words={isNothingThere ? NO_SALES : problemState(week.problem)} />
      </main>
    );
  }
  const month = week.ok ? monthOfWeek(week.answer.period.from) : (question.month ?? '');
  const within = { venue: question.venue, month, section: null };
  return (
    <ViewFrame current="/menu/week" asked={within} hrefOf={(other) => weekHref(question.venue, other)}>
      <h1 className="unseen">{await titleOf(question)}</h1>
      <Suspense fallback={<SentenceWait />}>
        <WeekPanel venue={question.venue} month={question.month} />
      </Suspense>
    </ViewFrame>
  );
}
