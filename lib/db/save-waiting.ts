import { type Day, dayText } from '../core/days';
import { grouped } from '../core/grouped';
import { type RowFault, type RowRule, WAITS_FOR_ANOTHER_FILE } from '../model/refusal';
import type { VenueTx } from './in-venue';

type Raw = Readonly<Record<string, string>>;

/** A row that could not be taken, as it is kept until it is mended. */
export interface RefusedRow {
  readonly line: number;
  readonly raw: Raw;
  /** What it speaks for; null where that cannot be read. */
  readonly key: string | null;
  readonly day: Day | null;
  readonly fault: RowFault;
}

/** A row that is kept, with its number and the load that brought it. */
export interface WaitingRow {
  readonly id: string;
  readonly load: number;
  readonly source: string;
  readonly line: number;
  readonly raw: Raw;
  readonly key: string | null;
  readonly fault: RowFault;
}

/** A file that speaks: the keys that it speaks for, and its rows, by which it mends rows of which no key could be read. */
export interface SpeakingFile {
  readonly load: number;
  readonly kind: string;
  readonly source: string;
  readonly speaksFor: ReadonlySet<string>;
  readonly rows: readonly { readonly line: number; readonly raw: Raw }[];
}

const COLUMNS = `id::text as id, load_id as load, source, line, raw, row_key as key,
  json_build_object('rule', rule, 'column', about_column, 'value', about_value, 'facts', facts) as fault`;

/** Kinds of which every source says its own; of all others there is one truth, whoever brings it. */
const BY_SOURCE: readonly string[] = ['sales', 'covers', 'moves'];

/** What is refused because a version is closed does not count against it: its key says so, and is spoken for with the version's. */
export const CLOSED_KEY = 'closed|';

/**
 * Keeps the refused rows of a file and lets go of the earlier ones that it replaces: those for whose key it speaks, and of those without
 * a key the ones that it holds again or has mended (the same line, all cells the same but the one that was refused). A row that is kept
 * already stays as it is. Answers whether anything altered.
 */
export async function replaceWaiting(
  tx: VenueTx,
  file: SpeakingFile,
  refused: readonly RefusedRow[],
): Promise<boolean> {
  const spoken = [...file.speaksFor].flatMap((key) => [key, `${CLOSED_KEY}${key}`]);
  const { rows: there } = await tx.bulk.query<WaitingRow>(
    `select ${COLUMNS} from waiting_row
     where venue_id = $1 and kind = $2 and (source = $3 or not $4) and (row_key is null or row_key = any($5)) order by id`,
    [tx.venue, file.kind, file.source, BY_SOURCE.includes(file.kind), spoken],
  );
  const again = new Set(file.rows.map(({ raw }) => sorted(raw)));
  const byLine = new Map(file.rows.map(({ line, raw }) => [line, raw]));
  const replaced = there.filter(
    (row) => row.key !== null || again.has(sorted(row.raw)) || isMended(row, byLine.get(row.line)),
  );
  const same = grouped(replaced, identity);
  const fresh = refused.filter((row) => !same.get(identity(row))?.shift());
  const gone = [...same.values()].flat().map(({ id }) => id);
  if (gone.length > 0) {
    await tx.bulk.query('delete from waiting_row where venue_id = $1 and id = any($2::bigint[])', [tx.venue, gone]);
  }
  await insertWaiting(tx, file, fresh);
  return gone.length + fresh.length > 0;
}

async function insertWaiting(tx: VenueTx, file: SpeakingFile, rows: readonly RefusedRow[]): Promise<void> {
  const AT_ONCE = 10_000;
  for (let from = 0; from < rows.length; from += AT_ONCE) {
    const some = rows.slice(from, from + AT_ONCE).map(({ line, raw, key, day, fault }) => ({
      line,
      raw,
      row_key: key,
      day: day === null ? null : dayText(day),
      rule: fault.rule,
      about_column: fault.column,
      about_value: fault.value,
      facts: fault.facts,
    }));
    await tx.bulk.query(
      `insert into waiting_row (venue_id, load_id, kind, source, line, raw, row_key, day, rule, about_column, about_value, facts)
       select $1, $2, $3, $4, line, raw, row_key, day, rule, about_column, about_value, facts
       from jsonb_to_recordset($5::jsonb) as r (line int, raw jsonb, row_key text, day date, rule text, about_column text,
         about_value text, facts jsonb)`,
      [tx.venue, file.load, file.kind, file.source, JSON.stringify(some)],
    );
  }
}

/** The database keeps no order of names. */
function sorted(value: Readonly<Record<string, unknown>>): string {
  return JSON.stringify(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function identity({ line, raw, key, fault }: Pick<RefusedRow, 'line' | 'raw' | 'key' | 'fault'>): string {
  return JSON.stringify([line, sorted(raw), key, fault.rule, fault.column, fault.value, sorted(fault.facts)]);
}

function isMended(row: WaitingRow, now: Raw | undefined): boolean {
  const { column } = row.fault;
  if (!now || column === null || now[column] === row.raw[column]) return false;
  return sorted({ ...now, [column]: '' }) === sorted({ ...row.raw, [column]: '' });
}

/** The rows of a kind that wait for what another file may bring, oldest load first, in the order of their files. */
export async function waitingForOthers(tx: VenueTx, kind: string): Promise<readonly WaitingRow[]> {
  const { rows } = await tx.bulk.query<WaitingRow>(
    `select ${COLUMNS} from waiting_row
     where venue_id = $1 and kind = $2 and status = 'waiting' and rule = any($3) order by load_id, line, id`,
    [tx.venue, kind, WAITS_FOR_ANOTHER_FILE],
  );
  return rows;
}

/** Lets go of rows that were taken, and writes down what others still wait for, where that has altered. */
export async function settleWaiting(
  tx: VenueTx,
  taken: readonly WaitingRow[],
  refused: readonly { readonly row: WaitingRow; readonly fault: RowFault }[],
): Promise<void> {
  await tx.bulk.query('delete from waiting_row where venue_id = $1 and id = any($2::bigint[])', [
    tx.venue,
    taken.map(({ id }) => id),
  ]);
  const altered = refused
    .filter(({ row, fault }) => identity(row) !== identity({ ...row, fault }))
    .map(({ row, fault }) => ({
      id: row.id,
      rule: fault.rule satisfies RowRule,
      about_column: fault.column,
      about_value: fault.value,
      facts: fault.facts,
    }));
  if (altered.length === 0) return;
  await tx.bulk.query(
    `update waiting_row w set rule = r.rule, about_column = r.about_column, about_value = r.about_value, facts = r.facts
     from jsonb_to_recordset($2::jsonb) as r (id bigint, rule text, about_column text, about_value text, facts jsonb)
     where w.venue_id = $1 and w.id = r.id`,
    [tx.venue, JSON.stringify(altered)],
  );
}
