import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { Suspense } from 'react';
import { periodName } from '@/lib/format/periods';
import { MODELS, modelsTitle } from '@/lib/format/words/menu-models';
import { NO_SALES, pageTitle, problemState } from '@/lib/format/words/shell';
import { RibbonWait } from '../../../_ui/period-ribbon/ribbon-wait';
import { State } from '../../../_ui/state';
import { type Asked, asked, periodsOf } from '../asked';
import { FootPanel } from '../foot-panel';
import styles from '../menu.module.css';
import { RibbonPanel } from '../ribbon-panel';
import { SectionLinks } from '../section-links';
import { ViewLinks } from '../view-links';
import { PictureWait, SentenceWait } from '../waits';
import { modelsHref, modelsOf } from './asked-models';
import { ModelsPanel } from './models-panel';

async function titleOf({ venue, month, section }: Asked): Promise<string> {
  const models = await modelsOf(venue, month, section);
  return models.ok ? modelsTitle(periodName(month, models.answer.locale)) : models.problem.title;
}

export async function generateMetadata({ searchParams }: PageProps<'/menu/models'>): Promise<Metadata> {
  const query = await searchParams;
  const month = asked(query, 'month');
  if (month === null) return {};
  return { title: pageTitle(await titleOf({ venue: asked(query, 'venue'), section: asked(query, 'section'), month })) };
}

/** What each model of menu analysis says of the same dishes. Without a month it goes to the latest one with sales. */
export default async function ModelsPage({ searchParams }: PageProps<'/menu/models'>) {
  const query = await searchParams;
  const venue = asked(query, 'venue');
  const section = asked(query, 'section');
  const month = asked(query, 'month');
  if (month === null) return <WithoutMonth venue={venue} section={section} />;
  const question: Asked = { venue, month, section };
  return (
    <>
      <Suspense fallback={<RibbonWait />}>
        <RibbonPanel asked={question} hrefOf={(other) => modelsHref({ ...question, month: other })} />
      </Suspense>
      <ViewLinks current="/menu/models" asked={question} />
      <main id="main" className="wrap" tabIndex={-1}>
        <Suspense fallback={<h1 className="unseen">{MODELS.title}</h1>}>
          <Heading asked={question} />
        </Suspense>
        <Suspense fallback={<div className={styles.sections} />}>
          <SectionLinks asked={question} hrefOf={modelsHref} />
        </Suspense>
        <Suspense
          fallback={
            <>
              <SentenceWait />
              <PictureWait />
            </>
          }
        >
          <ModelsPanel asked={question} />
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
  if (latest) redirect(modelsHref({ venue, month: latest.month, section }));
  const isNothingThere = periods.ok || (venue === null && periods.problem.status === 404);
  return (
    <main id="main" className="wrap" tabIndex={-1}>
      <h1 className="unseen">{MODELS.title}</h1>
      <State kind="empty" words={isNothingThere ? NO_SALES : problemState(periods.problem)} />
    </main>
  );
}
