import { type Day, type DayRange, parseDay } from '../core/days';

/** How a period stands: closed in the books, or with business days still to come. */
export interface Standing {
  readonly closed: boolean;
  readonly running: boolean;
}

/** How each period of a venue stands, by the clocks of its time zone. */
export function standingOf(
  { timeZone }: { readonly timeZone: string },
  closedThrough: Day | null,
  now = new Date(),
): (range: DayRange) => Standing {
  const today = dayIn(timeZone, now);
  return ({ to }) => ({
    closed: closedThrough !== null && to - 1 <= closedThrough,
    running: today !== null && today < to,
  });
}

/** The calendar day at an instant on the clocks of a time zone. */
function dayIn(timeZone: string, instant: Date): Day | null {
  const parts = { year: 'numeric', month: '2-digit', day: '2-digit' } as const;
  return parseDay(new Intl.DateTimeFormat('sv-SE', { timeZone, ...parts }).format(instant)); // Swedish dates are ISO dates
}
