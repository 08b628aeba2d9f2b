import { type Day, parseDay } from '../core/days';
import { noSuchDay } from '../format/words/problems';
import { type Answered, answered, refused } from './problem';

/** The first and last day that a restaurant's books can have. */
const [FIRST, LAST] = ['1900-01-01', '2199-12-31'] as const;

/** The day that an ISO text names. */
export function dayNamed(text: string): Answered<Day> {
  const day = text >= FIRST && text <= LAST ? parseDay(text) : null;
  return day === null ? refused(400, noSuchDay(text)) : answered(day);
}
