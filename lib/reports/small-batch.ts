import type { DayRange } from '../core/days';
import type { BaseUnit } from '../core/units';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { issuesOf } from '../model/reached';
import { smallBatchLosses } from '../model/small-batch/small-batch-loss';

/** What small batches of one component lose. Quantities in `unit`, money in venue currency. */
export interface ComponentLoss {
  readonly id: ItemId;
  readonly item: string;
  readonly unit: BaseUnit | null;
  /** Over all that was served in the period. */
  readonly used: number;
  readonly made: number | null;
  readonly thrown: number | null;
  /** thrown / made; null where nothing was used, or where smallest batch or days of life are not stated. */
  readonly lost: number | null;
  readonly money: number | null;
  /** It is used, and nobody has stated a smallest batch, or how many days it keeps. */
  readonly notStated: boolean;
}

export interface SmallBatch {
  readonly venue: VenueSettings;
  readonly period: DayRange;
  /** Most money first; those without a figure after them, by name. */
  readonly components: readonly ComponentLoss[];
  /** Money of all components of which it is known; null where it is known of none. */
  readonly money: number | null;
  readonly issues: readonly Issue[];
}

/** Which components are thrown because a batch is larger than what is used while it keeps, and what that costs. */
export function smallBatch(period: CostedPeriod): SmallBatch {
  const losses = smallBatchLosses(period);
  const known = losses.flatMap(({ money }) => money ?? []);
  const components = losses.map(({ node, thing, used, made, thrown, lost, money }) => ({
    ...{ id: thing.id, item: thing.name, used, made, thrown, lost, money },
    unit: period.measures[node]?.at(-1)?.measure?.base ?? null,
    notStated: used !== 0 && lost === null,
  }));
  return {
    venue: period.venue,
    period: period.range,
    components: components.sort((a, b) => (b.money ?? -1) - (a.money ?? -1)), // equal ones stay in the order of names
    money: known.length === 0 ? null : known.reduce((sum, each) => sum + each, 0),
    issues: issuesOf(
      period,
      losses.map(({ node }) => node),
    ),
  };
}
