import { z } from 'zod';
import type { DecimalText } from '../../core/decimal-text';
import { needed, optional, text } from '../cells';
import { notNegative } from '../numbers';
import { keyOfName, type RowKind } from './row-kind';

/** What is stated of a supplier. Blank: null; a column that the file does not have: undefined. */
export interface SupplierRow {
  readonly supplier: string;
  readonly contact: string | null | undefined;
  readonly email: string | null | undefined;
  readonly orderDays: string | null | undefined;
  readonly minimumOrder: DecimalText | null | undefined;
  readonly deliveryCharge: DecimalText | null | undefined;
}

export const supplierRows: RowKind<SupplierRow> = {
  columns: {
    needed: ['supplier'],
    optional: ['contact', 'email', 'order_days', 'minimum_order', 'delivery_charge'],
    later: [],
  },
  schema: ({ style }) =>
    z
      .object({
        supplier: needed(text()),
        contact: optional(text()),
        email: optional(text()),
        order_days: optional(text()),
        minimum_order: optional(notNegative(style)),
        delivery_charge: optional(notNegative(style)),
      })
      .transform((row) => ({
        supplier: row.supplier,
        contact: row.contact,
        email: row.email,
        orderDays: row.order_days,
        minimumOrder: row.minimum_order,
        deliveryCharge: row.delivery_charge,
      })),
  key: (cells) => keyOfName(cells.supplier),
};
