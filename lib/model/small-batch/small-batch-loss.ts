import type { Day } from '../../core/days';
import type { CostedPeriod } from '../costed-period';
import { upward } from '../passes';
import type { RecipePiece } from '../recipe-piece';
import { inSegment, segmentOf } from '../segments';
import { needByDay } from '../served';
import type { Thing } from '../things';
import { batchTerms } from './batch-terms';
import { type BatchTerms, runBatches } from './run-batches';

/** What small batches of one component lose in a period. Quantities in base units of the component, money in venue currency. */
export interface SmallBatchLoss {
  readonly node: number;
  readonly thing: Thing;
  /** Used over all that was served, breakage of its own included. */
  readonly used: number;
  readonly made: number | null;
  readonly thrown: number | null;
  /** thrown / made; null where nothing was used, or where the smallest batch or the days of life are not stated. */
  readonly lost: number | null;
  /** cost of what was used * lost / (1 - lost): what it costs beside every plate cost, never inside one. */
  readonly money: number | null;
}

/** Small-batch losses of all components that are used, by name: through the calendar on actual use over all that was served. */
export function smallBatchLosses(period: CostedPeriod): readonly SmallBatchLoss[] {
  const { from, to } = period.range;
  const days = to - from;
  const need = needByDay(period);
  const segmentOfDay = Array.from({ length: days }, (_, day) => segmentOf(period.segments, (from + day) as Day));
  return period.things.flatMap((thing, node): readonly SmallBatchLoss[] => {
    if (thing.kind !== 'component' || thing.channel !== null) return [];
    const pieceOn = (day: number): RecipePiece | null =>
      inSegment(period.recipes[node] ?? [], segmentOfDay[day] as number);
    const use = Float64Array.from({ length: days }, (_, day) => {
      const served = need[node * days + day] as number;
      return served / (1 - (pieceOn(day)?.version.breakage ?? 0));
    });
    const used = use.reduce((sum, each) => sum + each, 0);
    const termsOf = (day: number): BatchTerms | null => batchTerms(pieceOn(day));
    const isUnknown = use.some((each, day) => each !== 0 && termsOf(day) === null);
    if (used === 0 || isUnknown) {
      return [{ node, thing, used, made: null, thrown: null, lost: null, money: null }];
    }
    const { made, thrown } = runBatches(use, termsOf);
    const lost = thrown / made;
    const cost = use.reduce((sum: number | null, _, day) => {
      const cell = node * period.segments.count + (segmentOfDay[day] as number);
      const served = need[node * days + day] as number;
      if (sum === null || served === 0) return sum;
      return period.complete[cell] === 1 ? sum + served * (period.costs.food[cell] as number) : null;
    }, 0);
    return [{ node, thing, used, made, thrown, lost, money: cost === null ? null : (cost * lost) / (1 - lost) }];
  });
}

/** Small-batch loss in one base unit of everything. Tables: entry node * segments + segment. */
export interface LossPerUnit {
  readonly loss: Float64Array;
  /** 1 where something that it is made of has no loss that is known. */
  readonly unknown: Uint8Array;
}

/**
 * A thing's share of the losses by its use of the components that make them: sum over all components in it, however deep, of the
 * amount in one unit * unit cost (food and drink, without q) * lost / (1 - lost). Summed over what was served it is the losses' money.
 */
export function lossPerUnit(period: CostedPeriod, losses: readonly SmallBatchLoss[]): LossPerUnit {
  const { count } = period.segments;
  const loss = new Float64Array(period.things.length * count);
  const unknown = new Float64Array(period.things.length * count);
  for (const { node, lost } of losses) {
    for (let cell = node * count; cell < (node + 1) * count; cell++) {
      if (lost === null) unknown[cell] = 1;
      else loss[cell] = ((period.costs.food[cell] as number) * lost) / (1 - lost);
    }
  }
  const touched = upward(period.lines, unknown, count);
  return { loss: upward(period.lines, loss, count), unknown: Uint8Array.from(touched, (each) => (each === 0 ? 0 : 1)) };
}
