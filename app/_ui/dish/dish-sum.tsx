import { DISH, type SumTerm } from '@/lib/format/words/dish';
import styles from './dish.module.css';

/** Where the working of the plate cost stands on the page. */
export const WORKING_ID = 'working';

/** The sum at the head of a dish: each term with its labels under it, results double-ruled; an operator starts the line it wraps to. */
export function DishSum({ terms, apart }: { terms: readonly SumTerm[]; apart: boolean }) {
  return (
    <>
      <div className={styles.sum}>
        {terms.map((term) => (
          <div key={term.labels.join(' ')} className={styles.term} data-term={term.labels[0]}>
            {term.operator && <span className={styles.operator}>{term.operator}</span>}
            <div>
              <span className={term.result ? styles.result : styles.figure} data-figure="">
                {term.opens ? (
                  <a className={styles.opens} href={`#${WORKING_ID}`}>
                    {term.figure}
                  </a>
                ) : (
                  term.figure
                )}
              </span>
              {term.labels.map((label) => (
                <span key={label} className={styles.label}>
                  {label}
                </span>
              ))}
            </div>
          </div>
        ))}
      </div>
      {apart && <p className={styles.apart}>{DISH.ownRounding}</p>}
    </>
  );
}
