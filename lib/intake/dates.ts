import { type Day, parseDay } from '../core/days';
import { CellFault, type ReadCell } from './cells';

const FIRST = '1900-01-01';
const LAST = '2199-12-31';

/** A day as ISO text (ISO 8601 calendar date) within the years that a restaurant's books can have. */
export const day: ReadCell<Day> = (cell) => {
  const found = parseDay(cell);
  if (found === null) {
    return /^\d{4}-\d{2}-\d{2}$/.test(cell)
      ? new CellFault('no-such-day')
      : new CellFault('not-a-date', { iso: probablyMeant(cell) });
  }
  return cell < FIRST || cell > LAST ? new CellFault('far-day', { from: FIRST, to: LAST }) : found;
};

/** As `day`, each text worked out once: a long file has few days. */
export function rememberedDay(): ReadCell<Day> {
  const known = new Map<string, Day | CellFault>();
  return (cell) => {
    const before = known.get(cell);
    if (before !== undefined) return before;
    const found = day(cell);
    if (known.size < 10_000) known.set(cell, found);
    return found;
  };
}

/** The days, as ISO text, that a date in another order can mean. A year of two digits could be any of the three: nothing is guessed. */
function probablyMeant(cell: string): readonly string[] {
  const parts =
    /^(\d{4})[-/. ](\d{1,2})[-/. ](\d{1,2})\.?(?:[ T].*)?$/.exec(cell) ??
    /^(\d{1,2})[-/. ](\d{1,2})[-/. ](\d{4})\.?(?:[ T].*)?$/.exec(cell) ??
    /^(\d{4})(\d{2})(\d{2})$/.exec(cell);
  if (!parts) return [];
  const [, a = '', b = '', c = ''] = parts;
  const orders =
    a.length > 2
      ? [[a, b, c]]
      : [
          [c, b, a],
          [c, a, b],
        ];
  const meant = orders.flatMap(([year = '', month = '', date = '']) => {
    const iso = `${year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`;
    return parseDay(iso) === null || iso < FIRST || iso > LAST ? [] : [iso];
  });
  return [...new Set(meant)];
}
