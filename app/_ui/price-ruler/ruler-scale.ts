import { niceStep } from '../mix-plane/nice-ticks';

/** The axis that a slider runs along. All in the unit that is printed: money a kilogram, or per cent. */
export interface RulerScale {
  readonly low: number;
  readonly high: number;
  /** The least that the slider moves. */
  readonly step: number;
  readonly ticks: readonly number[];
}

const TICKS = 8;
const STEPS = 400;

/** An axis that has room for all of these, from tick to tick; never below `least`. */
export function rulerScale(values: readonly number[], least: number): RulerScale {
  const from = Math.max(least, Math.min(...values));
  const to = Math.max(...values);
  const span = to - from > 1e-6 * Math.abs(to) ? to - from : Math.max(1, Math.abs(to));
  const tick = niceStep(span, TICKS);
  const low = Math.max(least, Math.floor(from / tick + 1e-9) * tick);
  const high = Math.max(low + tick, Math.ceil(to / tick - 1e-9) * tick);
  const ticks = Array.from({ length: Math.round((high - low) / tick) + 1 }, (_, index) => low + index * tick);
  return { low, high, step: stepOf(high - low), ticks: ticks.map((each) => Number(each.toPrecision(12))) };
}

/** A step that reads well and of which a tick is a multiple. */
function stepOf(span: number): number {
  const rough = span / STEPS;
  const power = 10 ** Math.floor(Math.log10(rough));
  const times = rough / power;
  return Number((power * (times < 2 ? 1 : times < 5 ? 2 : 5)).toPrecision(1));
}

/** Where a value stands on the axis: 0 at its low end, 1 at its high end; nothing stands outside. */
export function placeOn({ low, high }: RulerScale, value: number): number {
  return Math.min(1, Math.max(0, (value - low) / (high - low)));
}
