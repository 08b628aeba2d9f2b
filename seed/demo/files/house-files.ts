import { LABOUR, VENUE } from '../house';
import { INGREDIENTS } from '../ingredients/all-ingredients';
import { MEASURES, PARTS, YIELDS } from '../ingredients/measures-and-parts';
import { money } from '../rounding';
import type { Table } from './csv-table';

export const HOUSE_FILES: readonly Table[] = [
  { file: 'venue.csv', columns: ['setting', 'value'], rows: VENUE },
  {
    file: 'labour.csv',
    columns: ['grade', 'valid_from', 'cost_per_hour'],
    rows: LABOUR.map(([grade, from, cost]) => [grade, from, money(cost)]),
  },
  {
    file: 'ingredients.csv',
    columns: [
      'ingredient',
      'measure',
      'valid_from',
      'product_group',
      'department',
      'density_g_per_ml',
      'grams_each',
      'usable_yield_pct',
      'contains',
      'may_contain',
      'counted',
      'storage_place',
    ],
    rows: INGREDIENTS.map((each) => [
      each.name,
      each.measure,
      undefined,
      each.group,
      each.department ?? 'food',
      each.gramsPerMl,
      each.gramsEach,
      each.usablePct ?? 100,
      each.contains,
      each.mayContain ?? 'none',
      each.place === undefined ? 'no' : 'yes',
      each.place,
    ]),
  },
  { file: 'measures.csv', columns: ['ingredient', 'name', 'quantity', 'unit'], rows: MEASURES },
  {
    file: 'parts.csv',
    columns: ['ingredient', 'part', 'output_quantity', 'output_unit', 'cost_share_pct'],
    rows: PARTS.map((part) => [part.ingredient, part.part, ...part.output, part.costSharePct]),
  },
  { file: 'yields.csv', columns: ['ingredient', 'use', 'usable_yield_pct'], rows: YIELDS },
];
