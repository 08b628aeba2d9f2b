import type { DishAnswer } from '@/lib/answers/dish-shape';
import type { Purse } from '@/lib/format/money';
import { type PeriodColumn, periodCells, periodsOff } from '@/lib/format/words/dish-periods';

export interface PeriodRow {
  readonly key: string;
  readonly onSale: boolean;
  readonly cells: Readonly<Record<PeriodColumn, string>>;
}

/** The periods as rows, the latest first; those in a row in which it was not on the menu are one. */
export function periodRows(
  { periods, menuEvents, kind }: Pick<DishAnswer, 'periods' | 'menuEvents' | 'kind'>,
  purse: Purse,
): readonly PeriodRow[] {
  const rows: (PeriodRow & { readonly last: string })[] = [];
  for (const row of [...periods].reverse()) {
    const cells = periodCells(row, menuEvents, kind === 'extra', purse);
    const later = rows.at(-1);
    if (later && !later.onSale && !row.onSale && later.cells.events === cells.events) {
      const month = periodsOff(row.month, later.last, purse.locale);
      rows[rows.length - 1] = { ...later, key: row.month, cells: { ...cells, month } };
    } else rows.push({ key: row.month, last: row.month, onSale: row.onSale, cells });
  }
  return rows;
}
