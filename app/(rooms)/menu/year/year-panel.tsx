import { currencySign } from '@/lib/format/money';
import { periodName } from '@/lib/format/periods';
import { noSalesIn, problemState } from '@/lib/format/words/shell';
import { YEAR, yearBasis, yearSentences } from '@/lib/format/words/year';
import { yearHeads } from '@/lib/format/words/year-table';
import { yearRows, yearSum } from '@/lib/format/year-rows';
import { MissingList } from '../../../_ui/missing-list';
import { PictureOut } from '../../../_ui/picture-out/picture-out';
import { Said } from '../../../_ui/said';
import type { SlotFacts } from '../../../_ui/slot-panels/slot-facts';
import { SlotPanels } from '../../../_ui/slot-panels/slot-panels';
import { State } from '../../../_ui/state';
import { yearSlots } from '../../../_ui/year-table/year-slots';
import { YearTable } from '../../../_ui/year-table/year-table';
import type { Asked } from '../asked';
import styles from '../menu.module.css';
import { yearOf } from './asked-year';

/** Where the same rows are fetched as files. */
function answerHref(venue: string, { month, section }: Asked): string {
  const query = section === null ? '' : `?${new URLSearchParams({ section })}`;
  return `/api/v1/venues/${encodeURIComponent(venue)}/months/${encodeURIComponent(month)}/year${query}`;
}

/** The year in words, in pictures on one axis, and as a table; where there is no answer, why. */
export async function YearPanel({ asked }: { asked: Asked }) {
  const year = await yearOf(asked.venue, asked.month, asked.section);
  if (!year.ok)
    return <State kind={year.problem.status === 403 ? 'denied' : 'empty'} words={problemState(year.problem)} />;
  const { answer } = year;
  const purse = { currency: answer.currency, locale: answer.locale };
  if (answer.periods.every(({ sold }) => sold === 0))
    return <State kind="empty" words={noSalesIn(periodName(asked.month, answer.locale), null, answer.locale)} />;
  const facts = yearSlots(answer, purse);
  const isMonths = !answer.month.includes('P');
  return (
    <>
      <div className={styles.saying}>
        <p className={styles.lede}>
          <Said phrase={yearSentences(answer)} />
        </p>
        <p className={styles.basis}>{yearBasis(answer).join(' · ')}</p>
      </div>
      <div className={styles.sheet}>
        <figure>
          <SlotPanels facts={facts} name={YEAR.picture} />
          <PictureOut file={`year-${answer.month}`} />
        </figure>
        <div className={styles.notes}>
          <Reading facts={facts} />
          <MissingList title={YEAR.missing} issues={answer.issues} />
        </div>
      </div>
      <div className={styles.table}>
        <YearTable
          rows={yearRows(answer.periods, purse)}
          sum={yearSum(answer, purse)}
          heads={yearHeads(currencySign(purse), isMonths)}
          isMonths={isMonths}
          href={answerHref(answer.venue, asked)}
        />
      </div>
    </>
  );
}

/** How the marks are read, as far as there are such marks. */
function Reading({ facts }: { facts: SlotFacts }) {
  const values = facts.panels.flatMap((panel) => panel.values);
  const said = [
    values.some(({ against }) => against !== null) ? YEAR.against : null,
    values.some(({ hollow }) => hollow) ? YEAR.hollow : null,
    facts.events.length > 0 ? YEAR.menuLine : null,
  ].filter((words) => words !== null);
  if (said.length === 0) return null;
  return (
    <section aria-labelledby="year-reading">
      <h2 id="year-reading">{YEAR.howToRead}</h2>
      <ul>
        {said.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </section>
  );
}
