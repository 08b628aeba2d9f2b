import type { Day } from '../../../lib/core/days';
import { dayText, weekday } from '../../../lib/core/days';
import { seededRandom } from '../../../lib/core/random';
import { swing } from '../dice';
import { SEED } from '../house';
import { occasion, TRADING_DAYS, yearsOpen } from './calendar';

/** Guests on an ordinary spring day, Monday to Sunday. Mondays are holidays where there are any. */
const WEEKDAYS = [92, 58, 64, 75, 112, 142, 98] as const;

/** January to December. */
const MONTHS = [0.76, 0.84, 0.88, 0.98, 1, 1.08, 1.24, 1.32, 1.02, 0.95, 0.82, 0.98] as const;

/** 38 seats, filled five times at the very most between two in the afternoon and half past one at night. */
const MOST = 38 * 5;
const GROWTH_PER_YEAR = 0.05;

function drawCovers(): ReadonlyMap<Day, number> {
  const random = seededRandom(SEED + 1);
  return new Map(
    TRADING_DAYS.map((day) => {
      const usual = WEEKDAYS[weekday(day) - 1] ?? 0;
      const season = MONTHS[Number(dayText(day).slice(5, 7)) - 1] ?? 1;
      const expected = usual * season * (occasion(day) ?? 1) * (1 + GROWTH_PER_YEAR * yearsOpen(day));
      return [day, Math.min(MOST, Math.round(expected * swing(random, 0.1)))];
    }),
  );
}

/** Guests of each trading day: weekday, season, occasion, a slow rise, and the weather. */
export const COVERS: ReadonlyMap<Day, number> = drawCovers();
