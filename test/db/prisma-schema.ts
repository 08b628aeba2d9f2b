/** What prisma/schema.prisma says of the database: one line a column, key, index, reference and kind, in the words of PostgreSQL's catalogue. */
export interface StatedSchema {
  readonly columns: readonly string[];
  readonly keys: readonly string[];
  readonly references: readonly string[];
  readonly kinds: readonly string[];
}

interface Block {
  readonly word: 'model' | 'enum';
  readonly name: string;
  readonly mapped: string;
  readonly lines: readonly string[];
}

const TYPES: Readonly<Record<string, string>> = {
  Int: 'integer',
  BigInt: 'bigint',
  String: 'text',
  Boolean: 'boolean',
  Json: 'jsonb',
  Bytes: 'bytea',
  'Decimal @db.Decimal': 'numeric',
  'DateTime @db.Date': 'date',
  'DateTime @db.Time(6)': 'time without time zone',
  'DateTime @db.Timestamptz(6)': 'timestamp with time zone',
};
const ACTIONS: Readonly<Record<string, string>> = { NoAction: 'a', Cascade: 'c', Restrict: 'r', SetNull: 'n' };
const FIELD = /^(\w+)\s+(\w+)(\[\]|\?)?((?:\s+@.*)?)$/;

/** Reads the schema strictly: a line that it does not understand is an error, never left out. */
export function readPrismaSchema(text: string): StatedSchema {
  const blocks = blocksOf(text);
  const mapped = new Map(blocks.map(({ name, mapped }) => [name, mapped]));
  const models = blocks.filter(({ word }) => word === 'model').map((block) => readModel(block, blocks, mapped));
  const kinds = blocks.filter(({ word }) => word === 'enum');
  return {
    columns: models.flatMap(({ columns }) => columns).sort(),
    keys: models.flatMap(({ keys }) => keys).sort(),
    references: models.flatMap(({ references }) => references).sort(),
    kinds: kinds
      .map(({ mapped, lines }) => `${mapped}: ${lines.map((line) => mapOf(line) ?? line.split(/\s/)[0]).join(', ')}`)
      .sort(),
  };
}

function blocksOf(text: string): Block[] {
  return [...text.matchAll(/^(model|enum) (\w+) \{\n(.*?)^\}/gms)].map(([, word, name = '', body = '']) => {
    const all = body
      .split('\n')
      .map((line) => line.replace(/\s*\/\/.*$/, '').trim())
      .filter((line) => line !== '');
    const lines = all.filter((line) => !line.startsWith('@@map('));
    const mapped = all.map((line) => /^@@map\("(\w+)"\)$/.exec(line)?.[1]).find((found) => found !== undefined) ?? name;
    return { word: word === 'enum' ? 'enum' : 'model', name, mapped, lines };
  });
}

function readModel({ mapped: table, lines }: Block, blocks: readonly Block[], mapped: ReadonlyMap<string, string>) {
  const columns: string[] = [];
  const keys: string[] = [];
  const references: string[] = [];
  const own = columnNames(lines);
  const list = (names = '', from = own) =>
    names
      .split(',')
      .map((name) => from.get(name.trim()) ?? unread(`${table}: ${name}`))
      .join(', ');

  for (const line of lines) {
    const key = /^@@(id|unique|index)\(\[([\w, ]+)\]\)$/.exec(line);
    const field = FIELD.exec(line);
    if (key) keys.push(`${table} ${key[1]} (${list(key[2])})`);
    else if (!field) unread(line);
    else {
      const [, name = '', type = '', many = '', attributes = ''] = field;
      const other = blocks.find((block) => block.word === 'model' && block.name === type);
      const native = /@db\.\w+(?:\(\d+\))?/.exec(attributes)?.[0];
      const kind =
        TYPES[native ? `${type} ${native}` : type] ?? (other ? null : mapped.get(type)) ?? (other ? '' : unread(line));
      if (other) {
        const relation =
          /@relation\((?:"\w+", )?fields: \[([\w, ]+)\], references: \[([\w, ]+)\], onDelete: (\w+), onUpdate: (\w+)\)/.exec(
            attributes,
          );
        if (!relation && !/^(@relation\("\w+"\))?$/.test(attributes.trim())) unread(line);
        if (!relation) continue; // the other side of it
        const there = list(relation[2], columnNames(other.lines));
        const actions = `${ACTIONS[relation[3] ?? '']}${ACTIONS[relation[4] ?? '']}`;
        references.push(`${table} (${list(relation[1])}) -> ${other.mapped} (${there}) ${actions}`);
        continue;
      }
      const filled = /@default\(autoincrement\(\)\)/.test(attributes)
        ? ' identity'
        : /@default\(/.test(attributes)
          ? ' default'
          : '';
      columns.push(
        `${table}.${own.get(name)} ${kind}${many === '[]' ? '[]' : ''}${many === '?' ? '' : ' not null'}${filled}`,
      );
      if (/@id\b/.test(attributes)) keys.push(`${table} id (${own.get(name)})`);
      if (/@unique\b/.test(attributes)) keys.push(`${table} unique (${own.get(name)})`);
    }
  }
  return { columns, keys, references };
}

function columnNames(lines: readonly string[]): ReadonlyMap<string, string> {
  return new Map(
    lines
      .map((line) => FIELD.exec(line))
      .filter((field) => field !== null)
      .map(([line, name = '']) => [name, mapOf(line) ?? name]),
  );
}

const mapOf = (line: string): string | null => /(?<!@)@map\("([^"]+)"\)/.exec(line)?.[1] ?? null;

function unread(line: string): never {
  throw new Error(`prisma/schema.prisma has a line that this reader does not understand: ${line}`);
}
