import type { Day } from '../core/days';
import { grouped } from '../core/grouped';
import type { ExchangeRate } from './facts';

/** What other currencies are worth in the venue's own. */
export interface Exchange {
  /** Venue currency for one unit of a currency on a day: the latest rate stated on or before it. Null: the venue's own. Null where there is no rate. */
  readonly rateOn: (currency: string | null, day: Day) => number | null;
  /** The days from which a rate of a currency holds; none for the venue's own. */
  readonly changesOf: (currency: string | null) => readonly Day[];
}

/** The dated rates of a venue; its own currency is worth 1 on every day. */
export function exchangeOf(rates: readonly ExchangeRate[], venueCurrency: string): Exchange {
  const ratesOf = grouped(rates, ({ currency }) => currency);
  const foreign = (currency: string | null): readonly ExchangeRate[] | null =>
    currency === null || currency === venueCurrency ? null : (ratesOf.get(currency) ?? []);
  return {
    rateOn(currency, day) {
      const dated = foreign(currency);
      if (dated === null) return 1;
      let latest: ExchangeRate | null = null;
      for (const rate of dated) {
        if (rate.validFrom <= day && (latest === null || rate.validFrom >= latest.validFrom)) latest = rate;
      }
      return latest?.rate ?? null;
    },
    changesOf: (currency) => (foreign(currency) ?? []).map(({ validFrom }) => validFrom),
  };
}
