import { figure } from './figures';

const LARGE: Readonly<Record<string, readonly [size: number, unit: string]>> = { g: [1000, 'kg'], ml: [1000, 'l'] };

/**
 * An amount as it is weighed out: whole grams and millilitres (tenths below ten), kilograms and litres from a thousand on; pieces to the
 * tenth. A unit of the house's own stays as it is written.
 */
export function benchAmount(quantity: number, unit: string | null, locale: string): string {
  const [size, larger] = LARGE[unit ?? ''] ?? [Number.POSITIVE_INFINITY, ''];
  if (Math.abs(quantity) >= size) return `${figure(quantity / size, locale, { least: 0, most: 3 })}\u00a0${larger}`;
  const most =
    unit === 'g' || unit === 'ml'
      ? Math.abs(quantity) < 10
        ? 1
        : 0
      : Math.abs(quantity) < 1
        ? 3
        : unit === 'each'
          ? 1
          : 2;
  const text = figure(quantity, locale, { least: 0, most });
  return unit === null || unit === 'each' ? text : `${text}\u00a0${unit}`;
}

/** Minutes to the nearest whole one, from an hour on with the hours: 45 min, 1 h 05. */
export function benchMinutes(minutes: number, locale: string): string {
  const whole = Math.round(minutes);
  if (whole < 60) return `${figure(whole, locale, 0)}\u00a0min`;
  return `${figure(Math.trunc(whole / 60), locale, 0)}\u00a0h\u00a0${String(whole % 60).padStart(2, '0')}`;
}
