import { periodName } from '@/lib/format/periods';
import { mixFoot } from '@/lib/format/words/mix-table';
import { monthState } from '@/lib/format/words/ribbon';
import { periodsOf } from '../../asked';
import styles from '../../menu.module.css';
import { type DishAsked, dishOf } from '../asked';

/** The foot of the sheet: venue, period, state, and what its costs stand on. */
export async function DishFoot({ asked }: { asked: DishAsked }) {
  const [dish, periods] = await Promise.all([dishOf(asked.venue, asked.month, asked.item), periodsOf(asked.venue)]);
  if (!dish.ok || !periods.ok) return null;
  const { locale, months } = periods.answer;
  const month = months.find((one) => one.month === asked.month);
  const state = monthState(month ?? { closed: false, running: false });
  return (
    <footer className={`wrap ${styles.foot}`}>
      {mixFoot(dish.answer.venue, periodName(asked.month, locale), state).map((line) => (
        <span key={line}>{line}</span>
      ))}
    </footer>
  );
}
