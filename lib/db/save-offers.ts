import { type Day, parseDay } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { VenueTx } from './in-venue';
import { type ChoicePlan, planChoices } from './plan-choices';
import { isFault, isoDay, kept, type Outcome, planKeyed, type Saved, type Stated } from './plan-keyed';
import { ingredientFault, itemId, type KnownItems, knownItems } from './save-items';
import { deleteRows, type FactRow, factTable, insertRows, storedRows, updateRows } from './save-rows';
import { suppliersNamed } from './save-suppliers';

/** What a supplier offers of an ingredient. Null: not known; undefined: not said. */
export interface StatedOffer {
  readonly supplier: string;
  readonly code: string;
  readonly ingredient: string;
  readonly packCount: DecimalText;
  readonly packSize: DecimalText;
  readonly packUnit: string;
  readonly description: string | null | undefined;
  readonly gtin: string | null | undefined;
  readonly chosen: boolean | null | undefined;
  readonly chosenFrom: Day | null;
}

const OFFER = factTable('offer', {
  supplier_id: 'int',
  code: 'text',
  code_key: 'text',
  item_id: 'int',
  pack_count: 'numeric',
  pack_size: 'numeric',
  pack_unit: 'text',
  description: 'text',
  gtin: 'text',
});
const CHOICE = factTable('offer_choice', { item_id: 'int', offer_id: 'int', valid_from: 'date' });

type Values = Omit<FactRow<typeof OFFER.columns>, 'supplier_id' | 'code_key'>;

/** Saves rows of offers.csv, by supplier and code, and which of an ingredient's offers is chosen. A supplier named here first is made. */
export async function saveOffers(
  tx: VenueTx,
  rows: readonly Stated<StatedOffer>[],
  closedThrough: Day | null,
): Promise<Saved> {
  const items = await knownItems(tx);
  const suppliers = await suppliersNamed(
    tx,
    rows.map(({ row }) => row.supplier),
  );
  const keyOf = (row: StatedOffer) => `${suppliers.get(nameKey(row.supplier))}|${nameKey(row.code)}`;
  const unknown = rows.map(({ row }) => ingredientFault(items, row.ingredient));
  const choices = await choicesOf(tx, rows, unknown, keyOf, closedThrough);
  const wanted = rows.map(
    ({ line, row }, place) =>
      unknown[place] ??
      choices.faults[place] ?? {
        line,
        row,
        key: keyOf(row),
        values: (stored: Values | null) => valuesOf(row, items, stored),
      },
  );
  const plan = planKeyed(wanted, await storedOffers(tx), null);
  const fresh = plan.create.map(({ row, values }) => ({
    supplier_id: suppliers.get(nameKey(row.supplier)) ?? null,
    code_key: nameKey(row.code),
    ...values,
  }));
  await insertRows(tx, OFFER, fresh);
  await updateRows(
    tx,
    OFFER,
    plan.change.map(({ id, values }) => ({ id, ...values })),
  );
  await saveChoices(tx, {
    ...choices,
    put: choices.put.filter(({ place }) => !isFault(plan.outcomes[place] ?? 'unchanged')),
  });
  const outcomes = plan.outcomes.map(
    (outcome, place): Outcome => (outcome === 'unchanged' && choices.alters[place] ? 'changed' : outcome),
  );
  return { outcomes, withdrawn: 0 };
}

function valuesOf(row: StatedOffer, items: KnownItems, stored: Values | null): Values {
  return {
    code: row.code,
    item_id: itemId(items, row.ingredient),
    pack_count: row.packCount,
    pack_size: row.packSize,
    pack_unit: row.packUnit,
    description: kept(row.description, stored?.description, null),
    gtin: kept(row.gtin, stored?.gtin, null),
  };
}

async function storedOffers(tx: VenueTx): Promise<ReadonlyMap<string, { id: number; values: Values }>> {
  const rows = await storedRows(tx, OFFER);
  return new Map(
    rows.map(({ id, supplier_id, code_key, ...values }) => [`${supplier_id}|${code_key}`, { id, values }]),
  );
}

/** Offers by the number of their supplier and the key of their code. */
export async function knownOffers(tx: VenueTx): Promise<ReadonlyMap<string, number>> {
  return new Map([...(await storedOffers(tx))].map(([key, { id }]) => [key, id]));
}

/** The plan of choices, its faults and alterations at the places of the rows. */
async function choicesOf(
  tx: VenueTx,
  rows: readonly Stated<StatedOffer>[],
  unknown: readonly (Outcome | null)[],
  keyOf: (row: StatedOffer) => string,
  closedThrough: Day | null,
): Promise<ChoicePlan> {
  const offerKeys = new Map([...(await knownOffers(tx))].map(([key, id]) => [id, key]));
  const itemKeys = new Map([...(await knownItems(tx))].map(([key, { id }]) => [id, key]));
  const stored = (await storedRows(tx, CHOICE)).map(({ id, item_id, offer_id, valid_from }) => ({
    id,
    offer: offerKeys.get(offer_id ?? 0) ?? '',
    ingredient: itemKeys.get(item_id ?? 0) ?? '',
    from: valid_from === null ? null : parseDay(valid_from),
  }));
  const places = rows.flatMap((_, place) => (unknown[place] ? [] : [place]));
  const stated = rows
    .filter((_, place) => !unknown[place])
    .map(({ line, row }) => ({
      line,
      offer: keyOf(row),
      ingredient: nameKey(row.ingredient),
      chosen: row.chosen ?? null,
      from: row.chosenFrom,
    }));
  const plan = planChoices(stated, stored, closedThrough);
  const at = new Map(places.map((place, index) => [place, index]));
  return {
    ...plan,
    put: plan.put.map((choice) => ({ ...choice, place: places[choice.place] ?? 0 })),
    faults: rows.map((_, place) => plan.faults[at.get(place) ?? -1] ?? null),
    alters: rows.map((_, place) => plan.alters[at.get(place) ?? -1] ?? false),
  };
}

async function saveChoices(tx: VenueTx, plan: ChoicePlan): Promise<void> {
  if (plan.put.length === 0 && plan.remove.length === 0) return;
  const offers = await knownOffers(tx);
  const items = await knownItems(tx);
  const rows = plan.put.map(({ id, offer, ingredient, from }) => ({
    id,
    item_id: items.get(ingredient)?.id ?? null,
    offer_id: offers.get(offer) ?? null,
    valid_from: isoDay(from),
  }));
  await deleteRows(tx, CHOICE, plan.remove);
  await insertRows(
    tx,
    CHOICE,
    rows.filter(({ id }) => id === null).map(({ id: _, ...row }) => row),
  );
  await updateRows(
    tx,
    CHOICE,
    rows.flatMap(({ id, ...row }) => (id === null ? [] : [{ id, ...row }])),
  );
}
