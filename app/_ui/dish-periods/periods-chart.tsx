'use client';

import { ScatterChart, usePlotArea, useXAxisScale, useYAxisScale, XAxis, YAxis } from 'recharts';
import { figure } from '@/lib/format/figures';
import { priceAxis } from '@/lib/format/words/dish-periods';
import { niceTicks, tickDecimals } from '../mix-plane/nice-ticks';
import styles from './dish-periods.module.css';
import { MoneyMarks } from './money-marks';
import type { PeriodsFacts } from './period-facts';
import type { PeriodsSize } from './periods-size';
import { SoldBars } from './sold-bars';

/** What the chart gives to what is drawn in it. */
export interface Drawn {
  readonly facts: PeriodsFacts;
  readonly size: PeriodsSize;
  readonly x: (index: number) => number;
  readonly y: (value: number) => number;
  readonly plot: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  /** Px from one period to the next. */
  readonly step: number;
}

/** Both bands on one axis of periods: money above, portions below, each from zero. The chart brings the scales and the axes. */
export default function PeriodsChart({ facts, size }: { facts: PeriodsFacts; size: PeriodsSize }) {
  const money = Math.max(0, ...facts.marks.flatMap(({ price, cost }) => [price ?? 0, cost ?? 0]));
  const sold = Math.max(0, ...facts.marks.flatMap((mark) => mark.sold ?? 0));
  return (
    <>
      <Band facts={facts} size={size} height={size.money} most={money} names={false} title={priceAxis(facts.sign)}>
        {MoneyMarks}
      </Band>
      <Band facts={facts} size={size} height={size.sold} most={sold} names title={facts.countName}>
        {SoldBars}
      </Band>
    </>
  );
}

const NAMES = 40;
const TOP = { money: 26, sold: 34 } as const;

function Band({
  facts,
  size,
  height,
  most,
  names,
  title,
  children: Marks,
}: {
  facts: PeriodsFacts;
  size: PeriodsSize;
  height: number;
  most: number;
  names: boolean;
  title: string;
  children: (drawn: Drawn) => React.ReactNode;
}) {
  const last = facts.marks.length - 1;
  const ticks = niceTicks(0, most || 1, names ? 3 : 4);
  const digits = tickDecimals(ticks);
  const isNamed = (index: number) => (last - index) % size.every === 0;
  return (
    <ScatterChart
      width={size.width}
      height={height}
      margin={{ top: names ? TOP.sold : TOP.money, right: size.right, bottom: 0, left: 0 }}
      accessibilityLayer={false}
      tabIndex={-1}
    >
      <XAxis
        type="number"
        dataKey="x"
        domain={[-0.5, last + 0.5]}
        ticks={facts.marks.map((_, index) => index)}
        interval={0}
        height={names ? NAMES : 4}
        allowDataOverflow
        axisLine={false}
        tickLine={false}
        tick={({ x, y, payload }: { x: number | string; y: number | string; payload: { value: number } }) => {
          const mark = facts.marks[payload.value];
          if (!names || !mark || !isNamed(payload.value)) return <g />;
          return (
            <text
              className={payload.value === last ? styles.here : styles.tick}
              x={x}
              y={Number(y) + 14}
              textAnchor="middle"
            >
              {mark.short}
              {mark.year && (
                <tspan className={styles.year} x={x} dy="15">
                  {mark.year}
                </tspan>
              )}
            </text>
          );
        }}
        tickMargin={0}
      />
      <YAxis
        type="number"
        dataKey="y"
        domain={[0, most || 1]}
        ticks={ticks}
        interval={0}
        width={size.left}
        allowDataOverflow
        axisLine={false}
        tickLine={false}
        tick={({ y, payload }: { y: number | string; payload: { value: number } }) => (
          <text className={styles.tick} x={size.left - 8} y={Number(y) + 4.5} textAnchor="end">
            {figure(payload.value, facts.locale, digits)}
          </text>
        )}
        tickMargin={0}
      />
      <text className={styles.faint} x="0" y={names ? 20 : 12}>
        {title}
      </text>
      <Inside facts={facts} size={size}>
        {Marks}
      </Inside>
    </ScatterChart>
  );
}

/** Stands inside the chart and takes its scales from it. */
function Inside({
  facts,
  size,
  children: Marks,
}: {
  facts: PeriodsFacts;
  size: PeriodsSize;
  children: (drawn: Drawn) => React.ReactNode;
}) {
  const plot = usePlotArea();
  const xScale = useXAxisScale();
  const yScale = useYAxisScale();
  if (!plot || !xScale || !yScale) return null;
  const x = (index: number) => xScale(index) ?? 0;
  const drawn = { facts, size, plot, x, y: (value: number) => yScale(value) ?? 0, step: x(1) - x(0) };
  return <g className={styles.drawing}>{Marks(drawn)}</g>;
}
