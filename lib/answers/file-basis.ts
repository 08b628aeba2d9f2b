import { addDays, dayText, parseDay } from '../core/days';
import { periodName } from '../format/periods';
import { firstToLast, REPORT_FILE } from '../format/words/report-file';

/** What every answer about a period says of it. */
interface OfPeriod {
  readonly venue: string;
  readonly month: string;
  readonly locale: string;
  readonly period: { readonly from: string; readonly to: string };
}

/** The lines of a workbook's last sheet that say whose figures these are, of which days, and what they stand on. */
export function fileBasis(
  { venue, month, locale, period }: OfPeriod,
  standsOn: readonly string[],
): readonly (readonly [string, string])[] {
  const end = parseDay(period.to);
  const last = end === null ? period.to : dayText(addDays(end, -1));
  return [
    [REPORT_FILE.venue, venue],
    [REPORT_FILE.period, periodName(month, locale)],
    [REPORT_FILE.days, firstToLast(period.from, last)],
    ...standsOn.map((line, at) => [at === 0 ? REPORT_FILE.figures : '', line] as const),
  ];
}
