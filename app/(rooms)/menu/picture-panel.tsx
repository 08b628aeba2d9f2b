import { onTheLine } from '@/lib/format/words/menu-mix';
import { notDrawn, PLANE } from '@/lib/format/words/mix-plane';
import { pageQuery } from '../../_ui/dish-page';
import { shapesOfSections } from '../../_ui/mark-shape';
import { HowToRead } from '../../_ui/mix-notes/how-to-read';
import { MixNotes } from '../../_ui/mix-notes/mix-notes';
import { MixPlane } from '../../_ui/mix-plane/mix-plane';
import { planeFacts } from '../../_ui/mix-plane/plane-facts';
import { hasOwnLines } from '../../_ui/mix-plane/plane-mark';
import { PictureOut } from '../../_ui/picture-out/picture-out';
import { Said } from '../../_ui/said';
import { SectionKey } from '../../_ui/section-key';
import { type Asked, askedMix, mixOf, periodsOf } from './asked';
import styles from './menu.module.css';

/** The mix as one plane, and the notes in the margin beside it. */
export async function PicturePanel({ asked }: { asked: Asked }) {
  const [mix, whole, periods] = await Promise.all([
    askedMix(asked),
    mixOf(asked.venue, asked.month, null),
    periodsOf(asked.venue),
  ]);
  if (!mix.ok || !whole.ok || !periods.ok || mix.answer.totals.sold === 0) return null;
  const { locale } = periods.answer;
  const shapes = shapesOfSections([...whole.answer.items, ...mix.answer.items].map(({ section }) => section));
  const facts = planeFacts(mix.answer, locale, shapes);
  const shown = [...shapes].filter(([section]) => mix.answer.items.some((item) => item.section === section));
  const missing = notDrawn(
    facts.marks.length === 0 ? [] : mix.answer.items.filter(({ margin, sold }) => margin === null && sold > 0),
    locale,
  );
  const first = onTheLine(mix.answer.items)[0]?.item ?? null;
  return (
    <div className={styles.sheet}>
      <figure>
        {facts.marks.length === 0 ? (
          <p className={styles.caption}>{PLANE.nothing}</p>
        ) : (
          <>
            <MixPlane facts={facts} first={first} pageQuery={pageQuery(asked.month, asked.venue)} />
            <PictureOut file={`menu-mix-${asked.month}`} />
          </>
        )}
        <figcaption className={styles.caption}>
          <SectionKey shapes={shown} />
          {missing.length > 0 && (
            <p>
              <Said phrase={missing} />
            </p>
          )}
        </figcaption>
      </figure>
      <MixNotes mix={mix.answer} locale={locale} />
      {facts.marks.length > 0 && (
        <HowToRead hasRegions={mix.answer.resamples !== null} hasOwnLines={hasOwnLines(facts)} />
      )}
    </div>
  );
}
