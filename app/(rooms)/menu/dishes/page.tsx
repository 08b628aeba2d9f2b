import type { Metadata } from 'next';
import { Suspense } from 'react';
import { periodName } from '@/lib/format/periods';
import { DISH_LIST, listTitle } from '@/lib/format/words/dish-list';
import { pageTitle } from '@/lib/format/words/shell';
import { type Asked, asked, periodsOf, viewHref } from '../asked';
import { LatestMonth } from '../latest-month';
import { ViewFrame } from '../view-frame';
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
  if (month === null)
    return (
      <LatestMonth
        venue={venue}
        title={DISH_LIST.title}
        hrefOf={(latest) => viewHref('/menu/dishes', { venue, month: latest, section: null })}
      />
    );
  const question: Asked = { venue, month, section: null };
  return (
    <ViewFrame
      current="/menu/dishes"
      asked={question}
      hrefOf={(other) => viewHref('/menu/dishes', { ...question, month: other })}
    >
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
    </ViewFrame>
  );
}
