import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { freshDatabase } from '../fresh-database';
import { readPrismaSchema } from './prisma-schema';

const { db } = await freshDatabase();
const stated = readPrismaSchema(readFileSync('prisma/schema.prisma', 'utf8'));

const lines = async (question: string) => {
  const { rows } = await db.pool.query<{ line: string }>(question);
  return rows.map(({ line }) => line).sort();
};
const OURS = `c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and c.relname <> '_prisma_migrations'`;

test('a migrated database has the columns of prisma/schema.prisma: names, types, whether they may be empty or fill themselves', async () => {
  const found = await lines(`
    select c.relname || '.' || a.attname || ' ' || format_type(a.atttypid, a.atttypmod)
      || case when a.attnotnull then ' not null' else '' end
      || case when a.attidentity <> '' then ' identity' when a.atthasdef then ' default' else '' end as line
    from pg_attribute a join pg_class c on c.oid = a.attrelid where ${OURS} and a.attnum > 0 and not a.attisdropped`);
  expect(found.length).toBeGreaterThan(100);
  expect(found).toEqual(stated.columns);
});

test('a migrated database has the keys and indexes of prisma/schema.prisma (partial ones stand in the migrations alone)', async () => {
  const found = await lines(`
    select c.relname || case when i.indisprimary then ' id' when i.indisunique then ' unique' else ' index' end || ' ('
      || (select string_agg(a.attname, ', ' order by k.place) from unnest(i.indkey) with ordinality as k(number, place)
          join pg_attribute a on a.attrelid = c.oid and a.attnum = k.number) || ')' as line
    from pg_index i join pg_class c on c.oid = i.indrelid where ${OURS} and i.indpred is null and i.indexprs is null`);
  expect(found).toEqual(stated.keys);
});

test('a migrated database has the references of prisma/schema.prisma, with what a deletion does', async () => {
  const names = (columns: string, table: string) =>
    `(select string_agg(a.attname, ', ' order by n.place) from unnest(${columns}) with ordinality as n(number, place)
      join pg_attribute a on a.attrelid = ${table} and a.attnum = n.number)`;
  const found = await lines(`
    select c.relname || ' (' || ${names('k.conkey', 'k.conrelid')} || ') -> ' || k.confrelid::regclass || ' ('
      || ${names('k.confkey', 'k.confrelid')} || ') ' || k.confdeltype::text || k.confupdtype::text as line
    from pg_constraint k join pg_class c on c.oid = k.conrelid where ${OURS} and k.contype = 'f'`);
  expect(found).toEqual(stated.references);
});

test('a migrated database has the kinds of prisma/schema.prisma, in their order', async () => {
  const found = await lines(`
    select t.typname || ': ' || string_agg(e.enumlabel, ', ' order by e.enumsortorder) as line
    from pg_type t join pg_enum e on e.enumtypid = t.oid group by t.typname`);
  expect(found).toEqual(stated.kinds);
});

test('readPrismaSchema(text) refuses what it does not understand', () => {
  expect(() => readPrismaSchema('model A {\n  id Int @id\n  size Float\n}\n')).toThrow('size Float');
  expect(() => readPrismaSchema('model A {\n  id Int @id\n  @@fulltext([id])\n}\n')).toThrow('@@fulltext');
});
