import type { VenueTx } from './in-venue';

type SqlType =
  | 'int'
  | 'numeric'
  | 'text'
  | 'text[]'
  | 'date'
  | 'boolean'
  | 'item_kind'
  | 'base_unit'
  | 'department'
  | 'price_kind'
  | 'line_as'
  | 'purchase_kind'
  | 'move_reason';

/** A table of edited facts with its columns beside venue_id and id, in the words of the migration. */
export interface FactTable<Columns extends Readonly<Record<string, SqlType>>> {
  readonly name: string;
  readonly columns: Columns;
}

type InProgram<Type extends SqlType> = Type extends 'int'
  ? number
  : Type extends 'boolean'
    ? boolean
    : Type extends 'text[]'
      ? readonly string[]
      : string;

/** A row as the program holds it: exact decimals and days as text in their one shortest form, so that equal values are equal texts. */
export type FactRow<Columns extends Readonly<Record<string, SqlType>>> = {
  readonly [Name in keyof Columns]: InProgram<Columns[Name]> | null;
};

export function factTable<const Columns extends Readonly<Record<string, SqlType>>>(
  name: string,
  columns: Columns,
): FactTable<Columns> {
  return { name, columns };
}

function asRead(column: string, name: string, type: SqlType): string {
  if (type === 'numeric') return `trim_scale(${column})::text as ${name}`;
  if (type === 'date') return `to_char(${column}, 'YYYY-MM-DD') as ${name}`;
  return type === 'int' || type === 'boolean' || type === 'text[]' ? column : `${column}::text as ${name}`;
}

/** The columns of a table in a query, read as the program holds them; `of` is what the query calls the table. */
export function columnsRead({ columns }: FactTable<Readonly<Record<string, SqlType>>>, of: string): string {
  return Object.entries(columns)
    .map(([name, type]) => asRead(`${of}.${name}`, name, type))
    .join(', ');
}

/** All rows of a table in this venue. */
export async function storedRows<Columns extends Readonly<Record<string, SqlType>>>(
  tx: VenueTx,
  table: FactTable<Columns>,
): Promise<(FactRow<Columns> & { readonly id: number })[]> {
  const { rows } = await tx.bulk.query<FactRow<Columns> & { readonly id: number }>(
    `select t.id, ${columnsRead(table, 't')} from ${table.name} t where t.venue_id = $1 order by t.id`,
    [tx.venue],
  );
  return rows;
}

const AT_ONCE = 20_000;

function* portions<Row>(rows: readonly Row[]): Generator<readonly Row[]> {
  for (let from = 0; from < rows.length; from += AT_ONCE) yield rows.slice(from, from + AT_ONCE);
}

/** Writes new rows, set-based. */
export async function insertRows<Columns extends Readonly<Record<string, SqlType>>>(
  tx: VenueTx,
  { name, columns }: FactTable<Columns>,
  rows: readonly FactRow<Columns>[],
): Promise<void> {
  const names = Object.keys(columns).join(', ');
  const typed = Object.entries(columns).map(([column, type]) => `${column} ${type}`);
  for (const some of portions(rows)) {
    await tx.bulk.query(
      `insert into ${name} (venue_id, ${names}) select $1, ${names} from jsonb_to_recordset($2::jsonb) as r (${typed.join(', ')})`,
      [tx.venue, JSON.stringify(some)],
    );
  }
}

/** Changes columns of rows that are there; every row names the same columns. */
export async function updateRows<Columns extends Readonly<Record<string, SqlType>>>(
  tx: VenueTx,
  { name, columns }: FactTable<Columns>,
  rows: readonly (Partial<FactRow<Columns>> & { readonly id: number })[],
): Promise<void> {
  const named = Object.keys(rows[0] ?? {}).filter((column) => column !== 'id');
  const typed = ['id int', ...named.map((column) => `${column} ${columns[column]}`)];
  const set = named.map((column) => `${column} = r.${column}`);
  for (const some of portions(rows)) {
    await tx.bulk.query(
      `update ${name} t set ${set.join(', ')} from jsonb_to_recordset($2::jsonb) as r (${typed.join(', ')})
       where t.venue_id = $1 and t.id = r.id`,
      [tx.venue, JSON.stringify(some)],
    );
  }
}

/** Takes rows out. */
export async function deleteRows(tx: VenueTx, table: { readonly name: string }, ids: readonly number[]): Promise<void> {
  if (ids.length === 0) return;
  await tx.bulk.query(`delete from ${table.name} where venue_id = $1 and id = any($2::int[])`, [tx.venue, ids]);
}
