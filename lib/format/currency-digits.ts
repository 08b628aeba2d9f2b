import currencyCodes from 'currency-codes';

/** Decimals of a currency's minor unit (ISO 4217), or null where no such currency exists. Intl differs from the standard for some. */
export function currencyDigits(currency: string): number | null {
  return currencyCodes.code(currency)?.digits ?? null;
}
