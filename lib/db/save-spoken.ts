import { type Day, dayText } from '../core/days';
import { grouped } from '../core/grouped';
import type { RowFault } from '../model/refusal';
import type { VenueTx } from './in-venue';
import { fault, type Outcome, type Saved } from './plan-keyed';
import { planSpoken } from './plan-spoken';
import {
  addLines,
  dropCarried,
  hasRowWithoutKey,
  liveScopes,
  type SpokenKind,
  type SpokenValues,
  stillWaiting,
  type WrittenScope,
  writeScopes,
} from './save-spoken-scopes';

/** A row that was read: the invoice or day that it belongs to, and what it says, or why that cannot be taken. */
export interface WantedLine {
  readonly line: number;
  readonly scope: string;
  readonly says: SpokenValues | RowFault;
}

/** Who says it. */
export interface SpokenBy {
  readonly load: number;
  readonly source: string;
  readonly closedThrough: Day | null;
  /** Null: the rows had waited and join those that their own load said. */
  readonly speaksFor: ReadonlySet<string> | null;
  /** Invoices or days of which a row could not be read. */
  readonly incomplete: ReadonlySet<string>;
  /** Of a row of the file not even the invoice or day could be read, so it withdraws nothing. */
  readonly withdrawsNothing: boolean;
}

type SoundLine = Omit<WantedLine, 'says'> & { readonly values: SpokenValues; readonly place: number };

/** Saves the lines of a file by invoice or day. On one that is closed all rows that would alter anything are refused. */
export async function saveSpoken(
  tx: VenueTx,
  kind: SpokenKind,
  rows: readonly WantedLine[],
  by: SpokenBy,
): Promise<Saved> {
  const outcomes: Outcome[] = rows.map(({ says }) => (isRefused(says) ? says : 'unchanged'));
  const sound = rows.flatMap(({ line, scope, says }, place): SoundLine[] =>
    isRefused(says) ? [] : [{ line, scope, values: says, place }],
  );
  if (by.speaksFor === null) return join(tx, kind, sound, outcomes, by);
  const faulty = new Set([...by.incomplete, ...rows.flatMap(({ scope, says }) => (isRefused(says) ? [scope] : []))]);
  const byScope = grouped(sound, ({ scope }) => scope);
  const live = await liveScopes(tx, kind, by.source, [...byScope.keys()]);
  const written: WrittenScope[] = [];
  let withdrawn = 0;
  for (const [scope, lines] of byScope) {
    const there = live.get(scope);
    const stated = lines.map(({ line, values }) => ({ line, values, names: kind.names(values) }));
    const plan = planSpoken(stated, there?.lines ?? [], !by.withdrawsNothing && !faulty.has(scope));
    const days = [...plan.lines, ...(there?.lines ?? [])].map(({ values }) => String(values.day));
    const closed = plan.same ? null : closedAmong([...days, ...(there ? [there.day] : [])], by.closedThrough);
    for (const [index, { place }] of lines.entries()) outcomes[place] = closed ?? plan.outcomes[index] ?? 'unchanged';
    if (plan.same || closed) continue;
    withdrawn += plan.withdrawn;
    written.push({ scope, lines: plan.lines });
  }
  await writeScopes(tx, kind, by, written);
  return { outcomes, withdrawn };
}

/**
 * Rows that had waited join what speaks for their invoice or day; what was carried over there goes once no row of it waits any more. A row that
 * waits belongs to what speaks now: a file that speaks again lets go of it.
 */
async function join(
  tx: VenueTx,
  kind: SpokenKind,
  sound: readonly SoundLine[],
  outcomes: readonly Outcome[],
  by: SpokenBy,
): Promise<Saved> {
  const after = [...outcomes];
  let withdrawn = 0;
  const byScope = grouped(sound, ({ scope }) => scope);
  const live = await liveScopes(tx, kind, by.source, [...byScope.keys()]);
  const waiting = await stillWaiting(tx, kind, by.source, [...byScope.keys()]);
  for (const [scope, lines] of byScope) {
    const there = live.get(scope);
    const days = lines.map(({ values }) => String(values.day));
    const closed = closedAmong([...days, ...(there ? [there.day] : [])], by.closedThrough);
    for (const { place } of lines) after[place] = closed ?? 'taken';
    if (closed) continue;
    if (!there) await writeScopes(tx, kind, by, [{ scope, lines }]);
    else await addLines(tx, kind, there.load, [{ scope, lines }]);
    const complete = (waiting.get(scope) ?? 0) <= lines.length;
    const carries = there?.lines.some(({ line }) => line < 0) ?? false;
    if (there && carries && complete && !(await hasRowWithoutKey(tx, there.load))) {
      withdrawn += await dropCarried(tx, kind, there.load, [scope]);
    }
  }
  return { outcomes: after, withdrawn };
}

function isRefused(says: WantedLine['says']): says is RowFault {
  return 'rule' in says;
}

/** Why what touches some days (ISO texts) cannot be altered any more, or null. */
function closedAmong(days: readonly string[], closedThrough: Day | null): RowFault | null {
  if (closedThrough === null) return null;
  const through = dayText(closedThrough);
  const first = days.filter((day) => day <= through).sort()[0];
  return first === undefined ? null : fault('closed', 'date', first, { through });
}
