import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import type { Department, ItemKind } from '../../model/facts';
import { CellFault, declaration, issueOf, needed, oneOf, optional, type ReadCell, text, yesNo } from '../cells';
import { day } from '../dates';
import { notNegative, perCent, positive, wholeUpTo } from '../numbers';
import { keyOf, keyOfDay, keyOfName, type RowKind } from './row-kind';
import { dimensionOf, unit } from './unit';

/** What has a recipe. */
export type RecipeKind = Exclude<ItemKind, 'ingredient'>;

/** A version of a recipe: what a batch gives, what is lost, how long it takes and keeps. Blank: null; a column that the file does not have: undefined. */
export interface RecipeRow {
  readonly recipe: string;
  readonly kind: RecipeKind;
  /** Null: from the beginning. */
  readonly validFrom: Day | null;
  readonly section: string | null | undefined;
  readonly department: Department | null | undefined;
  readonly yieldQuantity: DecimalText | null | undefined;
  readonly yieldUnit: string | null | undefined;
  readonly alsoQuantity: DecimalText | null | undefined;
  readonly alsoUnit: string | null | undefined;
  readonly batchLossG: DecimalText | null | undefined;
  readonly breakage: DecimalText | null | undefined;
  readonly estimatedCost: DecimalText | null | undefined;
  readonly overrun: DecimalText | null | undefined;
  readonly handsOnMinutes: DecimalText | null | undefined;
  readonly grade: string | null | undefined;
  readonly platingMinutes: DecimalText | null | undefined;
  readonly platingGrade: string | null | undefined;
  readonly shelfLifeDays: number | null | undefined;
  readonly smallestBatch: DecimalText | null | undefined;
  readonly thrownAtClose: boolean | null | undefined;
  readonly cautions: readonly string[] | null | undefined;
}

const KINDS: readonly RecipeKind[] = ['component', 'dish', 'set_menu', 'extra'];
const kind: ReadCell<RecipeKind> = (cell) => oneOf(KINDS)(cell.replace(/[\s-]+/g, '_'));

const MOST_OVERRUN_PCT = 1000;
const LONGEST_LIFE_DAYS = 3650;

const row = (style: Parameters<typeof positive>[0]) =>
  z.object({
    recipe: needed(text()),
    kind: needed(kind),
    valid_from: optional(day),
    section: optional(text()),
    department: optional(oneOf(['food', 'drink', 'packaging'])),
    yield_quantity: optional(positive(style)),
    yield_unit: optional(unit),
    also_quantity: optional(positive(style)),
    also_unit: optional(unit),
    overrun_pct: optional(perCent({ from: 0, to: MOST_OVERRUN_PCT }, style)),
    batch_loss_g: optional(notNegative(style)),
    breakage_pct: optional(perCent({ from: 0, to: 100, open: 'to' }, style)),
    hands_on_minutes: optional(notNegative(style)),
    grade: optional(text()),
    plating_minutes: optional(notNegative(style)),
    plating_grade: optional(text()),
    shelf_life_days: optional(wholeUpTo(LONGEST_LIFE_DAYS, style)),
    smallest_batch: optional(positive(style)),
    thrown_at_close: optional(yesNo),
    cautions: optional(declaration),
    estimated_cost: optional(notNegative(style)),
  });

type Read = z.infer<ReturnType<typeof row>>;

/** What is wrong between the cells of a row, with the column to mend; null where nothing is. */
function faultBetween(read: Read): readonly [CellFault, string] | null {
  for (const [quantity, unitColumn] of [
    ['yield_quantity', 'yield_unit'],
    ['also_quantity', 'also_unit'],
  ] as const) {
    if (read[quantity] && !read[unitColumn]) return [new CellFault('pair-incomplete', { other: quantity }), unitColumn];
    if (read[unitColumn] && !read[quantity]) return [new CellFault('pair-incomplete', { other: unitColumn }), quantity];
  }
  if (read.kind === 'component') {
    if (read.estimated_cost) return [new CellFault('estimate-without-dish'), 'estimated_cost'];
    if (read.also_unit && !read.yield_unit)
      return [new CellFault('pair-incomplete', { other: 'also_quantity' }), 'yield_quantity'];
    if (read.yield_unit && read.also_unit && dimensionOf(read.yield_unit) === dimensionOf(read.also_unit)) {
      return [new CellFault('same-dimension', { other: 'yield_unit' }), 'also_unit'];
    }
    const unsized = read.smallest_batch && read.yield_unit === null;
    return unsized ? [new CellFault('pair-incomplete', { other: 'smallest_batch' }), 'yield_unit'] : null;
  }
  if (read.also_quantity) return [new CellFault('dish-output'), 'also_quantity'];
  if (read.yield_unit && !isOnePortion(read)) return [new CellFault('dish-output'), 'yield_quantity'];
  if (read.batch_loss_g && read.batch_loss_g !== '0') return [new CellFault('dish-loss'), 'batch_loss_g'];
  if (read.overrun_pct && read.overrun_pct !== '0') return [new CellFault('batch-only'), 'overrun_pct'];
  if (read.smallest_batch) return [new CellFault('batch-only'), 'smallest_batch'];
  return null;
}

function isOnePortion(read: Read): boolean {
  return read.yield_quantity === '1' && read.yield_unit != null && dimensionOf(read.yield_unit) === 'each';
}

export const recipeRows: RowKind<RecipeRow> = {
  columns: {
    needed: ['recipe', 'kind', 'valid_from'],
    optional: [
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
    later: [],
  },
  schema: ({ style }) =>
    row(style).transform((read, context) => {
      const fault = faultBetween(read);
      if (fault) context.addIssue(issueOf(...fault));
      const onePortion = read.kind !== 'component' && isOnePortion(read);
      return {
        recipe: read.recipe,
        kind: read.kind,
        validFrom: read.valid_from ?? null,
        section: read.section,
        department: read.department,
        yieldQuantity: onePortion ? null : read.yield_quantity,
        yieldUnit: onePortion ? null : read.yield_unit,
        alsoQuantity: read.also_quantity,
        alsoUnit: read.also_unit,
        batchLossG: read.batch_loss_g,
        breakage: read.breakage_pct,
        estimatedCost: read.estimated_cost,
        overrun: read.overrun_pct,
        handsOnMinutes: read.hands_on_minutes,
        grade: read.grade,
        platingMinutes: read.plating_minutes,
        platingGrade: read.plating_grade,
        shelfLifeDays: read.shelf_life_days && Number(read.shelf_life_days),
        smallestBatch: read.smallest_batch,
        thrownAtClose: read.thrown_at_close,
        cautions: read.cautions,
      };
    }),
  key: (cells) => keyOf(keyOfName(cells.recipe), keyOfDay(cells.valid_from)),
};
