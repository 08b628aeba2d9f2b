import { z } from 'zod';
import { currencyDigits } from '../../format/currency-digits';
import { CellFault, issueOf, needed, oneOf, type ReadCell, text, yesNo } from '../cells';
import { between, type NumberStyle, perCent, positive } from '../numbers';
import { keyOfName, type RowKind } from './row-kind';

export const SETTINGS = [
  'name',
  'currency',
  'locale',
  'time_zone',
  'business_day_ends',
  'kitchen_measures',
  'purchase_tax_recoverable',
  'popularity_factor',
  'target_food_cost_pct',
  'q_factor_pct',
  'variable_cost_pct',
  'price_step',
  'stock_valuation',
  'periods',
] as const;

export type Setting = (typeof SETTINGS)[number];

/** One setting of the venue: per cent as a fraction, numbers as exact decimal text. */
export interface SettingRow {
  readonly setting: Setting;
  readonly value: string | boolean;
}

/** An ISO 4217 code in any case. */
export const currency: ReadCell<string> = (cell) => {
  const code = cell.toUpperCase();
  return /^[A-Z]{3}$/.test(code) && currencyDigits(code) !== null ? code : new CellFault('not-a-currency');
};

const locale: ReadCell<string> = (cell) => {
  try {
    return Intl.getCanonicalLocales(cell)[0] ?? new CellFault('not-a-locale');
  } catch {
    return new CellFault('not-a-locale');
  }
};

const timeZone: ReadCell<string> = (cell) => {
  if (!/^[A-Za-z]/.test(cell)) return new CellFault('not-a-time-zone'); // a bare offset knows no summer time
  try {
    return new Intl.DateTimeFormat('en', { timeZone: cell }).resolvedOptions().timeZone;
  } catch {
    return new CellFault('not-a-time-zone');
  }
};

const clockTime: ReadCell<string> = (cell) => {
  const parts = /^(\d{1,2}):(\d{2})$/.exec(cell);
  const sound = parts && Number(parts[1]) < 24 && Number(parts[2]) < 60;
  return sound ? cell.padStart(5, '0') : new CellFault('not-a-clock-time');
};

function readers(style: NumberStyle): Readonly<Record<Setting, ReadCell<string | boolean>>> {
  return {
    name: text(),
    currency,
    locale,
    time_zone: timeZone,
    business_day_ends: clockTime,
    kitchen_measures: oneOf(['metric', 'us']),
    purchase_tax_recoverable: yesNo,
    popularity_factor: between({ from: 0, to: 1, open: 'from' }, style),
    target_food_cost_pct: perCent({ from: 0, to: 100, open: 'both' }, style),
    q_factor_pct: perCent({ from: 0, to: 100, open: 'to' }, style),
    variable_cost_pct: perCent({ from: 0, to: 100, open: 'to' }, style),
    price_step: positive(style),
    stock_valuation: oneOf(['weighted_average', 'fifo']),
    periods: oneOf(['months', '4-4-5', '13x4']),
  };
}

const settingName: ReadCell<Setting> = (cell) => {
  const name = oneOf(SETTINGS)(cell.replace(/[\s-]+/g, '_'));
  return name instanceof CellFault ? new CellFault('unknown-setting', { allowed: SETTINGS }) : name;
};

export const venueRows: RowKind<SettingRow> = {
  columns: { needed: ['setting', 'value'], optional: [], later: [] },
  schema({ style }) {
    const readerOf = readers(style);
    return z
      .object({ setting: needed(settingName), value: needed(text()) })
      .transform(({ setting, value }, context) => {
        const read = readerOf[setting](value);
        if (!(read instanceof CellFault)) return { setting, value: read };
        context.addIssue(issueOf(read, 'value'));
        return z.NEVER;
      });
  },
  key: (cells) => keyOfName(cells.setting?.replace(/[\s-]+/g, '_')),
};
