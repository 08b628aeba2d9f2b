import styles from './mix-plane.module.css';
import type { DrawnMark, Scales } from './plane-layout';
import { hasOwnLines, type PlaneFacts } from './plane-mark';
import type { PlaneSize } from './plane-size';
import type { DrawnWord } from './plane-words';
import type { Box } from './region';

const INNER_TICK = 5;

/** The axis lines over what was measured, one inner tick a dish, the two lines of the model, and the words in the plot. */
export function PlaneFrame({
  facts,
  marks,
  scales,
  plot,
  size,
  words,
}: {
  facts: PlaneFacts;
  marks: readonly DrawnMark[];
  scales: Scales;
  plot: Box;
  size: PlaneSize;
  words: readonly DrawnWord[];
}) {
  const left = plot.x - 6;
  const floor = plot.y + plot.height + 8;
  const right = plot.x + plot.width;
  const level = facts.margin ? scales.y(facts.margin.value) : null;
  const { popularity } = facts;
  const ends = popularity ? (hasOwnLines(facts) ? [popularity.low, popularity.high] : [popularity.high]) : [];
  const uprights = ends.map(scales.x);
  const isBand = hasOwnLines(facts);
  return (
    <g>
      <path className={styles.axis} d={`M${left} ${plot.y}V${plot.y + plot.height}M${plot.x} ${floor}H${right}`} />
      <path className={styles.dishTick} d={marks.map(({ x }) => `M${x} ${floor}v${-INNER_TICK}`).join('')} />
      <path className={styles.dishTick} d={marks.map(({ y }) => `M${left} ${y}h${INNER_TICK}`).join('')} />
      {uprights.map((x) => (
        <line key={x} className={isBand ? styles.bandLine : styles.line} x1={x} x2={x} y1={plot.y} y2={floor} />
      ))}
      {marks.map(
        ({ mark, ownLine }) =>
          ownLine?.isNeeded && (
            <line
              key={mark.item}
              className={styles.line}
              x1={ownLine.x}
              x2={ownLine.x}
              y1={Math.max(plot.y, ownLine.top)}
              y2={Math.min(floor, ownLine.bottom)}
            />
          ),
      )}
      {level !== null && <line className={styles.line} x1={left} x2={right} y1={level} y2={level} />}
      {facts.margin && level !== null && size.namesMargin && (
        <text className={styles.lineName} x={right + 8} y={level - 1}>
          {facts.margin.words[0]}
          <tspan x={right + 8} dy="15">
            {facts.margin.words[1]}
          </tspan>
        </text>
      )}
      {facts.margin && level !== null && !size.namesMargin && (
        <text className={styles.lineValue} x={left - 4} y={level + 4.5} textAnchor="end">
          {facts.margin.atAxis}
        </text>
      )}
      {words.map((word) => (
        <text
          key={word.key}
          className={word.kind === 'class' ? styles.className : styles.lineName}
          x={word.x}
          y={word.y}
          textAnchor={word.anchor}
        >
          {word.text}
        </text>
      ))}
    </g>
  );
}
