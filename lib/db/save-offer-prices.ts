import { type Day, dayText } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { PriceKind } from '../model/facts';
import type { VenueTx } from './in-venue';
import { fault, isoDay, kept, planKeyed, type Saved, type Stated } from './plan-keyed';
import { knownOffers } from './save-offers';
import { type FactRow, factTable, insertRows, storedRows, updateRows } from './save-rows';
import { knownSuppliers } from './save-suppliers';

/** A dated price of one pack. Null: not known; undefined: not said. */
export interface StatedPrice {
  readonly supplier: string;
  readonly code: string;
  readonly validFrom: Day;
  readonly price: DecimalText;
  readonly kind: PriceKind;
  readonly validTo: Day | null | undefined;
  readonly minimumPacks: DecimalText | null;
  readonly currency: string | null | undefined;
}

const TABLE = factTable('price_point', {
  offer_id: 'int',
  kind: 'price_kind',
  valid_from: 'date',
  valid_to: 'date',
  minimum_packs: 'numeric',
  price: 'numeric',
  currency: 'text',
});

type Values = Pick<FactRow<typeof TABLE.columns>, 'price' | 'valid_to' | 'currency'>;

/** Saves rows of offer_prices.csv, by offer, day, kind and minimum number of packs. */
export async function saveOfferPrices(
  tx: VenueTx,
  rows: readonly Stated<StatedPrice>[],
  closedThrough: Day | null,
): Promise<Saved> {
  const suppliers = await knownSuppliers(tx);
  const offers = await knownOffers(tx);
  const offerOf = (row: StatedPrice) =>
    offers.get(`${suppliers.get(nameKey(row.supplier)) ?? ''}|${nameKey(row.code)}`);
  const stored = new Map(
    (await storedRows(tx, TABLE)).map(({ id, price, valid_to, currency, ...key }) => [
      [key.offer_id, key.valid_from, key.kind, key.minimum_packs ?? ''].join('|'),
      { id, values: { price, valid_to, currency } },
    ]),
  );
  const wanted = rows.map(({ line, row }) => {
    const offer = offerOf(row);
    if (offer === undefined) return fault('unknown-offer', 'code', row.code, { supplier: row.supplier });
    return {
      line,
      row,
      key: [offer, dayText(row.validFrom), row.kind, row.minimumPacks ?? ''].join('|'),
      from: row.validFrom,
      values: (before: Values | null) => ({
        price: row.price,
        valid_to: row.validTo === undefined ? (before?.valid_to ?? null) : isoDay(row.validTo),
        currency: kept(row.currency, before?.currency, null),
      }),
    };
  });
  const plan = planKeyed<StatedPrice, Values>(wanted, stored, closedThrough);
  const fresh = plan.create.map(({ row, values }) => ({
    offer_id: offerOf(row) ?? null,
    kind: row.kind,
    valid_from: dayText(row.validFrom),
    minimum_packs: row.minimumPacks,
    ...values,
  }));
  await insertRows(tx, TABLE, fresh);
  await updateRows(
    tx,
    TABLE,
    plan.change.map(({ id, values }) => ({ id, ...values })),
  );
  return { outcomes: plan.outcomes, withdrawn: 0 };
}
