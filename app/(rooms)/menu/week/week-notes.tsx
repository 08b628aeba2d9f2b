import type { WeekAnswer } from '@/lib/answers/week-shape';
import { more } from '@/lib/format/words/mix-notes';
import { unsoldDays, WEEK } from '@/lib/format/words/week';
import menu from '../menu.module.css';
import styles from './week.module.css';

/** So many dishes are named; the workbook has all of them. */
const NAMED = 10;

/** In the margin: what was on sale without selling, how to read the picture, what is missing. */
export function WeekNotes({ week }: { week: WeekAnswer }) {
  const { unsold, issues, locale, before } = week;
  return (
    <div className={menu.notes}>
      {unsold.length > 0 && (
        <section aria-labelledby="week-unsold">
          <h2 id="week-unsold">{WEEK.unsold}</h2>
          <ul className={styles.unsold}>
            {unsold.slice(0, NAMED).map((item) => (
              <li key={item.item}>
                <span className={styles.dish}>{item.item}</span>
                <span>{unsoldDays(item, locale)}</span>
              </li>
            ))}
          </ul>
          {unsold.length > NAMED && <p className={styles.note}>{more(unsold.length - NAMED, locale)}</p>}
          <p className={styles.note}>{WEEK.unsoldNote}</p>
        </section>
      )}
      {before !== null && (
        <section aria-labelledby="week-reading">
          <h2 id="week-reading">{WEEK.howToRead}</h2>
          <ul>
            <li>{WEEK.usual}</li>
          </ul>
        </section>
      )}
      {issues.length > 0 && (
        <section aria-labelledby="week-missing">
          <h2 id="week-missing">{WEEK.missing}</h2>
          <ul>
            {issues.map(({ code, about, text }) => (
              <li key={`${code} ${about}`}>{text}</li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}
