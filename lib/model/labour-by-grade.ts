import type { Day } from '../core/days';
import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { CostedPeriod } from './costed-period';
import type { OwnWork } from './labour';
import { costPerMinute } from './labour-rates';

/** The work of one grade in a period. */
export interface GradeWork {
  /** As it is spelled first; null: nobody has said whose work it is. */
  readonly grade: string | null;
  readonly handsOnMinutes: number;
  readonly platingMinutes: number;
  /** Both at the cost per hour of the day, in venue currency; null where one is not stated. */
  readonly cost: number | null;
}

/** Minutes that what is needed takes, by grade in the order of names: sum of need * own minutes. `need` as of needOfServed. */
export function gradeWork(period: CostedPeriod, need: Float64Array): readonly GradeWork[] {
  const { labour, segments } = period;
  const grades = new Map<string, { grade: string | null; handsOn: number; plating: number; cost: number | null }>();
  const add = (kind: 'handsOn' | 'plating', { node, segment, grade, minutes }: OwnWork): void => {
    const taken = minutes * (need[node * segments.count + segment] as number);
    if (taken === 0) return;
    const key = nameKey(grade ?? '');
    const sum = grades.get(key) ?? { grade, handsOn: 0, plating: 0, cost: 0 };
    const rate = costPerMinute(labour.rates, grade, segments.cuts[segment] as Day);
    sum[kind] += taken;
    sum.cost = sum.cost === null || rate === null ? null : sum.cost + taken * rate;
    grades.set(key, sum);
  };
  for (const own of labour.handsOn) add('handsOn', own);
  for (const own of labour.plating) add('plating', own);
  return [...grades]
    .sort(([a], [b]) => byText(a, b))
    .map(([, { grade, handsOn, plating, cost }]) => ({
      ...{ grade, handsOnMinutes: handsOn, platingMinutes: plating, cost },
    }));
}
