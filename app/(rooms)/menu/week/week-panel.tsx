import { currencySign } from '@/lib/format/money';
import { periodName } from '@/lib/format/periods';
import { weekRows, weekSum } from '@/lib/format/week-rows';
import { noSalesIn, problemState } from '@/lib/format/words/shell';
import { WEEK, WEEK_BASIS, weekSentences } from '@/lib/format/words/week';
import { weekHeads } from '@/lib/format/words/week-table';
import { PictureOut } from '../../../_ui/picture-out/picture-out';
import { Said } from '../../../_ui/said';
import { SlotPanels } from '../../../_ui/slot-panels/slot-panels';
import { State } from '../../../_ui/state';
import { weekSlots } from '../../../_ui/week-table/week-slots';
import { WeekTable } from '../../../_ui/week-table/week-table';
import styles from '../menu.module.css';
import { weekOf } from './asked-week';
import { WeekLinks } from './week-links';
import { WeekNotes } from './week-notes';

/** The week in words, in pictures on one axis, and by day; where there is no answer, why. */
export async function WeekPanel({ venue, month }: { venue: string | null; month: string | null }) {
  const week = await weekOf(venue, month);
  if (!week.ok)
    return <State kind={week.problem.status === 403 ? 'denied' : 'empty'} words={problemState(week.problem)} />;
  const { answer } = week;
  const purse = { currency: answer.currency, locale: answer.locale };
  const sum = weekSum(answer, purse);
  const isEmpty = answer.week.sold === 0 && answer.week.covers === null;
  const venuePath = `/api/v1/venues/${encodeURIComponent(answer.venue)}`;
  return (
    <>
      <WeekLinks venue={venue} week={answer} />
      {isEmpty ? (
        <State kind="empty" words={noSalesIn(periodName(answer.month, answer.locale), null, answer.locale)} />
      ) : (
        <>
          <div className={styles.saying}>
            <p className={styles.lede}>
              <Said phrase={weekSentences(answer)} />
            </p>
            <p className={styles.basis}>{WEEK_BASIS.join(' · ')}</p>
          </div>
          <div className={styles.sheet}>
            <figure>
              <SlotPanels facts={weekSlots(answer, sum, purse)} name={WEEK.picture} />
              <PictureOut file={`week-${answer.month}`} />
            </figure>
            <WeekNotes week={answer} />
          </div>
          <div className={styles.table}>
            <WeekTable
              rows={weekRows(answer, purse)}
              sum={sum}
              heads={weekHeads(currencySign(purse), answer.before !== null)}
              href={`${venuePath}/months/${answer.month}/week`}
            />
          </div>
        </>
      )}
    </>
  );
}
