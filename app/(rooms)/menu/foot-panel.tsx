import { periodName } from '@/lib/format/periods';
import { mixFoot } from '@/lib/format/words/mix-table';
import { monthState } from '@/lib/format/words/ribbon';
import { type Asked, askedMix, periodsOf } from './asked';
import styles from './menu.module.css';

/** The foot of the sheet: venue, period, state, and what its costs stand on. */
export async function FootPanel({ asked }: { asked: Asked }) {
  const [mix, periods] = await Promise.all([askedMix(asked), periodsOf(asked.venue)]);
  if (!mix.ok || !periods.ok) return null;
  const { locale, months } = periods.answer;
  const month = months.find((one) => one.month === asked.month);
  const state = monthState(month ?? { closed: false, running: false });
  return (
    <footer className={`wrap ${styles.foot}`}>
      {mixFoot(mix.answer.venue, periodName(asked.month, locale), state).map((line) => (
        <span key={line}>{line}</span>
      ))}
    </footer>
  );
}
