import { niceTicks } from '../mix-plane/nice-ticks';
import type { Strip } from './strip-facts';

/** Where values stand on a strip of a width: `x` in px, and ticks that read well. */
export interface StripScale {
  readonly x: (value: number) => number;
  readonly ticks: readonly number[];
}

/** Of the span, on both ends, so that no mark is cut. */
const ROOM = 0.04;

/** The favourable side is always to the right: falling axes run from the largest to the smallest. */
export function stripScale({ marks, threshold, rising }: Strip, width: number, ticks: number): StripScale {
  const values = [...marks.map(({ value }) => value), ...(threshold ? [threshold.value] : [])];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const span = most > least ? most - least : Math.abs(most) || 1;
  const [low, high] = [least - span * ROOM, most + span * ROOM];
  const share = (value: number) => (value - low) / (high - low);
  return {
    x: (value) => width * (rising ? share(value) : 1 - share(value)),
    ticks: niceTicks(low, high, ticks),
  };
}
