import type { MixColumn } from '@/lib/format/words/mix-table';
import styles from './mix-table.module.css';

/** What is left out first where there is little room: below 1,100 px, or on a phone only. */
const FOLDS: Readonly<Partial<Record<MixColumn, 'fold' | 'foldOnPhone'>>> = {
  comps: 'fold',
  share: 'fold',
  price: 'fold',
  plateCost: 'foldOnPhone',
  foodCost: 'foldOnPhone',
  class: 'foldOnPhone',
  sure: 'foldOnPhone',
};

const isWords = (column: MixColumn) => column === 'item' || column === 'class' || column === 'sure';

/** How a column is set, and whether it may fold: not where all columns are open. */
export function classOf(column: MixColumn, open: boolean): string {
  const fold = open ? undefined : FOLDS[column];
  const kind = column === 'class' ? styles.gap : isWords(column) ? undefined : styles.number;
  return [fold && styles[fold], kind].filter(Boolean).join(' ');
}
