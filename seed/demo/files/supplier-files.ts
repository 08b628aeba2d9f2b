import { money } from '../rounding';
import { SUPPLIERS } from '../suppliers/all-suppliers';
import { POUND_RATES } from '../suppliers/greywick-imports';
import type { Table } from './csv-table';
import { gtin13 } from './gtin';

export const SUPPLIER_FILES: readonly Table[] = [
  {
    file: 'suppliers.csv',
    columns: ['supplier', 'contact', 'email', 'order_days', 'minimum_order', 'delivery_charge'],
    rows: SUPPLIERS.map((each) => [
      each.name,
      each.contact,
      each.email,
      each.orderDays,
      money(each.minimumOrder),
      money(each.deliveryCharge),
    ]),
  },
  {
    file: 'offers.csv',
    columns: [
      'supplier',
      'code',
      'ingredient',
      'pack_count',
      'pack_size',
      'pack_unit',
      'description',
      'gtin',
      'chosen',
      'chosen_from',
    ],
    rows: SUPPLIERS.flatMap(({ name, offers }) =>
      offers.map((offer) => [
        name,
        offer.code,
        offer.ingredient,
        ...offer.pack,
        offer.description,
        offer.gtinStem === undefined ? undefined : gtin13(offer.gtinStem),
        offer.chosen === 'no' ? 'no' : 'yes',
        ['always', 'no'].includes(offer.chosen) ? undefined : offer.chosen,
      ]),
    ),
  },
  {
    file: 'offer_prices.csv',
    columns: ['supplier', 'code', 'valid_from', 'price', 'kind', 'valid_to', 'minimum_packs', 'currency'],
    rows: SUPPLIERS.flatMap(({ name, currency, offers }) =>
      offers.flatMap(({ code, prices }) =>
        prices.map((each) => [
          name,
          code,
          each.from,
          money(each.price),
          each.kind,
          each.to,
          each.minimumPacks,
          currency,
        ]),
      ),
    ),
  },
  {
    file: 'exchange_rates.csv',
    columns: ['currency', 'valid_from', 'rate'],
    rows: POUND_RATES.map(([from, rate]) => ['GBP', from, rate.toFixed(4)]),
  },
];
