import { RIBBON } from '@/lib/format/words/ribbon';
import styles from './period-ribbon.module.css';

/** The ribbon's rules and key while the months are read. */
export function RibbonWait() {
  return (
    <div className="wrap">
      <div className={styles.ribbon}>
        <div className={styles.row}>
          <div className={styles.key}>
            <span className={styles.keyLine} />
            <span>{RIBBON.foodCost}</span>
            <span>{RIBBON.month}</span>
          </div>
          <div className={styles.months} />
          <p className={styles.said}>{RIBBON.waiting}</p>
        </div>
      </div>
    </div>
  );
}
