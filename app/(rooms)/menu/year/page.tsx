import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { Suspense } from 'react';
import { periodName } from '@/lib/format/periods';
import { NO_SALES, pageTitle, problemState } from '@/lib/format/words/shell';
import { YEAR, yearTitle } from '@/lib/format/words/year';
import { RibbonWait } from '../../../_ui/period-ribbon/ribbon-wait';
import { State } from '../../../_ui/state';
import { type Asked, asked, periodsOf } from '../asked';
import { FootPanel } from '../foot-panel';
import { RibbonPanel } from '../ribbon-panel';
import { ViewLinks } from '../view-links';
import { SentenceWait } from '../waits';
import { yearHref, yearOf } from './asked-year';
import { YearPanel } from './year-panel';

async function titleOf({ venue, month, section }: Asked): Promise<string> {
  const year = await yearOf(venue, month, section);
  return year.ok ? yearTitle(periodName(month, year.answer.locale)) : year.problem.title;
}

export async function generateMetadata({ searchParams }: PageProps<'/menu/year'>): Promise<Metadata> {
  const query = await searchParams;
  const month = asked(query, 'month');
  if (month === null) return {};
  return { title: pageTitle(await titleOf({ venue: asked(query, 'venue'), section: asked(query, 'section'), month })) };
}

/** What the menu left through the months up to one. Without a month it goes to the latest one with sales. */
export default async function YearPage({ searchParams }: PageProps<'/menu/year'>) {
  const query = await searchParams;
  const venue = asked(query, 'venue');
  const section = asked(query, 'section');
  const month = asked(query, 'month');
  if (month === null) return <WithoutMonth venue={venue} section={section} />;
  const question: Asked = { venue, month, section };
  return (
    <>
      <Suspense fallback={<RibbonWait />}>
        <RibbonPanel asked={question} hrefOf={(other) => yearHref({ ...question, month: other })} />
      </Suspense>
      <ViewLinks current="/menu/year" asked={question} />
      <main id="main" className="wrap" tabIndex={-1}>
        <Suspense fallback={<h1 className="unseen">{YEAR.title}</h1>}>
          <Heading asked={question} />
        </Suspense>
        <Suspense fallback={<SentenceWait />}>
          <YearPanel asked={question} />
        </Suspense>
      </main>
      <Suspense>
        <FootPanel asked={question} />
      </Suspense>
    </>
  );
}

async function Heading({ asked }: { asked: Asked }) {
  return <h1 className="unseen">{await titleOf(asked)}</h1>;
}

async function WithoutMonth({ venue, section }: { venue: string | null; section: string | null }) {
  const periods = await periodsOf(venue);
  const latest = periods.ok ? periods.answer.months.at(-1) : undefined;
  if (latest) redirect(yearHref({ venue, month: latest.month, section }));
  const isNothingThere = periods.ok || (venue === null && periods.problem.status === 404);
  return (
    <main id="main" className="wrap" tabIndex={-1}>
      <h1 className="unseen">{YEAR.title}</h1>
      <State kind="empty" words={isNothingThere ? NO_SALES : problemState(periods.problem)} />
    </main>
  );
}
