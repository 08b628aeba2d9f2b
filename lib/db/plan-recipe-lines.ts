import type { Day } from '../core/days';
import { closedFault, type Outcome, sameValues } from './plan-keyed';

/** What a line of a recipe holds, by the names of the columns. */
export interface LineValues {
  readonly item_id: number;
  readonly quantity: string;
  readonly unit: string;
  readonly used_as: 'prepared' | 'bought';
  readonly note: string | null;
}

/** A line that is to stand at a place of a version, in place of the one there. */
export interface WantedLine {
  readonly position: number;
  readonly values: (stored: LineValues | null) => LineValues;
}

export interface StoredLine {
  readonly id: number;
  readonly position: number;
  readonly values: LineValues;
}

export interface VersionPlan {
  readonly outcomes: readonly Outcome[];
  readonly create: readonly { readonly position: number; readonly values: LineValues }[];
  readonly change: readonly { readonly id: number; readonly values: LineValues }[];
  readonly remove: readonly number[];
}

/**
 * The lines of one version against those that are stored, place by place. `whole`: they are the whole truth for the version, and lines at other
 * places are withdrawn; else they are lines that had waited, and join those that are there. A version that holds from a closed day
 * takes all lines as they are or refuses all.
 */
export function planLines(
  wanted: readonly WantedLine[],
  stored: readonly StoredLine[],
  whole: boolean,
  from: Day | null,
  closedThrough: Day | null,
): VersionPlan {
  const there = new Map(stored.map((line) => [line.position, line]));
  const create: { position: number; values: LineValues }[] = [];
  const change: { id: number; values: LineValues }[] = [];
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
  const closed = closedFault(from, closedThrough);
  if (closed && create.length + change.length + remove.length > 0) {
    return { outcomes: outcomes.map(() => closed), create: [], change: [], remove: [] };
  }
  return { outcomes, create, change, remove };
}
