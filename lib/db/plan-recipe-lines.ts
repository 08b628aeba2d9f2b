import type { Day } from '../core/days';
import { closedFault, type Outcome, sameValues } from './plan-keyed';

/** A line that is to stand at a place of what it belongs to (a version of a recipe, a trial), in place of the one there. */
export interface WantedLine<Values> {
  readonly position: number;
  readonly values: (stored: Values | null) => Values;
}

export interface StoredLine<Values> {
  readonly id: number;
  readonly position: number;
  readonly values: Values;
}

export interface LinesPlan<Values> {
  readonly outcomes: readonly Outcome[];
  readonly create: readonly { readonly position: number; readonly values: Values }[];
  readonly change: readonly { readonly id: number; readonly values: Values }[];
  readonly remove: readonly number[];
}

/**
 * The lines of one version or trial against those that are stored, place by place. `whole`: they are the whole truth for it, and lines at other
 * places are withdrawn; else they are lines that had waited, and join those that are there. What holds from a closed day takes all
 * lines as they are or refuses all.
 */
export function planLines<Values extends object>(
  wanted: readonly WantedLine<Values>[],
  stored: readonly StoredLine<Values>[],
  whole: boolean,
  from: Day | null,
  closedThrough: Day | null,
  column = 'valid_from',
): LinesPlan<Values> {
  const there = new Map(stored.map((line) => [line.position, line]));
  const create: { position: number; values: Values }[] = [];
  const change: { id: number; values: Values }[] = [];
  const outcomes = wanted.map(({ position, values: valuesGiven }): Outcome => {
    const before = there.get(position);
    const values = valuesGiven(before?.values ?? null);
    if (before && sameValues(before.values, values)) return 'unchanged';
    if (before) change.push({ id: before.id, values });
    else create.push({ position, values });
    return before ? 'changed' : 'taken';
  });
  const places = new Set(wanted.map(({ position }) => position));
  const remove = whole ? stored.filter(({ position }) => !places.has(position)).map(({ id }) => id) : [];
  const closed = closedFault(from, closedThrough, column);
  if (closed && create.length + change.length + remove.length > 0) {
    return { outcomes: outcomes.map(() => closed), create: [], change: [], remove: [] };
  }
  return { outcomes, create, change, remove };
}
