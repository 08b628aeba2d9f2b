import { XAxis, YAxis } from 'recharts';
import { figure, perCentFigure } from '@/lib/format/figures';
import styles from './mix-plane.module.css';
import { niceTicks, tickDecimals } from './nice-ticks';
import type { PlaneDomain } from './plane-domain';
import type { PlaneSize } from './plane-size';

const OFF_AXIS = 6;
const TICK = 5;

interface TickPlace {
  readonly x: number | string;
  readonly y: number | string;
  readonly payload: { readonly value: number };
}

function marginTicks({ margin }: PlaneDomain, size: PlaneSize): number[] {
  return niceTicks(margin[0], margin[1], size.ticks.margin);
}

/** The figures that stand at the margin axis. */
export function marginFigures(domain: PlaneDomain, size: PlaneSize, locale: string): readonly string[] {
  const ticks = marginTicks(domain, size);
  return ticks.map((tick) => figure(tick, locale, tickDecimals(ticks)));
}

/**
 * The chart's two axes: their scales, ticks and figures. The axis lines are drawn with the marks, since they span what was measured.
 * Called as a function and not as a component, because the chart looks for its axes among its own children.
 */
export function planeAxes(domain: PlaneDomain, size: PlaneSize, locale: string, hideMarginNear: number | null) {
  const shares = niceTicks(domain.share[0] * 100, domain.share[1] * 100, size.ticks.share);
  const margins = marginTicks(domain, size);
  const shareDecimals = tickDecimals(shares);
  const marginDecimals = tickDecimals(margins);
  const pxPerUnit = (size.height - size.top - size.bottom) / (domain.margin[1] - domain.margin[0]);
  const shownMargins = margins.filter(
    (tick) => hideMarginNear === null || Math.abs(tick - hideMarginNear) * pxPerUnit > 15,
  );
  return [
    <XAxis
      key="share"
      type="number"
      dataKey="share"
      domain={[...domain.share]}
      ticks={shares.map((tick) => tick / 100)}
      interval={0}
      height={size.bottom}
      allowDataOverflow
      axisLine={false}
      tickLine={false}
      tick={({ x, y, payload }: TickPlace) => (
        <g>
          <line className={styles.axis} x1={x} x2={x} y1={Number(y)} y2={Number(y) + TICK} />
          <text className={styles.tick} x={x} y={Number(y) + 20} textAnchor="middle">
            {perCentFigure(payload.value, locale, shareDecimals)}
          </text>
        </g>
      )}
      tickMargin={0}
    />,
    <YAxis
      key="margin"
      type="number"
      dataKey="margin"
      domain={[...domain.margin]}
      ticks={shownMargins}
      interval={0}
      width={size.left}
      allowDataOverflow
      axisLine={false}
      tickLine={false}
      tick={({ y, payload }: TickPlace) => (
        <g>
          <line className={styles.axis} x1={size.left - OFF_AXIS - TICK} x2={size.left - OFF_AXIS} y1={y} y2={y} />
          <text className={styles.tick} x={size.left - OFF_AXIS - TICK - 4} y={Number(y) + 4.5} textAnchor="end">
            {figure(payload.value, locale, marginDecimals)}
          </text>
        </g>
      )}
      tickMargin={0}
    />,
  ];
}
