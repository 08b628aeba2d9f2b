import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { Suspense } from 'react';
import { periodName } from '@/lib/format/periods';
import { mixTitle, NO_SALES, pageTitle, problemState, SHELL } from '@/lib/format/words/shell';
import { RibbonWait } from '../../_ui/period-ribbon/ribbon-wait';
import { State } from '../../_ui/state';
import { type Asked, asked, askedMix, menuHref, periodsOf } from './asked';
import { FootPanel } from './foot-panel';
import styles from './menu.module.css';
import { PicturePanel } from './picture-panel';
import { RibbonPanel } from './ribbon-panel';
import { SectionLinks } from './section-links';
import { SentencePanel } from './sentence-panel';
import { TablePanel } from './table-panel';
import { ViewLinks } from './view-links';
import { PictureWait, SentenceWait, TableWait } from './waits';

/** What the page is about: the mix of a period, or why there is none. */
async function titleOf(question: Asked): Promise<string> {
  const { venue, month } = question;
  const [mix, periods] = await Promise.all([askedMix(question), periodsOf(venue)]);
  const problem = !periods.ok ? periods.problem : !mix.ok ? mix.problem : null;
  if (problem || !periods.ok) return problem?.title ?? SHELL.mix;
  return mixTitle(periodName(month, periods.answer.locale));
}

export async function generateMetadata({ searchParams }: PageProps<'/menu'>): Promise<Metadata> {
  const query = await searchParams;
  const month = asked(query, 'month');
  if (month === null) return {};
  return {
    title: pageTitle(
      await titleOf({
        venue: asked(query, 'venue'),
        section: asked(query, 'section'),
        setMenus: asked(query, 'setMenus'),
        month,
      }),
    ),
  };
}

/** The menu mix of a period: sentence, picture, table. Without a month it goes to the latest one with sales. */
export default async function MenuPage({ searchParams }: PageProps<'/menu'>) {
  const query = await searchParams;
  const venue = asked(query, 'venue');
  const section = asked(query, 'section');
  const month = asked(query, 'month');
  if (month === null) return <WithoutMonth venue={venue} section={section} />;
  const question: Asked = { venue, month, section, setMenus: asked(query, 'setMenus') };
  return (
    <>
      <Suspense fallback={<RibbonWait />}>
        <RibbonPanel asked={question} />
      </Suspense>
      <ViewLinks current="/menu" asked={question} />
      <main id="main" className="wrap" tabIndex={-1}>
        <Suspense fallback={<h1 className="unseen">{SHELL.mix}</h1>}>
          <Heading asked={question} />
        </Suspense>
        <Suspense fallback={<div className={styles.sections} />}>
          <SectionLinks asked={question} />
        </Suspense>
        <Suspense fallback={<SentenceWait />}>
          <SentencePanel asked={question} />
        </Suspense>
        <Suspense fallback={<PictureWait />}>
          <PicturePanel asked={question} />
        </Suspense>
        <Suspense fallback={<TableWait />}>
          <TablePanel asked={question} />
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
  if (latest) redirect(menuHref({ venue, month: latest.month, section }));
  const isNothingThere = periods.ok || (venue === null && periods.problem.status === 404);
  return (
    <main id="main" className="wrap" tabIndex={-1}>
      <h1 className="unseen">{SHELL.mix}</h1>
      <State kind="empty" words={isNothingThere ? NO_SALES : problemState(periods.problem)} />
    </main>
  );
}
