import { periodName } from '@/lib/format/periods';
import {
  AXES,
  agreeCell,
  classCell,
  followedWords,
  MODELS,
  modelsBasis,
  modelsSentences,
  mostParted,
} from '@/lib/format/words/menu-models';
import { noSalesIn, problemState } from '@/lib/format/words/shell';
import { shapesOfSections } from '../../../_ui/mark-shape';
import { MissingList } from '../../../_ui/missing-list';
import { ModelStrips } from '../../../_ui/model-strips/model-strips';
import { stripsOf } from '../../../_ui/model-strips/strip-facts';
import { ModelTable } from '../../../_ui/model-table/model-table';
import { Said } from '../../../_ui/said';
import { SectionKey } from '../../../_ui/section-key';
import { State } from '../../../_ui/state';
import type { Asked } from '../asked';
import { dishHref } from '../dishes/asked';
import styles from '../menu.module.css';
import { modelsOf } from './asked-models';

/** Where the same rows are fetched as files. */
function answerHref(venue: string, { month, section }: Asked): string {
  const query = section === null ? '' : `?${new URLSearchParams({ section })}`;
  return `/api/v1/venues/${encodeURIComponent(venue)}/months/${encodeURIComponent(month)}/models${query}`;
}

/** The models in words, on their axes, and as a table; where there is no answer, why. */
export async function ModelsPanel({ asked }: { asked: Asked }) {
  const models = await modelsOf(asked.venue, asked.month, asked.section);
  if (!models.ok) {
    const { problem } = models;
    return <State kind={problem.status === 403 ? 'denied' : 'empty'} words={problemState(problem)} />;
  }
  const { answer } = models;
  const { locale, currency } = answer;
  if (answer.items.every(({ sold }) => sold === 0)) {
    return <State kind="empty" words={noSalesIn(periodName(asked.month, locale), null, locale)} />;
  }
  const purse = { currency, locale };
  const strips = stripsOf(answer, purse);
  const shapes = shapesOfSections(answer.items.map(({ section }) => section));
  return (
    <>
      <div className={styles.saying}>
        <p className={styles.lede}>
          <Said phrase={modelsSentences(answer)} />
        </p>
        <p className={styles.basis}>{modelsBasis(answer).join(' · ')}</p>
      </div>
      <div className={styles.sheet}>
        <figure>
          <ModelStrips
            strips={strips}
            dishes={answer.items.map((item) => ({ item: item.item, words: followedWords(item) }))}
            first={mostParted(answer.items)?.item ?? null}
            purse={purse}
          />
          <figcaption className={styles.caption}>
            <SectionKey shapes={[...shapes]} />
          </figcaption>
        </figure>
        <div className={styles.notes}>
          <section aria-labelledby="models-reading">
            <h2 id="models-reading">{MODELS.howToRead}</h2>
            <ul>
              <li>{MODELS.reading}</li>
            </ul>
          </section>
          <section aria-labelledby="models-axes">
            <h2 id="models-axes">{MODELS.whichAxes}</h2>
            <ul>
              {strips.map(({ axis }) => (
                <li key={axis}>
                  <strong>{AXES[axis].name}</strong>: {AXES[axis].models}
                </li>
              ))}
            </ul>
          </section>
          <MissingList title={MODELS.missing} issues={answer.issues} />
        </div>
      </div>
      <div className={styles.table}>
        <ModelTable
          rows={answer.items.map((item) => ({
            item: item.item,
            shape: shapes.get(item.section) ?? 'circle',
            href: dishHref({ ...asked, item: item.item }),
            cells: item.classes.map((standing) => ({ model: standing.model, ...classCell(standing, locale) })),
            agree: agreeCell(item),
          }))}
          models={answer.models}
          href={answerHref(answer.venue, asked)}
        />
      </div>
    </>
  );
}
