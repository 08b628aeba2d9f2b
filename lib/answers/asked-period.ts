import { type Period, periodNamed } from '../core/periods';
import { noSuchPeriod } from '../format/words/problems';
import { type Answered, answered, refused } from './problem';

/** The period that a question is about, by its name. */
export function askedPeriod(name: string): Answered<Period> {
  const { period, refusal } = periodNamed(name);
  return period ? answered(period) : refused(400, noSuchPeriod(name, refusal));
}
