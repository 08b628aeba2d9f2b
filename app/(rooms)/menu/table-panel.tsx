import { figure } from '@/lib/format/figures';
import { currencySign } from '@/lib/format/money';
import { columnHeads } from '@/lib/format/words/mix-table';
import { pageQuery } from '../../_ui/dish-page';
import { shapesOfSections } from '../../_ui/mark-shape';
import { MISSING_ID } from '../../_ui/mix-notes/mix-notes';
import { mixRows } from '../../_ui/mix-table/mix-rows';
import { MixTable } from '../../_ui/mix-table/mix-table';
import { mixTotal } from '../../_ui/mix-table/mix-total';
import { type Asked, mixOf, periodsOf } from './asked';
import styles from './menu.module.css';

/** Where the same rows are fetched as files. */
function answerHref(venue: string, { month, section }: Asked): string {
  const query = section === null ? '' : `?${new URLSearchParams({ section })}`;
  return `/api/v1/venues/${encodeURIComponent(venue)}/months/${encodeURIComponent(month)}/menu-mix${query}`;
}

/** Where the workings of the dishes of a period are read, and what their pages are asked for. */
function workingsOf(venue: string, { month, section, venue: named }: Asked) {
  const query = new URLSearchParams({ month, ...(section && { section }) });
  return {
    dishes: `/api/v1/venues/${encodeURIComponent(venue)}/dishes/`,
    tail: `/cost?${query}`,
    pageQuery: pageQuery(month, named),
  };
}

/** The same facts as the picture, every dish a row. */
export async function TablePanel({ asked }: { asked: Asked }) {
  const [mix, whole, periods] = await Promise.all([
    mixOf(asked.venue, asked.month, asked.section),
    mixOf(asked.venue, asked.month, null),
    periodsOf(asked.venue),
  ]);
  if (!mix.ok || !whole.ok || !periods.ok || mix.answer.items.length === 0) return null;
  const { answer } = mix;
  const { locale } = periods.answer;
  const shapes = shapesOfSections([...whole.answer.items, ...answer.items].map(({ section }) => section));
  const resamples = answer.resamples === null ? null : figure(answer.resamples, locale, 0);
  return (
    <div className={styles.table}>
      <MixTable
        rows={mixRows(answer, locale, shapes)}
        total={mixTotal(answer, locale)}
        heads={columnHeads(currencySign({ currency: answer.currency, locale }), resamples)}
        locale={locale}
        href={answerHref(answer.venue, asked)}
        missingHref={`#${MISSING_ID}`}
        workings={{ ...workingsOf(answer.venue, asked), purse: { currency: answer.currency, locale } }}
      />
    </div>
  );
}
