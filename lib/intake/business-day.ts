import { addDays, type Day, parseDay } from '../core/days';
import { CellFault, type ReadCell } from './cells';
import { day } from './dates';

/** When a venue's business day ends, and where its clock hangs. */
export interface VenueClock {
  /** IANA name. */
  readonly timeZone: string;
  /** Minutes after midnight: what is sold before belongs to the day before. */
  readonly dayEnds: number;
}

const STAMP = /^(\d{4}-\d{2}-\d{2})[T ](\d{2}):(\d{2})(?::(\d{2})(?:[.,]\d{1,9})?)?\s*(Z|[+-]\d{2}(?::?\d{2})?)?$/i;
const MINUTES_A_DAY = 24 * 60;
const MS_PER_MINUTE = 60_000;
const MS_PER_QUARTER = 15 * MS_PER_MINUTE;

/**
 * The business day of a time stamp (ISO 8601: 2026-10-03T00:40, with or without seconds and offset). It is local time unless it
 * carries an offset; a time before the hour at which the business day ends belongs to the day before.
 */
export function businessDay(clock: VenueClock): ReadCell<Day> {
  const localTime = localTimeIn(clock.timeZone);
  return (cell) => {
    const parts = STAMP.exec(cell);
    if (!parts) return new CellFault('not-a-time');
    const [, dayPart = '', hours = '', minutes = '', seconds = '0', offset] = parts;
    const date = day(dayPart);
    if (date instanceof CellFault) return date;
    const minuteOfDay = Number(hours) * 60 + Number(minutes);
    if (Number(hours) > 23 || Number(minutes) > 59 || Number(seconds) > 59) return new CellFault('not-a-time');
    if (offset === undefined) return settled(date, minuteOfDay, clock.dayEnds);
    const ahead = offsetMinutes(offset);
    if (ahead === null) return new CellFault('not-a-time');
    const local = localTime((date * MINUTES_A_DAY + minuteOfDay - ahead) * MS_PER_MINUTE);
    return settled(local.day, local.minute, clock.dayEnds);
  };
}

function settled(date: Day, minute: number, dayEnds: number): Day {
  return minute < dayEnds ? addDays(date, -1) : date;
}

function offsetMinutes(offset: string): number | null {
  if (offset.toUpperCase() === 'Z') return 0;
  const hours = Number(offset.slice(1, 3));
  const minutes = Number(offset.slice(3).replace(':', '') || '0');
  if (hours > 14 || minutes > 59) return null;
  return (offset.startsWith('-') ? -1 : 1) * (hours * 60 + minutes);
}

/** Day and minute on the clock of a zone at an instant. A zone's offset never changes within a quarter of an hour, so each is asked once. */
function localTimeIn(timeZone: string): (instant: number) => { day: Day; minute: number } {
  const format = new Intl.DateTimeFormat('en-CA', {
    timeZone,
    calendar: 'iso8601',
    numberingSystem: 'latn',
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
  });
  const known = new Map<number, { day: Day; minute: number }>();
  return (instant) => {
    const quarter = Math.floor(instant / MS_PER_QUARTER) * MS_PER_QUARTER;
    let start = known.get(quarter);
    if (!start) {
      const parts = new Map(format.formatToParts(quarter).map(({ type, value }) => [type, value]));
      const date = parseDay(`${parts.get('year')?.padStart(4, '0')}-${parts.get('month')}-${parts.get('day')}`);
      start = { day: date ?? (0 as Day), minute: Number(parts.get('hour')) * 60 + Number(parts.get('minute')) };
      if (known.size < 100_000) known.set(quarter, start);
    }
    const minute = start.minute + Math.floor((instant - quarter) / MS_PER_MINUTE);
    return minute < MINUTES_A_DAY
      ? { day: start.day, minute }
      : { day: addDays(start.day, 1), minute: minute - MINUTES_A_DAY };
  };
}
