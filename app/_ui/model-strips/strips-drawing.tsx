import type { Purse } from '@/lib/format/money';
import { axisFigure } from '@/lib/format/words/menu-models';
import { markPath } from '../mark-shape';
import styles from './model-strips.module.css';
import type { Strip } from './strip-facts';
import { stripScale } from './strip-scale';

/** A width that the strips are drawn for; all in px. */
export interface StripSize {
  readonly name: 'wide' | 'middle' | 'narrow';
  readonly width: number;
  readonly ticks: number;
}

const HEAD = 38;
const LINE = 26;
const FOOT = 34;
const STRIP = HEAD + LINE + FOOT;
/** A label that would run over the edge is set from its other end. */
const NEAR_EDGE = 90;

/** Every axis on a line of its own, for one width; the dish that is followed is drawn last and named on each. */
export function StripsDrawing({
  strips,
  size,
  followed,
  purse,
}: {
  strips: readonly Strip[];
  size: StripSize;
  followed: string | null;
  purse: Purse;
}) {
  const height = strips.length * STRIP;
  return (
    <svg
      className={styles.drawing}
      viewBox={`0 0 ${size.width} ${height}`}
      width={size.width}
      height={height}
      aria-hidden="true"
    >
      {strips.map((strip, at) => (
        <g key={strip.axis} transform={`translate(0 ${at * STRIP})`}>
          <OneStrip strip={strip} size={size} followed={followed} purse={purse} />
        </g>
      ))}
    </svg>
  );
}

function OneStrip({
  strip,
  size,
  followed,
  purse,
}: {
  strip: Strip;
  size: StripSize;
  followed: string | null;
  purse: Purse;
}) {
  const { x, ticks } = stripScale(strip, size.width, size.ticks);
  const middle = HEAD + LINE / 2;
  const chosen = strip.marks.find(({ item }) => item === followed) ?? null;
  const others = strip.marks.filter((mark) => mark !== chosen);
  const limit = strip.threshold;
  return (
    <>
      <text className={styles.name} x="0" y="13">
        {strip.name}
      </text>
      <path className={styles.axis} d={`M0 ${HEAD + LINE}H${size.width}`} />
      {ticks.map((tick) => (
        <g key={tick}>
          <path className={styles.axis} d={`M${x(tick)} ${HEAD + LINE}v4`} />
          <text className={styles.tick} x={x(tick)} y={HEAD + LINE + 18} textAnchor={anchorAt(x(tick), size.width, 16)}>
            {axisFigure(strip.axis, tick, purse)}
          </text>
        </g>
      ))}
      {limit && (
        <>
          <path className={styles.limit} d={`M${x(limit.value)} ${HEAD - 4}V${HEAD + LINE}`} />
          <text
            className={styles.limitName}
            x={x(limit.value)}
            y={HEAD - 9}
            textAnchor={anchorAt(x(limit.value), size.width, NEAR_EDGE)}
          >
            {limit.figure}
          </text>
        </>
      )}
      {others.map(({ item, shape, value }) => (
        <path
          key={item}
          className={followed === null ? styles.mark : styles.pale}
          transform={`translate(${x(value)} ${middle})`}
          d={markPath(shape)}
        />
      ))}
      {chosen && (
        <>
          <path
            className={styles.chosen}
            transform={`translate(${x(chosen.value)} ${middle})`}
            d={markPath(chosen.shape)}
          />
          <circle className={styles.ring} cx={x(chosen.value)} cy={middle} r="10" />
        </>
      )}
    </>
  );
}

function anchorAt(x: number, width: number, room: number): 'start' | 'middle' | 'end' {
  if (x < room) return 'start';
  return x > width - room ? 'end' : 'middle';
}
