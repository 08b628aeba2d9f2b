import styles from './mark.module.css';
import { type MarkShape, markPath } from './mark-shape';

/** A dish's mark in a line of text: filled where its class is settled, hollow where it is on the line. */
export function Mark({ shape, hollow }: { shape: MarkShape; hollow: boolean }) {
  return (
    <svg className={styles.inline} width="16" height="16" viewBox="-8 -8 16 16" aria-hidden="true">
      <path className={hollow ? styles.hollow : styles.filled} d={markPath(shape)} />
    </svg>
  );
}
