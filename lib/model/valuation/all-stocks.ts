import { grouped } from '../../core/grouped';
import type { Facts, ItemId, PurchaseLine } from '../facts';
import type { Issue } from '../issue';
import { inBase, unitReader } from '../measure';
import { measureReader } from '../measure-reader';
import { boughtGoods, invoicePoints } from '../purchases';
import type { CountedDay, IngredientStock } from './ingredient-stock';
import { priceReaders } from './price-reader';
import { receivedBy } from './receipts';

export interface Stocks {
  /** The ingredients that were bought, counted or moved. */
  readonly of: ReadonlyMap<ItemId, IngredientStock>;
  readonly ownLines: readonly PurchaseLine[];
  readonly issues: readonly (Issue & { readonly day: CountedDay['day'] })[];
}

/**
 * The stock of every ingredient as the facts state it. Whole ingredients only: counted components and parts are not taken apart here.
 * A count or a transfer in a unit that leads nowhere raises an issue and is left out.
 */
export function stocksOf(facts: Facts, { spreadFreight }: { readonly spreadFreight: boolean }): Stocks {
  const units = unitReader(facts.venue.kitchenMeasures);
  const measureOn = measureReader(facts);
  const bought = boughtGoods(facts, units);
  const prices = priceReaders(facts, [...facts.pricePoints, ...invoicePoints(bought)], units);
  const received = receivedBy(facts, bought, prices.inForce, units, spreadFreight);
  const issues = [...received.issues];
  const nameOf = new Map(facts.items.map(({ id, name }) => [id, name]));
  const ingredients = new Set(facts.items.filter(({ kind }) => kind === 'ingredient').map(({ id }) => id));

  const inBaseUnits = (rows: readonly (Facts['counts'][number] | Facts['moves'][number])[]) =>
    rows.flatMap(({ item, day, quantity, unit }) => {
      const measure = measureOn(item, day);
      const amount = measure && inBase(measure, quantity, unit, units);
      if (typeof amount === 'number') return [{ item, day, quantity: amount }];
      if (measure) issues.push({ code: 'unknown-count-unit', about: nameOf.get(item) ?? '', facts: { unit }, day });
      return [];
    });
  const counted = grouped(
    inBaseUnits(facts.counts.filter(({ item, part }) => part === null && ingredients.has(item))),
    ({ item }) => item,
  );
  const out = grouped(
    inBaseUnits(facts.moves.filter(({ item, reason }) => reason === 'transfer_out' && ingredients.has(item))),
    ({ item }) => item,
  );
  const items = new Set([...received.of.keys(), ...counted.keys(), ...out.keys()].filter((id) => ingredients.has(id)));
  const of = [...items].map((item): readonly [ItemId, IngredientStock] => [
    item,
    {
      counts: byDay(counted.get(item) ?? []),
      receipts: received.of.get(item) ?? [],
      transfersOut: byDay(out.get(item) ?? []),
      priceInForce: (day) => prices.inForce(item, day),
      lastInvoice: (day) => prices.lastInvoice(item, day),
    },
  ]);
  return { of: new Map(of), ownLines: received.ownLines, issues };
}

/** What stood in all places of a day together, day after day. */
function byDay(rows: readonly CountedDay[]): readonly CountedDay[] {
  return [...grouped(rows, ({ day }) => day)]
    .map(([day, places]) => ({ day, quantity: places.reduce((sum, { quantity }) => sum + quantity, 0) }))
    .sort((a, b) => a.day - b.day);
}
