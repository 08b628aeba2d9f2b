import type { Metadata } from 'next';
import { Suspense } from 'react';
import { periodName } from '@/lib/format/periods';
import { MODELS, modelsTitle } from '@/lib/format/words/menu-models';
import { pageTitle } from '@/lib/format/words/shell';
import { type Asked, asked } from '../asked';
import { LatestMonth } from '../latest-month';
import styles from '../menu.module.css';
import { SectionLinks } from '../section-links';
import { ViewFrame } from '../view-frame';
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
  if (month === null)
    return (
      <LatestMonth
        venue={venue}
        title={MODELS.title}
        hrefOf={(latest) => modelsHref({ venue, month: latest, section })}
      />
    );
  const question: Asked = { venue, month, section };
  return (
    <ViewFrame current="/menu/models" asked={question} hrefOf={(other) => modelsHref({ ...question, month: other })}>
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
    </ViewFrame>
  );
}

async function Heading({ asked }: { asked: Asked }) {
  return <h1 className="unseen">{await titleOf(asked)}</h1>;
}
