import { grouped } from '../core/grouped';
import type { VenueTx } from './in-venue';
import type { StoredSpoken } from './plan-spoken';
import { columnsRead, type FactRow, type FactTable, insertRows } from './save-rows';

type SpokenColumns = Readonly<Record<string, 'int' | 'numeric' | 'text' | 'date' | 'purchase_kind' | 'move_reason'>>;

/** What a line holds by the names of its columns; `day` is one of them. */
export type SpokenValues = FactRow<SpokenColumns>;

/** Facts of which a load speaks for several as a whole: the lines of an invoice, the moves of a day. */
export interface SpokenKind {
  readonly kind: 'purchases' | 'moves';
  /** The table with what its lines hold, beside the load, the line and (of purchases) the scope. */
  readonly table: FactTable<SpokenColumns>;
  /** What a line is about: a line that names the same takes its place, whatever else it says. */
  readonly names: (values: SpokenValues) => string;
}

/** What speaks now for an invoice or a day. */
export interface LiveScope {
  readonly scope: string;
  readonly load: number;
  /** The day by which it is closed with its period, as ISO text. */
  readonly day: string;
  readonly lines: readonly StoredSpoken<SpokenValues>[];
}

/** Moves are told by day and source; an invoice is one whoever brings it. */
const KEYS = {
  moves: { scope: `to_char(s.day, 'YYYY-MM-DD')`, ofLine: 's.day = r.day', bySource: true },
  purchases: { scope: 's.scope', ofLine: 's.scope = r.scope', bySource: false },
} as const;

/** What speaks now for some invoices or days, by their scope. */
export async function liveScopes(
  tx: VenueTx,
  { kind, table, names }: SpokenKind,
  source: string,
  scopes: readonly string[],
): Promise<ReadonlyMap<string, LiveScope>> {
  const { scope, ofLine, bySource } = KEYS[kind];
  const { rows } = await tx.bulk.query<
    { of_scope: string; of_load: number; scope_day: string; of_line: number | null } & SpokenValues
  >(
    `select ${scope} as of_scope, s.load_id as of_load, to_char(s.day, 'YYYY-MM-DD') as scope_day, r.line as of_line, ${columnsRead(table, 'r')}
     from load_scope s left join ${table.name} r on r.venue_id = s.venue_id and r.load_id = s.load_id and ${ofLine}
     where s.venue_id = $1 and s.kind = $2 and (s.source = $3 or not $4) and s.live and ${scope} = any($5) order by r.line`,
    [tx.venue, kind, source, bySource, scopes],
  );
  return new Map(
    [...grouped(rows, (row) => row.of_scope)].map(([key, of]) => {
      const lines = of.flatMap(({ of_scope: _, of_load: __, scope_day: ___, of_line: line, ...values }) =>
        line === null ? [] : [{ line, names: names(values), values }],
      );
      return [key, { scope: key, load: of[0]?.of_load ?? 0, day: of[0]?.scope_day ?? '', lines }];
    }),
  );
}

/** An invoice or a day with the lines that are to be. */
export interface WrittenScope {
  readonly scope: string;
  readonly lines: readonly { readonly line: number; readonly values: SpokenValues }[];
}

/** Lets a load speak for some invoices or days from now on. */
export async function writeScopes(
  tx: VenueTx,
  kind: SpokenKind,
  { load, source }: { readonly load: number; readonly source: string },
  scopes: readonly WrittenScope[],
): Promise<void> {
  if (scopes.length === 0) return;
  const { scope, bySource } = KEYS[kind.kind];
  await tx.bulk.query(
    `update load_scope s set live = false
     where s.venue_id = $1 and s.kind = $2 and (s.source = $3 or not $4) and s.live and ${scope} = any($5)`,
    [tx.venue, kind.kind, source, bySource, scopes.map((written) => written.scope)],
  );
  const days = scopes.map((written) => ({
    scope: bySource ? '' : written.scope,
    day: written.lines.map(({ values }) => String(values.day)).sort()[0],
  }));
  await tx.bulk.query(
    `insert into load_scope (venue_id, kind, source, day, scope, load_id, live)
     select $1, $2, $3, day, scope, $4, true from jsonb_to_recordset($5::jsonb) as r (day date, scope text)`,
    [tx.venue, kind.kind, source, load, JSON.stringify(days)],
  );
  await addLines(tx, kind, load, scopes);
}

/** Adds lines to what a load says. */
export async function addLines(
  tx: VenueTx,
  { kind, table }: SpokenKind,
  load: number,
  scopes: readonly WrittenScope[],
): Promise<void> {
  const place = { load_id: 'int', line: 'int' } as const;
  const columns = kind === 'purchases' ? { ...place, scope: 'text' as const } : place;
  await insertRows(
    tx,
    { name: table.name, columns: { ...columns, ...table.columns } },
    scopes.flatMap(({ scope, lines }) =>
      lines.map(({ line, values }) => ({ load_id: load, line, ...(kind === 'purchases' ? { scope } : {}), ...values })),
    ),
  );
}

/** Takes out what a load carried over for some invoices or days, since it is complete there now. Answers how many rows that were. */
export async function dropCarried(
  tx: VenueTx,
  { kind, table }: SpokenKind,
  load: number,
  scopes: readonly string[],
): Promise<number> {
  const { scope, ofLine } = KEYS[kind];
  const { rowCount } = await tx.bulk.query(
    `delete from ${table.name} r using load_scope s
     where r.venue_id = $1 and r.load_id = $2 and r.line < 0 and s.venue_id = r.venue_id and s.load_id = r.load_id and s.kind = $3
       and ${ofLine} and ${scope} = any($4)`,
    [tx.venue, load, kind, scopes],
  );
  return rowCount ?? 0;
}

/** How many rows still wait, by what they would belong to. */
export async function stillWaiting(
  tx: VenueTx,
  { kind }: SpokenKind,
  source: string,
  scopes: readonly string[],
): Promise<ReadonlyMap<string, number>> {
  const { rows } = await tx.bulk.query<{ scope: string; rows: number }>(
    `select row_key as scope, count(*)::int as rows from waiting_row
     where venue_id = $1 and kind = $2 and (source = $3 or not $4) and status = 'waiting' and row_key = any($5) group by row_key`,
    [tx.venue, kind, source, KEYS[kind].bySource, scopes],
  );
  return new Map(rows.map(({ scope, rows: count }) => [scope, count]));
}

/** Whether a load has a refused row of which not even the invoice or the day could be read. */
export async function hasRowWithoutKey(tx: VenueTx, load: number): Promise<boolean> {
  const { rows } = await tx.bulk.query(
    `select from waiting_row where venue_id = $1 and load_id = $2 and status = 'waiting' and row_key is null limit 1`,
    [tx.venue, load],
  );
  return rows.length > 0;
}
