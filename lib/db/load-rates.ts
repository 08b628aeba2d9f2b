import type { DayRange } from '../core/days';
import { dateOfDay } from '../core/days';
import { byText } from '../core/grouped';
import type { ExchangeRate, LabourRate } from '../model/facts';
import { byStart, dayIn, numberIn, statedBefore } from './columns';
import type { VenueTx } from './in-venue';

/** What an hour of each grade costs, as stated before the end of a range, by grade and start. */
export async function loadLabourRates(tx: VenueTx, range: DayRange): Promise<LabourRate[]> {
  const rows = await tx.prisma.labourRate.findMany({
    where: { venueId: tx.venue, OR: statedBefore(range) },
    select: { grade: true, gradeKey: true, validFrom: true, costPerHour: true },
  });
  rows.sort((a, b) => byText(a.gradeKey, b.gradeKey) || byStart(a, b));
  return rows.map(({ grade, validFrom, costPerHour }) => ({
    grade,
    validFrom: dayIn(validFrom),
    costPerHour: numberIn(costPerHour),
  }));
}

/** Rates of other currencies stated before the end of a range, by currency and start. */
export async function loadExchangeRates(tx: VenueTx, range: DayRange): Promise<ExchangeRate[]> {
  const rows = await tx.prisma.exchangeRate.findMany({
    where: { venueId: tx.venue, validFrom: { lt: dateOfDay(range.to) } },
    select: { currency: true, validFrom: true, rate: true },
  });
  rows.sort((a, b) => byText(a.currency, b.currency) || byStart(a, b));
  return rows.map(({ currency, validFrom, rate }) => ({ currency, validFrom: dayIn(validFrom), rate: numberIn(rate) }));
}
