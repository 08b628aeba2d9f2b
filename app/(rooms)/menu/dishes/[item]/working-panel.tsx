import { meanWords, recipeWords, spanWords, WORKING } from '@/lib/format/words/cost-working';
import { DISH, workingDay } from '@/lib/format/words/dish';
import { printedSheet } from '@/lib/format/working-sheet';
import { WorkingLines } from '../../../../_ui/cost-working/working-lines';
import styles from '../../../../_ui/dish/dish.module.css';
import { WORKING_ID } from '../../../../_ui/dish/dish-sum';
import { Said } from '../../../../_ui/said';
import { periodsOf } from '../../asked';
import { type DishAsked, workingOf } from '../asked';

/** How the plate cost is made up, line by line to pack, price, supplier and document: the table of the picture above. */
export async function WorkingPanel({ asked }: { asked: DishAsked }) {
  const [working, periods] = await Promise.all([
    workingOf(asked.venue, asked.month, asked.item),
    periodsOf(asked.venue),
  ]);
  if (!working.ok || !periods.ok || working.answer.lines.length === 0) return null;
  const { answer } = working;
  const purse = { currency: answer.currency, locale: periods.answer.locale };
  const { inOneLine, rows, total } = printedSheet(answer, purse);
  return (
    <section className={styles.working} id={WORKING_ID} aria-label={DISH.working} tabIndex={-1}>
      <h2>{DISH.working}</h2>
      {inOneLine && (
        <p>
          <Said phrase={inOneLine} />
        </p>
      )}
      {answer.recipe && <p className={styles.workingNote}>{recipeWords(answer.recipe, false, purse.locale)}</p>}
      {answer.period ? (
        <>
          <p className={styles.workingNote}>{meanWords(answer.period, answer, purse)}</p>
          {spanWords(answer.period, purse).map((words) => (
            <p key={words} className={styles.workingNote}>
              {words}
            </p>
          ))}
        </>
      ) : (
        <p className={styles.workingNote}>{workingDay(answer.date, purse.locale)}</p>
      )}
      <WorkingLines rows={rows} total={total} label={WORKING.plateCost} />
    </section>
  );
}
