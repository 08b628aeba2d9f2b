import { byText } from '../../core/grouped';
import { nameKey } from '../../core/name-key';
import type { CostedPeriod } from '../costed-period';
import { isSilent } from '../labour';
import { inSegment } from '../segments';
import type { MadeNeed } from './made-need';

/** Work by grade in the order of names; null: nobody said whose. */
export interface PrepWork {
  readonly grade: string | null;
  readonly handsOnMinutes: number;
  readonly platingMinutes: number;
}

/** Hands-on minutes of what is made, plating minutes of what is served; and what is made and states no minutes. */
export function prepWork(
  period: CostedPeriod,
  segment: number,
  { need, passed }: MadeNeed,
): { readonly work: readonly PrepWork[]; readonly withoutMinutes: readonly string[] } {
  const grades = new Map<string, { grade: string | null; handsOnMinutes: number; platingMinutes: number }>();
  const add = (grade: string | null, of: 'handsOnMinutes' | 'platingMinutes', minutes: number): void => {
    const sum = grades.get(nameKey(grade ?? '')) ?? { grade, handsOnMinutes: 0, platingMinutes: 0 };
    sum[of] += minutes;
    grades.set(nameKey(grade ?? ''), sum);
  };
  const withoutMinutes: string[] = [];
  period.things.forEach((thing, node) => {
    const piece = inSegment(period.recipes[node] ?? [], segment);
    const made = passed[node] as number;
    if (piece === null || thing.part !== null || thing.channel !== null || made <= 0 || piece.byProduct) return;
    const { breakage, handsOnMinutes, grade, platingMinutes, platingGrade } = piece.version;
    const batches = made / (1 - breakage) / piece.usable;
    const plates = (need[node] as number) / (1 - breakage);
    if (handsOnMinutes !== null && handsOnMinutes > 0 && !Number.isNaN(batches)) {
      add(grade, 'handsOnMinutes', handsOnMinutes * batches);
    }
    if (platingMinutes !== null && platingMinutes > 0) add(platingGrade, 'platingMinutes', platingMinutes * plates);
    if (isSilent(thing, piece)) withoutMinutes.push(thing.name);
  });
  return { work: [...grades].sort(([a], [b]) => byText(a, b)).map(([, work]) => work), withoutMinutes };
}
