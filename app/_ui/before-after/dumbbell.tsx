import type { ReactNode } from 'react';
import { markPath } from '../mark-shape';
import styles from './before-after.module.css';
import type { ChangeAxis, ChangeRow } from './change-row';

const at = (place: number): string => `${(place * 100).toFixed(3)}%`;

/** Tick before, mark after, a line between; the average old dotted and new solid runs through. Drawn beside figures that say the same. */
export function Dumbbell({ row, axis, fromZero }: { row: ChangeRow; axis: ChangeAxis; fromZero: boolean }): ReactNode {
  return (
    <span className={styles.plot} aria-hidden="true">
      {fromZero ? <FromZero row={row} axis={axis} /> : <Between row={row} axis={axis} />}
    </span>
  );
}

function Between({ row: { axis: places, shape, tone }, axis: { average } }: { row: ChangeRow; axis: ChangeAxis }) {
  return (
    <>
      {average && <span className={styles.averageWas} style={{ left: at(average.before) }} />}
      {average && <span className={styles.averageNow} style={{ left: at(average.after) }} />}
      {places && (
        <>
          <span
            className={`${styles.between} ${styles[tone]}`}
            style={{
              left: at(Math.min(places.before, places.after)),
              width: at(Math.abs(places.after - places.before)),
            }}
          />
          <span className={`${styles.was} ${styles[tone]}`} style={{ left: at(places.before) }} />
          <svg
            className={styles.is}
            style={{ left: at(places.after) }}
            aria-hidden="true"
            width="16"
            height="16"
            viewBox="-8 -8 16 16"
          >
            <path d={markPath(shape)} />
          </svg>
        </>
      )}
    </>
  );
}

function FromZero({ row: { fromZero, tone }, axis: { zero } }: { row: ChangeRow; axis: ChangeAxis }) {
  return (
    <>
      <span className={styles.averageNow} style={{ left: at(zero.at) }} />
      {fromZero !== null && (
        <span
          className={`${styles.bar} ${styles[tone]}`}
          style={{ left: at(Math.min(zero.at, fromZero)), width: at(Math.abs(fromZero - zero.at)) }}
        />
      )}
    </>
  );
}
