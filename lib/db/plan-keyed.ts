import { type Day, dayText } from '../core/days';
import { nameKey } from '../core/name-key';
import type { RefusalFacts, RowFault, RowRule } from '../model/refusal';

/** What became of a row: new, different from what was there, the same, or why it cannot be taken. */
export type Outcome = 'taken' | 'changed' | 'unchanged' | RowFault;

/** A row that was read, with its line in the file. */
export interface Stated<Row> {
  readonly line: number;
  readonly row: Row;
}

/** What saving the rows of one file came to: an outcome for each row, in their order. */
export interface Saved {
  readonly outcomes: readonly Outcome[];
  /** Rows of an earlier load that this one took out. */
  readonly withdrawn: number;
}

export function fault(rule: RowRule, column: string | null, value: string | null, facts: RefusalFacts = {}): RowFault {
  return { rule, column, value, facts };
}

/** A row that wants to be a fact: the key that it speaks for, and its values given those that are there. */
export interface Wanted<Row, Values> extends Stated<Row> {
  readonly key: string;
  /** The day from which the fact holds, null from the beginning; left out where the fact has no date. */
  readonly from?: Day | null;
  readonly values: (stored: Values | null) => Values;
}

export interface KeyedPlan<Row, Values> {
  /** By the place of the row among those wanted. */
  readonly outcomes: readonly Outcome[];
  readonly create: readonly { readonly row: Row; readonly values: Values }[];
  readonly change: readonly { readonly row: Row; readonly id: number; readonly values: Values }[];
}

/**
 * Compares rows with what is stored under their keys: new, changed or the same. A second row for a key is the same as the first or is
 * refused, since nobody can tell which of the two holds. A fact that holds from a closed day can no longer change.
 */
export function planKeyed<Row, Values extends object>(
  wanted: readonly (Wanted<Row, Values> | RowFault)[],
  stored: ReadonlyMap<string, { readonly id: number; readonly values: Values }>,
  closedThrough: Day | null,
): KeyedPlan<Row, Values> {
  const first = new Map<string, { readonly line: number; readonly values: Values; readonly outcome: Outcome }>();
  const create: { row: Row; values: Values }[] = [];
  const change: { row: Row; id: number; values: Values }[] = [];
  const outcomes = wanted.map((asked): Outcome => {
    if ('rule' in asked) return asked;
    const { row, line, key, from } = asked;
    const before = stored.get(key) ?? null;
    const values = asked.values(before?.values ?? null);
    const said = first.get(key);
    if (said && !sameValues(said.values, values, SPELLING)) return fault('said-twice', null, null, { line: said.line });
    if (said) return isFault(said.outcome) ? said.outcome : 'unchanged';
    const outcome = compared(before?.values ?? null, values, from, closedThrough);
    first.set(key, { line, values, outcome });
    if (before && outcome === 'changed') change.push({ row, id: before.id, values });
    if (outcome === 'taken') create.push({ row, values });
    return outcome;
  });
  return { outcomes, create, change };
}

function compared<Values extends object>(
  stored: Values | null,
  values: Values,
  from: Day | null | undefined,
  closedThrough: Day | null,
): Outcome {
  if (stored && sameValues(stored, values)) return 'unchanged';
  return closedFault(from, closedThrough) ?? (stored ? 'changed' : 'taken');
}

/** Why a fact that holds from a day cannot change any more, or null. A fact without a date (undefined) is not closed. */
export function closedFault(
  from: Day | null | undefined,
  closedThrough: Day | null,
  column = 'valid_from',
): RowFault | null {
  if (closedThrough === null || from === undefined || (from !== null && from > closedThrough)) return null;
  return fault('closed', column, isoDay(from) ?? '', { through: dayText(closedThrough) });
}

/** The same outcome; what is closed is told of the column of a file whose rows have a date. */
export function dayOfFault(outcome: Outcome): Outcome {
  return isFault(outcome) && outcome.rule === 'closed' ? { ...outcome, column: 'date' } : outcome;
}

/** Columns that hold a name as it was written: the first spelling in a file holds, another one of the same name is no contradiction. */
const SPELLING: readonly string[] = ['name', 'code', 'grade'];

/** Whether two hold the same; of the columns in `names` the spelling is left aside. */
export function sameValues<Values extends object>(a: Values, b: Values, names: readonly string[] = []): boolean {
  const other = new Map<string, unknown>(Object.entries(b));
  const written = (name: string, value: unknown) =>
    typeof value === 'string' && names.includes(name) ? nameKey(value) : JSON.stringify(value);
  return Object.entries(a).every(([name, value]) => written(name, value) === written(name, other.get(name)));
}

/** What a cell says: its value, null where it is blank; a column that the file does not have leaves what is stored. */
export function kept<Value>(stated: Value | undefined, stored: Value | undefined, unsaid: Value): Value {
  return stated === undefined ? (stored ?? unsaid) : stated;
}

/** A day as the tables hold it. */
export function isoDay(day: Day | null): string | null {
  return day === null ? null : dayText(day);
}

export function isFault(outcome: Outcome): outcome is RowFault {
  return typeof outcome === 'object';
}
