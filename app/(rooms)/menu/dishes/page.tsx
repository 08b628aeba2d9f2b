import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { Suspense } from 'react';
import { periodName } from '@/lib/format/periods';
import { DISH_LIST, listTitle } from '@/lib/format/words/dish-list';
import { NO_SALES, pageTitle, problemState } from '@/lib/format/words/shell';
import { Ribbon } from '../../../_ui/period-ribbon/ribbon';
import { RibbonWait } from '../../../_ui/period-ribbon/ribbon-wait';
import { State } from '../../../_ui/state';
import { type Asked, asked, periodsOf, viewHref } from '../asked';
import { FootPanel } from '../foot-panel';
import { ViewLinks } from '../view-links';
import { TableWait } from '../waits';
import { HeadWait } from './[item]/head-panel';
import { ListPanel } from './list-panel';

export async function generateMetadata({ searchParams }: PageProps<'/menu/dishes'>): Promise<Metadata> {
  const query = await searchParams;
  const month = asked(query, 'month');
  if (month === null) return {};
  const periods = await periodsOf(asked(query, 'venue'));
  return {
    title: pageTitle(periods.ok ? listTitle(periodName(month, periods.answer.locale)) : periods.problem.title),
  };
}

/** Every dish, set menu and extra of a period, each leading to its own page. */
export default async function DishesPage({ searchParams }: PageProps<'/menu/dishes'>) {
  const query = await searchParams;
  const venue = asked(query, 'venue');
  const month = asked(query, 'month');
  if (month === null) return <WithoutMonth venue={venue} />;
  const question: Asked = { venue, month, section: null };
  return (
    <>
      <Suspense fallback={<RibbonWait />}>
        <ListRibbon asked={question} />
      </Suspense>
      <ViewLinks current="/menu/dishes" asked={question} />
      <main id="main" className="wrap" tabIndex={-1}>
        <h1 className="unseen">{DISH_LIST.title}</h1>
        <Suspense
          fallback={
            <>
              <HeadWait />
              <TableWait />
            </>
          }
        >
          <ListPanel asked={question} />
        </Suspense>
      </main>
      <Suspense>
        <FootPanel asked={question} />
      </Suspense>
    </>
  );
}

async function ListRibbon({ asked: question }: { asked: Asked }) {
  const periods = await periodsOf(question.venue);
  if (!periods.ok || periods.answer.months.length === 0) return null;
  return (
    <Ribbon
      periods={periods.answer}
      chosen={question.month}
      hrefOf={(month) => viewHref('/menu/dishes', { ...question, month })}
    />
  );
}

async function WithoutMonth({ venue }: { venue: string | null }) {
  const periods = await periodsOf(venue);
  const latest = periods.ok ? periods.answer.months.at(-1) : undefined;
  if (latest) redirect(viewHref('/menu/dishes', { venue, month: latest.month, section: null }));
  return (
    <main id="main" className="wrap" tabIndex={-1}>
      <h1 className="unseen">{DISH_LIST.title}</h1>
      <State kind="empty" words={periods.ok ? NO_SALES : problemState(periods.problem)} />
    </main>
  );
}
