import type { ColumnKind } from '../report-file';

export const REPORT_FILE = {
  basis: 'what it stands on',
  missing: 'What is missing',
  venue: 'Venue',
  period: 'Period',
  days: 'Days',
  section: 'Section',
  figures: 'Figures',
  costOf: 'Cost of',
  yes: 'yes',
  no: 'no',
} as const;

/** What follows the name in the head of a column; nothing for text and dates. */
const UNITS: Readonly<Partial<Record<ColumnKind, string>>> = { portions: 'portions', share: '%', minutes: 'min' };

/** The head of a column from its JSON name: plateCost is "Plate cost, EUR", foodCostPct "Food cost, %". */
export function columnHead(name: string, kind: ColumnKind, currency: string): string {
  const words = name.replace(/Pct$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  const unit = kind === 'money' || kind === 'price' ? currency : UNITS[kind];
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}${unit === undefined ? '' : `, ${unit}`}`;
}

/** The first and the last day of a period: 2026-10-01 to 2026-10-31. */
export function firstToLast(from: string, last: string): string {
  return from === last ? from : `${from} to ${last}`;
}
