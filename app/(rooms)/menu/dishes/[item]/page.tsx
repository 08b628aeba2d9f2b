import type { Metadata } from 'next';
import { Suspense } from 'react';
import { dishTitle } from '@/lib/format/words/dish';
import { pageTitle } from '@/lib/format/words/shell';
import { Ribbon } from '../../../../_ui/period-ribbon/ribbon';
import { RibbonWait } from '../../../../_ui/period-ribbon/ribbon-wait';
import { asked, periodsOf } from '../../asked';
import { LatestMonth } from '../../latest-month';
import { ViewLinks } from '../../view-links';
import { type DishAsked, dishHref, dishOf } from '../asked';
import { DishFoot } from './dish-foot';
import { HeadPanel, HeadWait } from './head-panel';
import { PeriodsPanel } from './periods-panel';
import { PicturePanel } from './picture-panel';
import { WorkingPanel } from './working-panel';

/** Next hands a part of the path over as it came; a stray % stays as it is. */
function named(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

export async function generateMetadata({ params, searchParams }: PageProps<'/menu/dishes/[item]'>): Promise<Metadata> {
  const query = await searchParams;
  const month = asked(query, 'month');
  if (month === null) return {};
  const [dish, periods] = await Promise.all([
    dishOf(asked(query, 'venue'), month, named((await params).item)),
    periodsOf(asked(query, 'venue')),
  ]);
  if (!dish.ok || !periods.ok) return { title: pageTitle(dish.ok ? '' : dish.problem.title) };
  return { title: pageTitle(dishTitle(dish.answer, periods.answer.locale)) };
}

/** One dish in depth: what it leaves, what it is made of and why that changed, through the periods. */
export default async function DishPage({ params, searchParams }: PageProps<'/menu/dishes/[item]'>) {
  const query = await searchParams;
  const venue = asked(query, 'venue');
  const month = asked(query, 'month');
  const item = named((await params).item);
  if (month === null)
    return <LatestMonth venue={venue} title={item} hrefOf={(latest) => dishHref({ venue, month: latest, item })} />;
  const question: DishAsked = { venue, month, item, follow: asked(query, 'follow') };
  return (
    <>
      <Suspense fallback={<RibbonWait />}>
        <DishRibbon asked={question} />
      </Suspense>
      <ViewLinks current={null} asked={{ venue, month, section: null }} />
      <main id="main" className="wrap" tabIndex={-1}>
        <Suspense fallback={<HeadWait />}>
          <HeadPanel asked={question} />
        </Suspense>
        <Suspense>
          <PicturePanel asked={question} />
        </Suspense>
        <Suspense>
          <PeriodsPanel asked={question} />
        </Suspense>
        <Suspense>
          <WorkingPanel asked={question} />
        </Suspense>
      </main>
      <Suspense>
        <DishFoot asked={question} />
      </Suspense>
    </>
  );
}

async function DishRibbon({ asked: question }: { asked: DishAsked }) {
  const periods = await periodsOf(question.venue);
  if (!periods.ok || periods.answer.months.length === 0) return null;
  return (
    <Ribbon periods={periods.answer} chosen={question.month} hrefOf={(month) => dishHref({ ...question, month })} />
  );
}
