import { type PanelScale, panelScale, runsOfKnown } from './panel-scale';
import type { Panel } from './slot-facts';
import styles from './slot-panels.module.css';

const TICK = 5;
const OFF_AXIS = 8;
/** Where the name of a line stands: towards the middle of the panel. */
const UNDER_LINE = 15;
const OVER_LINE = -5;

/** One panel: its name, its axis, and a mark in each slot. The group stands at the panel's top left. */
export function PanelDrawing({
  panel,
  width,
  height,
  slotX,
  slotWidth,
  barWidth,
}: {
  panel: Panel;
  width: number;
  height: number;
  slotX: (at: number) => number;
  slotWidth: number;
  barWidth: number;
}) {
  const scale = panelScale(panel, height);
  const left = slotX(0) - slotWidth / 2;
  return (
    <>
      <text className={styles.name} x="0" y="-12">
        {panel.name}
      </text>
      <text className={styles.last} x={width} y="-12" textAnchor="end">
        {panel.last}
      </text>
      {scale && (
        <>
          <Axis panel={panel} scale={scale} left={left} right={width} height={height} />
          {panel.kind === 'bars' ? (
            <Bars panel={panel} scale={scale} slotX={slotX} barWidth={barWidth} />
          ) : (
            <Dots panel={panel} scale={scale} slotX={slotX} />
          )}
          <Against panel={panel} scale={scale} slotX={slotX} reach={Math.min(slotWidth * 0.42, barWidth)} />
        </>
      )}
    </>
  );
}

function Axis({
  panel,
  scale,
  left,
  right,
  height,
}: {
  panel: Panel;
  scale: PanelScale;
  left: number;
  right: number;
  height: number;
}) {
  const x = left - OFF_AXIS;
  const isHigh = panel.line !== null && scale.y(panel.line.value) < height / 2;
  return (
    <>
      <path className={styles.axis} d={`M${x} 0V${height}`} />
      {scale.ticks.map((tick) => (
        <g key={tick}>
          <path className={styles.axis} d={`M${x - TICK} ${scale.y(tick)}H${x}`} />
          <text className={styles.tick} x={x - TICK - 4} y={scale.y(tick) + 4.5} textAnchor="end">
            {panel.figure(tick, scale.decimals)}
          </text>
        </g>
      ))}
      {panel.kind === 'bars' && <path className={styles.axis} d={`M${left} ${scale.y(0)}H${right}`} />}
      {panel.line && (
        <>
          <path className={styles.target} d={`M${left} ${scale.y(panel.line.value)}H${right}`} />
          <text
            className={styles.lineName}
            x={left + 2}
            y={scale.y(panel.line.value) + (isHigh ? UNDER_LINE : OVER_LINE)}
          >
            {panel.line.name}
          </text>
        </>
      )}
    </>
  );
}

/** What each value is held against: a stroke across its slot. */
function Against({
  panel,
  scale,
  slotX,
  reach,
}: {
  panel: Panel;
  scale: PanelScale;
  slotX: (at: number) => number;
  reach: number;
}) {
  const strokes = panel.values.flatMap(({ against }, at) =>
    against === null ? [] : `M${slotX(at) - reach} ${scale.y(against)}h${2 * reach}`,
  );
  if (strokes.length === 0) return null;
  return (
    <>
      <path className={styles.halo} d={strokes.join('')} />
      <path className={styles.against} d={strokes.join('')} />
    </>
  );
}

function Bars({
  panel,
  scale,
  slotX,
  barWidth,
}: {
  panel: Panel;
  scale: PanelScale;
  slotX: (at: number) => number;
  barWidth: number;
}) {
  return panel.values.map(({ value, hollow }, at) => {
    if (value === null || value === 0) return null;
    const [top, bottom] = [scale.y(Math.max(0, value)), scale.y(Math.min(0, value))];
    const inset = hollow ? 0.75 : 0;
    return (
      <rect
        key={`${slotX(at)}`}
        className={hollow ? styles.hollowBar : styles.bar}
        x={slotX(at) - barWidth / 2 + inset}
        width={barWidth - 2 * inset}
        y={top + inset}
        height={Math.max(1, bottom - top - 2 * inset)}
      />
    );
  });
}

function Dots({ panel, scale, slotX }: { panel: Panel; scale: PanelScale; slotX: (at: number) => number }) {
  const yAt = (at: number) => scale.y(panel.values[at]?.value ?? 0);
  const path = runsOfKnown(panel.values)
    .map((run) => run.map((at, index) => `${index === 0 ? 'M' : 'L'}${slotX(at)} ${yAt(at)}`).join(''))
    .join('');
  return (
    <>
      <path className={styles.join} d={path} />
      {panel.values.map(
        ({ value, hollow }, at) =>
          value !== null && (
            <circle
              key={`${slotX(at)}`}
              className={hollow ? styles.hollowDot : styles.dot}
              cx={slotX(at)}
              cy={yAt(at)}
              r={hollow ? 3.75 : 3.5}
            />
          ),
      )}
    </>
  );
}
