import { parse } from 'csv-parse/sync';
import type { ReferenceRow } from '../../lib/model/reference/reference-row';
import { PICKED_FOODS, type PickedFood } from './picked-foods';

type Figures = Readonly<Record<string, string>>;

const numberIn = (cell: string | undefined): number | null => (cell ? Number(cell) : null);

/**
 * The measure that a weight is known for: the cup where there is one, being the largest, then fluid ounce, tablespoon, teaspoon. A cup of
 * the whole fruit, of which only the weight that it yields is given, says nothing of a density.
 */
function weighed(figures: Figures): ReferenceRow[5] {
  const said = figures.cup_measure_text ?? '';
  const ways = [
    ['us cup', said.endsWith('yields') ? undefined : figures.cup_g, said],
    ['us fl oz', figures.fl_oz_g, 'fl oz'],
    ['us tbsp', figures.tbsp_g, 'tbsp'],
    ['us tsp', figures.tsp_g, 'tsp'],
  ] as const;
  for (const [unit, cell, words] of ways) {
    const grams = numberIn(cell);
    if (grams !== null) return [unit, grams, words];
  }
  return null;
}

function rowOf([name, ndb, ...also]: PickedFood, figuresOf: ReadonlyMap<string, Figures>): ReferenceRow {
  const figures = figuresOf.get(ndb);
  if (!figures) throw new Error(`${name}: there is no food ${ndb} among the figures`);
  const waste = numberIn(figures.refuse_pct);
  return [name, ndb, figures.description ?? '', waste, figures.refuse_desc || null, weighed(figures), also];
}

const LINE = 120;

function literal(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(literal).join(', ')}]`;
  if (typeof value !== 'string') return String(value);
  return value.includes("'") ? JSON.stringify(value) : `'${value}'`;
}

function rowText(row: ReferenceRow): string {
  const line = `  ${literal(row)},`;
  return line.length <= LINE ? line : `  [\n${row.map((cell) => `    ${literal(cell)},`).join('\n')}\n  ],`;
}

/** The file lib/model/reference/foods.ts, from the picked names and the figures of USDA SR28 (CSV). */
export function foodTable(sr28Figures: string): string {
  const rows = parse(sr28Figures, { columns: true }) as readonly Figures[];
  const figuresOf = new Map(rows.map((figures) => [figures.ndb_no ?? '', figures]));
  return `${[
    '// Written by seed/reference.ts: change seed/reference/picked-foods.ts and write it again.',
    "import type { ReferenceRow } from './reference-row';",
    '',
    '/** USDA ARS, National Nutrient Database for Standard Reference, release 28 (2015): refuse and weights of measures. */',
    'export const FOOD_ROWS: readonly ReferenceRow[] = [',
    ...PICKED_FOODS.map((food) => rowText(rowOf(food, figuresOf))),
    '];',
  ].join('\n')}\n`;
}
