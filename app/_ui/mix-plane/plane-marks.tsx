import type { ReactNode } from 'react';
import { markPath } from '../mark-shape';
import type { Place } from './label-places';
import styles from './mix-plane.module.css';
import type { DrawnMark } from './plane-layout';
import type { PlaneSize } from './plane-size';

/** Regions lie under the lines, labels and marks over them; the lines and the ring come in between as children. */
export function PlaneMarks({
  marks,
  labels,
  id,
  clip,
  size,
  children,
}: {
  marks: readonly DrawnMark[];
  labels: readonly (Place | null)[];
  id: string;
  clip: string;
  size: PlaneSize;
  children: ReactNode;
}) {
  return (
    <>
      <g clipPath={clip}>
        {marks.map(({ mark, region, doubtPath }, index) => (
          <g key={mark.item}>
            {region && (
              <ellipse
                className={mark.doubtful ? styles.doubtful : styles.settled}
                cx={region.x}
                cy={region.y}
                rx={region.rx}
                ry={region.ry}
              />
            )}
            {region && doubtPath && (
              <>
                <clipPath id={`${id}-beyond-${index}`}>
                  <path d={doubtPath} />
                </clipPath>
                <g clipPath={`url(#${id}-beyond-${index})`}>
                  <ellipse cx={region.x} cy={region.y} rx={region.rx} ry={region.ry} fill={`url(#${id}-hatch)`} />
                </g>
              </>
            )}
          </g>
        ))}
      </g>
      {children}
      {labels.map((place, index) => {
        const mark = marks[index]?.mark;
        if (!place || !mark) return null;
        const { box, leader } = place;
        return (
          <g key={mark.item}>
            {leader && <line className={styles.leader} {...leader} />}
            <text
              className={mark.doubtful ? styles.doubtfulLabel : styles.label}
              style={{ fontSize: size.labelPx }}
              x={box.x + 1}
              y={box.y + 12.5}
            >
              {mark.label}
            </text>
          </g>
        );
      })}
      {marks.map(({ mark, x, y }) => (
        <path
          key={mark.item}
          className={mark.doubtful ? styles.hollowMark : styles.mark}
          style={{ transform: `translate(${x.toFixed(2)}px, ${y.toFixed(2)}px)` }}
          d={markPath(mark.shape)}
        />
      ))}
    </>
  );
}
