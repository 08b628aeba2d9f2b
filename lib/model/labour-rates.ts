import type { Day, DayRange } from '../core/days';
import { grouped } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { LabourRate } from './facts';
import { type InForce, inForce, onDay } from './in-force';
import type { Thing } from './things';

/** Cost per hour of each grade, by nameKey of the grade, as the days on which it is in force. */
export type LabourRates = ReadonlyMap<string, readonly InForce<LabourRate>[]>;

export function labourRatesOf(rates: readonly LabourRate[], range: DayRange): LabourRates {
  const byGrade = grouped(rates, ({ grade }) => nameKey(grade));
  return new Map([...byGrade].map(([grade, stated]) => [grade, inForce(stated, range)]));
}

/**
 * Cost of one minute of a grade on a day, in venue currency: cost per hour / 60, where cost per hour = (pay + employer on-costs +
 * paid leave) / hours worked. Null where none is stated.
 */
export function costPerMinute(rates: LabourRates, grade: string | null, day: Day): number | null {
  const rate = grade === null ? null : onDay(rates.get(nameKey(grade)) ?? [], day);
  return rate === null ? null : rate.costPerHour / 60;
}

/** Days on which the cost of a grade changes that something is made by. */
export function rateChanges(things: readonly Thing[], rates: LabourRates): readonly Day[] {
  const grades = new Set(
    things.flatMap(({ recipes }) =>
      recipes.flatMap(({ fact }) =>
        [fact.grade, fact.platingGrade].flatMap((grade) => (grade ? [nameKey(grade)] : [])),
      ),
    ),
  );
  return [...grades].flatMap((grade) => (rates.get(grade) ?? []).flatMap(({ from, to }) => [from, to]));
}
