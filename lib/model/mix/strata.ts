import { type Day, weekday } from '../../core/days';

/**
 * Trading days grouped so that days of a kind are drawn for each other: by weekday. Each group holds indices into `days`.
 *
 * Weekdays with a single day make one group together; one such day alone joins the weekday nearest in mean portions (the earlier
 * in the week of two as near). Groups in the order of the week, the one of single days last.
 */
export function weekdayStrata(days: readonly Day[], portions: readonly number[]): readonly (readonly number[])[] {
  const byWeekday: number[][] = [[], [], [], [], [], [], []];
  days.forEach((day, index) => {
    byWeekday[weekday(day) - 1]?.push(index);
  });
  const strata = byWeekday.filter((group) => group.length > 1);
  const single = byWeekday.filter((group) => group.length === 1).flat();
  const [alone] = single;
  if (alone === undefined) return strata;
  if (single.length > 1 || strata.length === 0) return [...strata, single];
  const mean = (group: readonly number[]): number =>
    group.reduce((sum, index) => sum + (portions[index] ?? 0), 0) / group.length;
  const distances = strata.map((group) => Math.abs(mean(group) - (portions[alone] ?? 0)));
  const nearest = distances.indexOf(Math.min(...distances));
  return strata.map((group, index) => (index === nearest ? [...group, alone] : group));
}
