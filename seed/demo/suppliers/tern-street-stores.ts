import type { Supplier } from '../shapes';
import { BAR_AND_BOXES } from './tern-street-bar-and-boxes';
import { SPICE_AND_SETTING } from './tern-street-spice-and-setting';
import { SUGAR_AND_FLOUR } from './tern-street-sugar-and-flour';

/** Prices net of tax: dry goods, cellar, coffee, packaging, and from April 2026 the butter. */
export const TERN_STREET_STORES: Supplier = {
  name: 'Tern Street Stores',
  contact: 'Trade counter',
  email: 'trade@tern-street.example',
  orderDays: 'Tue',
  minimumOrder: 120,
  deliveryCharge: 9.5,
  deliversOn: [4],
  firstInvoice: 115_406,
  invoicePrefix: 'TS',
  offers: [...SUGAR_AND_FLOUR, ...SPICE_AND_SETTING, ...BAR_AND_BOXES],
};
