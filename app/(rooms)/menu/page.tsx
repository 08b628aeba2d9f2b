import type { Metadata } from 'next';
import { Suspense } from 'react';
import { periodName } from '@/lib/format/periods';
import { mixTitle, pageTitle, SHELL } from '@/lib/format/words/shell';
import { type Asked, asked, askedMix, menuHref, periodsOf } from './asked';
import { LatestMonth } from './latest-month';
import styles from './menu.module.css';
import { PicturePanel } from './picture-panel';
import { SectionLinks } from './section-links';
import { SentencePanel } from './sentence-panel';
import { TablePanel } from './table-panel';
import { ViewFrame } from './view-frame';
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
  if (month === null)
    return (
      <LatestMonth venue={venue} title={SHELL.mix} hrefOf={(latest) => menuHref({ venue, month: latest, section })} />
    );
  const question: Asked = { venue, month, section, setMenus: asked(query, 'setMenus') };
  return (
    <ViewFrame current="/menu" asked={question} hrefOf={(other) => menuHref({ ...question, month: other })}>
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
    </ViewFrame>
  );
}

async function Heading({ asked }: { asked: Asked }) {
  return <h1 className="unseen">{await titleOf(asked)}</h1>;
}
