import { dayText } from '../core/days';
import { menuMix } from '../reports/menu-mix';
import type { PricedPeriod } from './priced-period';
import { writtenIssues } from './written-issues';

/** What every answer about the prices of a period says of it, and what is missing in its mix. */
export function periodWritten({ venue, month, section, costed }: PricedPeriod) {
  const { currency, locale } = costed.venue;
  return {
    ...{ venue, month, currency, locale, section },
    period: { from: dayText(costed.range.from), to: dayText(costed.range.to) },
    issues: writtenIssues(menuMix(costed, { section, resamples: 0 }).issues),
  };
}
