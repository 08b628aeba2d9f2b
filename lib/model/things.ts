import type { Day, DayRange } from '../core/days';
import { isWithin } from '../core/days';
import { ascending, byText, grouped } from '../core/grouped';
import { nameKey } from '../core/name-key';
import { exchangeOf } from './exchange';
import type { Facts, IngredientVersion, ItemId, ItemKind, Part, RecipeVersion, SalesDay } from './facts';
import { type InForce, inForce } from './in-force';
import { type OwnMeasures, ownMeasures, type UnitReader } from './measure';
import type { ChannelMenu } from './menu-price';
import { packingThings } from './packing-things';
import { partThings } from './part-things';
import { type BasePrice, pricesInForce } from './price-book';

/** What a period is costed for: what is on the menu or sold in it with all that goes into that, or everything that has a name. */
export type Scope = 'offered' | 'everything';

/**
 * Something bought, made or sold, with all that is stated of it in the days of a period. A part of a split ingredient is a thing of
 * its own beside the whole; so is what an item takes more where it is sold in one channel (its packing).
 */
export interface Thing {
  /** Of a part and of a packing: the item that it belongs to. */
  readonly id: ItemId;
  readonly kind: ItemKind;
  /** The part that it is; null for an item. */
  readonly part: ThingPart | null;
  /** The channel that it is the packing for; null for an item. */
  readonly channel: string | null;
  readonly name: string;
  readonly recipes: readonly InForce<RecipeVersion>[];
  /** Where no recipe is in force in the period: the first day on which one is; null where there is none at all. */
  readonly begins: Day | null;
  readonly versions: readonly InForce<IngredientVersion>[];
  readonly prices: readonly InForce<BasePrice>[];
  readonly own: OwnMeasures;
  /** Usable yields by use, by nameKey of the use. */
  readonly uses: ReadonlyMap<string, number>;
  readonly menu: readonly ChannelMenu[];
  /** Sales in the period, by day, then channel. */
  readonly sales: readonly SalesDay[];
}

/** A part with the sum of the cost shares of all parts of its whole: 1 where nothing is amiss. */
export interface ThingPart extends Part {
  readonly shares: number;
}

/**
 * What the figures of a period hang on: everything on the menu or sold in it (or whatever has a name, where the scope is everything),
 * the extras given to every guest, and everything their recipes reach, by name; after the items their parts, then their packings.
 * Names decide the order, not ids: the same facts loaded in another order give the same figures to the last bit.
 */
export function thingsOf(facts: Facts, range: DayRange, units: UnitReader, scope: Scope): readonly Thing[] {
  const recipesOf = grouped(facts.recipeVersions, (version) => version.item);
  const versionsOf = grouped(facts.ingredientVersions, (version) => version.item);
  const usesOf = grouped(facts.yieldUses, (each) => each.item);
  const partsOf = grouped(facts.parts, (part) => part.item);
  const laterOf = new Map(facts.laterRecipes.map(({ item, begins }) => [item, begins]));
  const makersOf = makersByProduct(facts.recipeVersions);
  const measuresOf = grouped(facts.namedMeasures, (measure) => measure.item);
  const offersOf = grouped(facts.offers, (offer) => offer.item);
  const choicesOf = grouped(facts.offerChoices, (choice) => choice.item);
  const pointsOf = grouped(facts.pricePoints, (point) => point.offer);
  const salesOf = grouped(
    facts.sales.filter((sale) => isWithin(sale.day, range)),
    (sale) => sale.item,
  );
  const exchange = exchangeOf(facts.exchangeRates, facts.venue.currency);
  const menuOf = grouped(facts.menuPrices, (price) => price.item);

  const things = new Map<ItemId, Thing>();
  const itemOf = new Map(facts.items.map((item) => [item.id, item]));
  const menuIn = (item: ItemId): readonly ChannelMenu[] =>
    [...grouped(menuOf.get(item) ?? [], (price) => price.channel)]
      .map(([channel, prices]) => ({ channel, prices: inForce(prices, range) }))
      .sort((a, b) => byText(a.channel, b.channel));
  const isOffered = (menu: readonly ChannelMenu[]): boolean =>
    menu.some(({ prices }) => prices.some(({ fact }) => fact.price !== null));

  const waiting: ItemId[] = [];
  const reach = (id: ItemId): void => {
    const item = itemOf.get(id);
    if (!item || things.has(id)) return;
    const own = ownMeasures(measuresOf.get(id) ?? []);
    const versions = inForce(versionsOf.get(id) ?? [], range);
    const recipes = inForce(recipesOf.get(id) ?? [], range);
    const buying = {
      name: item.name,
      versions,
      own,
      offers: offersOf.get(id) ?? [],
      choices: choicesOf.get(id) ?? [],
      pointsOf: (offer: { readonly id: Facts['offers'][number]['id'] }) => pointsOf.get(offer.id) ?? [],
    };
    const prices = item.kind === 'ingredient' ? pricesInForce(buying, range, exchange, units) : [];
    const sales = ascending(salesOf.get(id) ?? [], (a, b) => a.day - b.day || byText(a.channel, b.channel));
    const uses = new Map(usesOf.get(id)?.map((each) => [nameKey(each.use), each.usableYield]));
    const { kind, name } = item;
    const begins = recipes.length > 0 ? null : firstDay(recipesOf.get(id) ?? [], laterOf.get(id) ?? null);
    const stated = { recipes, begins, versions, prices, own, uses, menu: menuIn(id), sales };
    things.set(id, { id, kind, name, part: null, channel: null, ...stated });
    waiting.push(id);
  };

  for (const id of salesOf.keys()) reach(id);
  for (const id of menuOf.keys()) if (isOffered(menuIn(id))) reach(id);
  for (const { id, kind } of facts.items) {
    if (kind === 'extra' && inForce(recipesOf.get(id) ?? [], range).length > 0) reach(id);
  }
  if (scope === 'everything') for (const id of itemOf.keys()) reach(id);
  for (const id of waiting) {
    for (const { fact } of things.get(id)?.recipes ?? []) {
      for (const line of fact.lines) reach(line.item);
    }
    // what it is worth is said where it is made
    for (const maker of makersOf.get(id) ?? []) reach(maker);
  }
  const keyed = [...things.values()].map((thing) => ({ thing, key: nameKey(thing.name) }));
  const named = keyed.sort((a, b) => byText(a.key, b.key)).map(({ thing }) => thing);
  const parts = named.flatMap((thing) => partThings(thing, partsOf.get(thing.id) ?? [], range));
  return [...named, ...parts, ...packingThings(named)];
}

/** The first day on which one of some versions holds, where none holds before; or the one that is known otherwise. */
function firstDay(versions: readonly RecipeVersion[], later: Day | null): Day | null {
  const days = versions.flatMap(({ validFrom }) => validFrom ?? []);
  return days.length === 0 ? later : (Math.min(...days) as Day);
}

/** Recipes that make a thing as a by-product, by the thing. */
function makersByProduct(versions: Facts['recipeVersions']): ReadonlyMap<ItemId, readonly ItemId[]> {
  const makers = new Map<ItemId, ItemId[]>();
  for (const { item, lines } of versions) {
    for (const line of lines) {
      if (line.byProductCredit !== null) makers.set(line.item, [...(makers.get(line.item) ?? []), item]);
    }
  }
  return makers;
}
