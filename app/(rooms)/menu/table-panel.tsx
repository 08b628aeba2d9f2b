import { figure } from '@/lib/format/figures';
import { currencySign } from '@/lib/format/money';
import { columnHeads } from '@/lib/format/words/mix-table';
import { pageQuery } from '../../_ui/dish-page';
import { shapesOfSections } from '../../_ui/mark-shape';
import { MISSING_ID } from '../../_ui/mix-notes/mix-notes';
import { type MixRow, mixRows } from '../../_ui/mix-table/mix-rows';
import { MixTable } from '../../_ui/mix-table/mix-table';
import { mixTotal } from '../../_ui/mix-table/mix-total';
import { type Asked, askedMix, mixOf, periodsOf } from './asked';
import styles from './menu.module.css';

/** Where the same rows are fetched as files. */
function answerHref(venue: string, { month, section, setMenus = null }: Asked): string {
  const options = new URLSearchParams({ ...(section && { section }), ...(setMenus && { setMenus }) });
  const query = options.size === 0 ? '' : `?${options}`;
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

/** A working is the mean of what was sold of a dish alone: among set menus the cost is another mean, and does not open. */
function withoutWorking(row: MixRow): MixRow {
  return { ...row, opens: false };
}

/** The same facts as the picture, every dish a row. */
export async function TablePanel({ asked }: { asked: Asked }) {
  const [mix, whole, periods] = await Promise.all([
    askedMix(asked),
    mixOf(asked.venue, asked.month, null),
    periodsOf(asked.venue),
  ]);
  if (!mix.ok || !whole.ok || !periods.ok || mix.answer.items.length === 0) return null;
  const { answer } = mix;
  const { locale } = periods.answer;
  const shapes = shapesOfSections([...whole.answer.items, ...answer.items].map(({ section }) => section));
  const resamples = answer.resamples === null ? null : figure(answer.resamples, locale, 0);
  const rows = mixRows(answer, locale, shapes);
  return (
    <div className={styles.table}>
      <MixTable
        rows={answer.setMenus === 'spread' ? rows.map(withoutWorking) : rows}
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
