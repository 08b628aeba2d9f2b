import type { Metadata } from 'next';
import { Suspense } from 'react';
import { periodName } from '@/lib/format/periods';
import { pageTitle } from '@/lib/format/words/shell';
import { YEAR, yearTitle } from '@/lib/format/words/year';
import { type Asked, asked } from '../asked';
import { LatestMonth } from '../latest-month';
import { ViewFrame } from '../view-frame';
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
  if (month === null)
    return (
      <LatestMonth venue={venue} title={YEAR.title} hrefOf={(latest) => yearHref({ venue, month: latest, section })} />
    );
  const question: Asked = { venue, month, section };
  return (
    <ViewFrame current="/menu/year" asked={question} hrefOf={(other) => yearHref({ ...question, month: other })}>
      <Suspense fallback={<h1 className="unseen">{YEAR.title}</h1>}>
        <Heading asked={question} />
      </Suspense>
      <Suspense fallback={<SentenceWait />}>
        <YearPanel asked={question} />
      </Suspense>
    </ViewFrame>
  );
}

async function Heading({ asked }: { asked: Asked }) {
  return <h1 className="unseen">{await titleOf(asked)}</h1>;
}
