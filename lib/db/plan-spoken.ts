import { grouped } from '../core/grouped';
import type { Outcome } from './plan-keyed';

/*
 * A load speaks as a whole for an invoice, or for the moves of a day: its lines are the truth, in place of those of the load that spoke
 * before. Where a row of it is refused it withdraws nothing: lines of the load before that it does not name again are carried over.
 */

/** A line that a file states. */
export interface StatedLine<Values> {
  /** Line of the file, from 1. */
  readonly line: number;
  /** What it is about: a line that names the same takes its place, whatever else it says. */
  readonly names: string;
  readonly values: Values;
}

/** A line that is stored: negative where it was carried over from the load before, in whose file it stood at that line. */
export type StoredSpoken<Values> = StatedLine<Values>;

export interface SpokenPlan<Values> {
  /** By the place of the line among those stated. */
  readonly outcomes: readonly Exclude<Outcome, object>[];
  /** All lines that are to be, carried ones with a negative line. */
  readonly lines: readonly { readonly line: number; readonly values: Values }[];
  readonly withdrawn: number;
  /** Nothing is to be written: the same lines are there, and the same of them are carried. */
  readonly same: boolean;
}

/** The lines that a file states of one invoice or day against those that are live. `complete`: none of its rows is refused. */
export function planSpoken<Values extends object>(
  stated: readonly StatedLine<Values>[],
  live: readonly StoredSpoken<Values>[],
  complete: boolean,
): SpokenPlan<Values> {
  const ownFirst = [...live.filter(({ line }) => line > 0), ...live.filter(({ line }) => line < 0)];
  const bySaying = grouped(ownFirst, ({ values }) => JSON.stringify(values));
  const answered = new Set<StoredSpoken<Values>>();
  const exact = stated.map(({ values }) => {
    const found = bySaying.get(JSON.stringify(values))?.shift();
    if (found) answered.add(found);
    return found;
  });
  const byName = grouped(
    ownFirst.filter((line) => !answered.has(line)),
    ({ names }) => names,
  );
  const outcomes = stated.map(({ names }, place) => {
    if (exact[place]) return 'unchanged';
    const found = byName.get(names)?.shift();
    if (found) answered.add(found);
    return found ? 'changed' : 'taken';
  });
  const named = new Set(stated.map(({ names }) => names));
  const left = live.filter((line) => !answered.has(line));
  const carried = complete ? [] : left.filter(({ names }) => !named.has(names));
  const lines = [
    ...stated.map(({ line, values }) => ({ line, values })),
    ...carried.map(({ line, values }) => ({ line: -Math.abs(line), values })),
  ];
  return { outcomes, lines, withdrawn: left.length - carried.length, same: marked(lines) === marked(live) };
}

function marked<Values>(lines: readonly { readonly line: number; readonly values: Values }[]): string {
  return lines
    .map(({ line, values }) => `${line < 0 ? 'carried' : 'own'} ${JSON.stringify(values)}`)
    .sort()
    .join('\n');
}
