import type { Day } from '../core/days';
import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { CostedPeriod } from './costed-period';
import type { OwnWork } from './labour';
import { costPerMinute } from './labour-rates';

/** Work of one kind and grade: minutes, and what they cost at the cost per hour of the day. */
export interface Work {
  /** As it is spelled first; null: nobody has said whose work it is. */
  readonly grade: string | null;
  readonly minutes: number;
  /** In venue currency; null where a cost per hour is not stated. */
  readonly cost: number | null;
}

/** The work of one grade in a period. */
export interface GradeWork {
  /** As it is spelled first; null: nobody has said whose work it is. */
  readonly grade: string | null;
  readonly handsOnMinutes: number;
  readonly platingMinutes: number;
  /** Both at the cost per hour of the day, in venue currency; null where one is not stated. */
  readonly cost: number | null;
}

/** Minutes that what is needed takes of one kind of work, by grade in the order of names: sum of need * own minutes. `need` as of needOfServed. */
export function workByGrade(
  { labour, segments }: CostedPeriod,
  need: Float64Array,
  work: readonly OwnWork[],
): readonly Work[] {
  const grades = new Map<string, Work>();
  for (const { node, segment, grade, minutes } of work) {
    const taken = minutes * (need[node * segments.count + segment] as number);
    if (taken === 0) continue;
    const key = nameKey(grade ?? '');
    const sum = grades.get(key) ?? { grade, minutes: 0, cost: 0 };
    const rate = costPerMinute(labour.rates, grade, segments.cuts[segment] as Day);
    const cost = sum.cost === null || rate === null ? null : sum.cost + taken * rate;
    grades.set(key, { ...sum, minutes: sum.minutes + taken, cost });
  }
  return [...grades].sort(([a], [b]) => byText(a, b)).map(([, each]) => each);
}

/** Minutes that what is needed takes, hands-on and plating, by grade in the order of names. `need` as of needOfServed. */
export function gradeWork(period: CostedPeriod, need: Float64Array): readonly GradeWork[] {
  const { handsOn, plating } = period.labour;
  const keyed = (work: readonly Work[]) => new Map(work.map((each) => [nameKey(each.grade ?? ''), each]));
  const [making, finishing] = [handsOn, plating].map((work) => keyed(workByGrade(period, need, work)));
  const keys = [...new Set([...(making?.keys() ?? []), ...(finishing?.keys() ?? [])])].sort(byText);
  return keys.map((key) => {
    const [made, finished] = [making?.get(key), finishing?.get(key)];
    const costs = [made, finished].flatMap((each) => (each ? [each.cost] : []));
    return {
      grade: (made ?? finished)?.grade ?? null,
      handsOnMinutes: made?.minutes ?? 0,
      platingMinutes: finished?.minutes ?? 0,
      cost: costs.reduce((sum: number | null, each) => (sum === null || each === null ? null : sum + each), 0),
    };
  });
}
