import { niceTicks, tickDecimals } from '../mix-plane/nice-ticks';
import type { Panel } from './slot-facts';

/** How one panel's values become heights. Pixels from the top of the panel. */
export interface PanelScale {
  readonly y: (value: number) => number;
  readonly ticks: readonly number[];
  readonly decimals: number;
}

/** Share of what is shown that is left free over and under dots. */
const AIR = 0.12;
const TICKS = 3;

/** The lowest and the highest value that a panel has to show: bars from zero, dots with some air round them. Null where there is none. */
export function panelDomain({ values, line, kind }: Panel): readonly [number, number] | null {
  const known = values.flatMap(({ value, against }) => [value, against]).filter((value) => value !== null);
  if (known.length === 0) return null;
  const shown = line === null ? known : [...known, line.value];
  const [low, high] = [Math.min(...shown), Math.max(...shown)];
  if (kind === 'bars') return low === 0 && high === 0 ? [0, 1] : [Math.min(0, low), Math.max(0, high)];
  const air = high > low ? (high - low) * AIR : Math.abs(high) * AIR || 1;
  return [low - air, high + air];
}

/** The scale of a panel of some height; null where it has nothing to show. */
export function panelScale(panel: Panel, height: number): PanelScale | null {
  const domain = panelDomain(panel);
  if (domain === null) return null;
  const [low, high] = domain;
  const ticks = niceTicks(low, high, TICKS);
  return { y: (value) => height - ((value - low) / (high - low)) * height, ticks, decimals: tickDecimals(ticks) };
}

/** Runs of neighbouring slots with a value: a line joins the dots of a run and stops at a gap. */
export function runsOfKnown(values: Panel['values']): readonly (readonly number[])[] {
  const runs: number[][] = [];
  values.forEach(({ value }, at) => {
    if (value === null) return;
    const run = runs.at(-1);
    if (run !== undefined && run.at(-1) === at - 1) run.push(at);
    else runs.push([at]);
  });
  return runs;
}
