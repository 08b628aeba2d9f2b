import type { Metadata } from 'next';
import { periodName } from '@/lib/format/periods';
import { PRICES, pricesTitle } from '@/lib/format/words/price-changes';
import { pageTitle } from '@/lib/format/words/shell';
import { type Asked, asked } from '../asked';
import { LatestMonth } from '../latest-month';
import { ViewFrame } from '../view-frame';
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
  if (month === null)
    return (
      <LatestMonth
        venue={venue}
        title={PRICES.title}
        hrefOf={(latest) => pricesHref({ venue, month: latest, section: null })}
      />
    );
  const question: Asked = { venue, month, section: null };
  const [at = null] = allAsked(query, 'at');
  return (
    <ViewFrame current="/menu/prices" asked={question} hrefOf={(other) => pricesHref({ ...question, month: other })}>
      <Heading asked={question} />
      <DeskPanel asked={question} texts={allAsked(query, 'price')} at={at} />
      <StakePanel asked={question} />
    </ViewFrame>
  );
}

async function Heading({ asked }: { asked: Asked }) {
  return <h1 className="unseen">{await titleOf(asked)}</h1>;
}
