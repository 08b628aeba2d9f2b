import fc from 'fast-check';
import { nameKey } from '@/lib/core/name-key';
import type { Facts, MenuPrice, SalesDay } from '@/lib/model/facts';
import { inForce, onDay } from '@/lib/model/in-force';
import { netPrice } from '@/lib/model/menu-price';
import { itemSection } from '@/lib/model/offered';
import { type EditTarget, type PriceEdit, stepped } from '@/lib/model/price-model/edits';
import type { Thing } from '@/lib/model/things';
import { day } from './books';
import { acyclicBooks, BOOK_DAYS } from './generated-books';

/**
 * Generated books with two suppliers, two product groups, two sections, menu prices that change and have tax inside, and sales that come
 * without revenue. Every pack of theirs holds one base unit.
 */
export const pricedBooks: fc.Arbitrary<Facts> = acyclicBooks.map((facts) => ({
  ...facts,
  offers: facts.offers.map((offer) => (offer.id % 2 === 0 ? { ...offer, supplier: 'Quay Fruit' } : offer)),
  ingredientVersions: facts.ingredientVersions.map((version) => ({
    ...version,
    productGroup: version.item % 2 === 0 ? 'Chocolate' : 'Dairy',
    // what changes on the way, changes its department too
    ...(version.validFrom === null ? {} : { department: version.item % 2 === 0 ? 'packaging' : 'food' }),
  })),
  recipeVersions: facts.recipeVersions.map((version) => ({
    ...version,
    section: version.item % 2 === 0 ? 'Plated' : 'To share',
  })),
  menuPrices: facts.menuPrices.flatMap((stated, index) => {
    const later = { validFrom: day('2026-10-09'), price: (stated.price ?? 0) + 2, tax: 0.135, taxIncluded: true };
    return index % 2 === 0 ? [stated, { ...stated, ...later }] : [{ ...stated, tax: 0.09, taxIncluded: true }];
  }),
  sales: facts.sales.map((row, index) => (index % 3 === 0 ? { ...row, soldWithoutRevenue: row.sold / 2 } : row)),
}));

const step = fc.oneof(
  fc.integer({ min: -90, max: 300 }).map((perCent) => ({ how: 'share' as const, by: perCent / 100 })),
  fc.integer({ min: 0, max: 40 }).map((eighths) => ({ how: 'amount' as const, by: eighths / 8 })),
  fc.integer({ min: 1, max: 200 }).map((eighths) => ({ how: 'flat' as const, to: eighths / 8 })),
);
const named = <Of extends string>(of: Of, ...names: string[]) =>
  fc.constantFrom(...names).map((name) => ({ of, name }) as const);

const target: fc.Arbitrary<EditTarget> = fc.oneof(
  named('ingredient', 'Ingredient 0', 'ingredient 1', 'Ingredient 2'),
  named('group', 'Chocolate', 'dairy'),
  named('supplier', 'Bay Dairy', 'Quay fruit'),
  named('item', 'Plate 0', 'plate 1', 'Set'),
  named('section', 'Plated', 'to share'),
  fc.constant({ of: 'everything-bought', name: null } as const),
  fc.constant({ of: 'whole-menu', name: null } as const),
);
export const someEdits = fc.array(fc.record({ target, step }), { minLength: 1, maxLength: 4 });

/** The facts as they would be had the edits been prices from the beginning: price points, menu prices, and what guests paid of them. */
export function editedFacts(facts: Facts, edits: readonly PriceEdit[], things: readonly Thing[]): Facts {
  return withMenuPrices(withPricePoints(facts, edits), edits, things);
}

const isNamed = (goal: EditTarget, name: string | null | undefined): boolean =>
  goal.name !== null && nameKey(name ?? '') === nameKey(goal.name);

function withPricePoints(facts: Facts, edits: readonly PriceEdit[]): Facts {
  const versionOf = new Map(facts.ingredientVersions.map((version) => [version.item, version]));
  const nameOf = new Map(facts.items.map(({ id, name }) => [id, name]));
  const offerOf = new Map(facts.offers.map((offer) => [offer.id, offer]));
  const pricePoints = facts.pricePoints.map((point) => {
    const offer = offerOf.get(point.offer);
    const version = offer && versionOf.get(offer.item);
    if (!offer || !version) return point;
    const whose: Partial<Record<EditTarget['of'], string | null | undefined>> = {
      ingredient: nameOf.get(offer.item),
      group: version.productGroup,
      supplier: offer.supplier,
    };
    const own = edits.filter(({ target: goal }) => goal.of === 'everything-bought' || isNamed(goal, whose[goal.of]));
    const spoken = version.measure === 'each' ? 1 : 1000;
    return { ...point, price: own.reduce((price, each) => stepped(price, each.step, spoken), point.price) };
  });
  return { ...facts, pricePoints };
}

function withMenuPrices(facts: Facts, edits: readonly PriceEdit[], things: readonly Thing[]): Facts {
  const sectionOf = new Map(
    things.flatMap((thing) => (thing.part || thing.channel ? [] : [[thing.id, itemSection(thing)] as const])),
  );
  const nameOf = new Map(facts.items.map(({ id, name }) => [id, name]));
  const after = (stated: MenuPrice): MenuPrice => {
    const whose: Partial<Record<EditTarget['of'], string | null | undefined>> = {
      item: nameOf.get(stated.item),
      section: sectionOf.get(stated.item),
    };
    const own = edits.filter(({ target: goal }) => goal.of === 'whole-menu' || isNamed(goal, whose[goal.of]));
    if (stated.price === null) return stated;
    return { ...stated, price: own.reduce((price, each) => stepped(price, each.step), stated.price) };
  };
  const paid = (row: SalesDay): SalesDay => {
    const here = facts.menuPrices.filter(({ item, channel }) => item === row.item && channel === row.channel);
    const stated = onDay(inForce(here, BOOK_DAYS), row.day);
    const old = stated && netPrice(stated);
    const now = stated && netPrice(after(stated));
    return old === null || now === null ? row : { ...row, net: row.net * (now / old) };
  };
  return { ...facts, menuPrices: facts.menuPrices.map(after), sales: facts.sales.map(paid) };
}
