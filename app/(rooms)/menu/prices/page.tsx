import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { Suspense } from 'react';
import { periodName } from '@/lib/format/periods';
import { PRICES, pricesTitle } from '@/lib/format/words/price-changes';
import { NO_SALES, pageTitle, problemState } from '@/lib/format/words/shell';
import { RibbonWait } from '../../../_ui/period-ribbon/ribbon-wait';
import { State } from '../../../_ui/state';
import { type Asked, asked, periodsOf } from '../asked';
import { FootPanel } from '../foot-panel';
import { RibbonPanel } from '../ribbon-panel';
import { ViewLinks } from '../view-links';
import { allAsked, pricedOf, pricesHref } from './asked-prices';
import { DeskPanel } from './desk-panel';
import { StakePanel } from './stake-panel';

async function titleOf({ venue, month }: Asked): Promise<string> {
  const priced = await pricedOf(venue, month);
  return priced.ok ? pricesTitle(periodName(month, priced.answer.model.venue.locale)) : priced.problem.title;
}

export async function generateMetadata({ searchParams }: PageProps<'/menu/prices'>): Promise<Metadata> {
  const query = await searchParams;
  const month = asked(query, 'month');
  if (month === null) return {};
  return { title: pageTitle(await titleOf({ venue: asked(query, 'venue'), section: null, month })) };
}

/**
 * What some changes of prices would have done to a period. Without a month it goes to the latest one with sales.
 *
 * What is worked out is waited for: so it is in the page where no script runs, and nothing moves when it comes.
 */
export default async function PricesPage({ searchParams }: PageProps<'/menu/prices'>) {
  const query = await searchParams;
  const venue = asked(query, 'venue');
  const month = asked(query, 'month');
  if (month === null) return <WithoutMonth venue={venue} />;
  const question: Asked = { venue, month, section: null };
  const [at = null] = allAsked(query, 'at');
  return (
    <>
      <Suspense fallback={<RibbonWait />}>
        <RibbonPanel asked={question} hrefOf={(other) => pricesHref({ ...question, month: other })} />
      </Suspense>
      <ViewLinks current="/menu/prices" asked={question} />
      <main id="main" className="wrap" tabIndex={-1}>
        <Heading asked={question} />
        <DeskPanel asked={question} texts={allAsked(query, 'price')} at={at} />
        <StakePanel asked={question} />
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

async function WithoutMonth({ venue }: { venue: string | null }) {
  const periods = await periodsOf(venue);
  const latest = periods.ok ? periods.answer.months.at(-1) : undefined;
  if (latest) redirect(pricesHref({ venue, month: latest.month, section: null }));
  const isNothingThere = periods.ok || (venue === null && periods.problem.status === 404);
  return (
    <main id="main" className="wrap" tabIndex={-1}>
      <h1 className="unseen">{PRICES.title}</h1>
      <State kind="empty" words={isNothingThere ? NO_SALES : problemState(periods.problem)} />
    </main>
  );
}
