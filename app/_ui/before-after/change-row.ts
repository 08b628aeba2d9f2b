import type { MarkShape } from '../mark-shape';

/** A change as it is printed, and whether it is against the house, for it, or neither. */
export interface ChangeText {
  readonly text: string;
  readonly tone: 'dear' | 'spare' | 'plain' | 'faint';
}

/** One dish before and after, as the table prints it; places on the axes are fractions of their lengths. */
export interface ChangeRow {
  readonly item: string;
  readonly shape: MarkShape;
  readonly before: string;
  readonly after: string;
  readonly change: ChangeText;
  readonly foodCost: string;
  readonly inPeriod: ChangeText;
  readonly holdMargin: string;
  readonly holdPct: string;
  readonly breakEven: string;
  readonly classNow: string;
  /** Null where it is the same. */
  readonly classWas: string | null;
  readonly axis: { readonly before: number; readonly after: number } | null;
  /** The change alone, from zero; null where it is not known. */
  readonly fromZero: number | null;
  readonly tone: 'dear' | 'spare' | 'plain';
}

/** The axis above the rows: its ticks, and the averages that run through them. */
export interface ChangeAxis {
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
  readonly average: { readonly before: number; readonly after: number; readonly text: string } | null;
  readonly zero: { readonly ticks: readonly { readonly at: number; readonly text: string }[]; readonly at: number };
}

/** The columns after the picture, in their order. */
export const CHANGE_COLUMNS = [
  'before',
  'after',
  'change',
  'foodCost',
  'inPeriod',
  'holdMargin',
  'holdPct',
  'breakEven',
  'class',
] as const;

export type ChangeColumn = (typeof CHANGE_COLUMNS)[number];

export type ChangeTotal = Readonly<Partial<Record<ChangeColumn, ChangeText>>>;

/** All that the table shows. */
export interface ChangeTable {
  /** As many as are shown. */
  readonly rows: readonly ChangeRow[];
  /** Touched dishes that are not among them yet. */
  readonly more: number;
  /** Dishes that are not among the rows because nothing of them changes, and how that is said; null where there are none. */
  readonly untouched: string | null;
  readonly total: ChangeTotal;
  readonly axis: ChangeAxis;
}
