import { RECIPES } from '../kitchen/recipe-book';
import { DELIVERY_COMMISSION_PCT, MENU, TAX_PCT } from '../menu';
import { money } from '../rounding';
import type { Recipe } from '../shapes';
import type { Cell, Table } from './csv-table';

function recipeRow(recipe: Recipe): readonly Cell[] {
  return [
    recipe.name,
    recipe.kind,
    recipe.from,
    recipe.section,
    recipe.department,
    ...(recipe.gives ?? [undefined, undefined]),
    ...(recipe.also ?? [undefined, undefined]),
    recipe.overrunPct,
    recipe.lossG,
    recipe.breakagePct,
    ...(recipe.handsOn ?? [undefined, undefined]),
    ...(recipe.plating ?? [undefined, undefined]),
    recipe.keepsDays,
    recipe.smallestBatch,
    recipe.thrownAtClose ? 'yes' : undefined,
    recipe.cautions,
    recipe.estimatedCost === undefined ? undefined : money(recipe.estimatedCost),
  ];
}

function lineRows(recipe: Recipe): readonly (readonly Cell[])[] {
  return recipe.lines.map(([item, quantity, unit, detail = {}]) => [
    recipe.name,
    recipe.from,
    item,
    quantity,
    unit,
    detail.as,
    detail.use,
    detail.part,
    detail.choice,
    detail.sharePct,
    detail.channel,
    detail.credit === undefined ? undefined : money(detail.credit),
    detail.note,
  ]);
}

export const RECIPE_FILES: readonly Table[] = [
  {
    file: 'recipes.csv',
    columns: [
      'recipe',
      'kind',
      'valid_from',
      'section',
      'department',
      'yield_quantity',
      'yield_unit',
      'also_quantity',
      'also_unit',
      'overrun_pct',
      'batch_loss_g',
      'breakage_pct',
      'hands_on_minutes',
      'grade',
      'plating_minutes',
      'plating_grade',
      'shelf_life_days',
      'smallest_batch',
      'thrown_at_close',
      'cautions',
      'estimated_cost',
    ],
    rows: RECIPES.map(recipeRow),
  },
  {
    file: 'recipe_lines.csv',
    columns: [
      'recipe',
      'valid_from',
      'item',
      'quantity',
      'unit',
      'as',
      'use',
      'part',
      'choice',
      'choice_share_pct',
      'channel',
      'by_product_credit',
      'note',
    ],
    rows: RECIPES.flatMap(lineRows),
  },
  {
    file: 'menu.csv',
    columns: ['item', 'channel', 'valid_from', 'price', 'tax_pct', 'tax_included', 'commission_pct', 'off_menu'],
    rows: MENU.map((step) => [
      step.item,
      step.channel,
      step.from,
      money(step.price),
      TAX_PCT,
      'yes',
      step.channel === 'delivery' ? DELIVERY_COMMISSION_PCT : undefined,
      step.off ? 'yes' : undefined,
    ]),
  },
];
