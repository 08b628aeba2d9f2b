import type { DayRange } from '../core/days';
import { isWithin } from '../core/days';
import { ascending, byText, grouped } from '../core/grouped';
import { nameKey } from '../core/name-key';
import { exchangeOf } from './exchange';
import type { Facts, IngredientVersion, ItemId, ItemKind, RecipeVersion, SalesDay } from './facts';
import { type InForce, inForce } from './in-force';
import { type OwnMeasures, ownMeasures, type UnitReader } from './measure';
import type { ChannelMenu } from './menu-price';
import { type BasePrice, pricesInForce } from './price-book';

/** What a period is costed for: what is on the menu or sold in it with all that goes into that, or everything that has a name. */
export type Scope = 'offered' | 'everything';

/** Something bought, made or sold, with all that is stated of it in the days of a period. */
export interface Thing {
  readonly id: ItemId;
  readonly kind: ItemKind;
  readonly name: string;
  readonly recipes: readonly InForce<RecipeVersion>[];
  readonly versions: readonly InForce<IngredientVersion>[];
  readonly prices: readonly InForce<BasePrice>[];
  readonly own: OwnMeasures;
  readonly menu: readonly ChannelMenu[];
  /** Sales in the period, by day, then channel. */
  readonly sales: readonly SalesDay[];
}

/**
 * What the figures of a period hang on: everything on the menu or sold in it (or whatever has a name, where the scope is everything),
 * and everything its recipes reach, by name.
 * Names decide the order, not ids: the same facts loaded in another order give the same figures to the last bit.
 */
export function thingsOf(facts: Facts, range: DayRange, units: UnitReader, scope: Scope): readonly Thing[] {
  const recipesOf = grouped(facts.recipeVersions, (version) => version.item);
  const versionsOf = grouped(facts.ingredientVersions, (version) => version.item);
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
    things.set(id, { ...item, recipes, versions, prices, own, menu: menuIn(id), sales });
    waiting.push(id);
  };

  for (const id of salesOf.keys()) reach(id);
  for (const id of menuOf.keys()) if (isOffered(menuIn(id))) reach(id);
  if (scope === 'everything') for (const id of itemOf.keys()) reach(id);
  for (const id of waiting) {
    for (const { fact } of things.get(id)?.recipes ?? []) {
      for (const line of fact.lines) reach(line.item);
    }
  }
  const keyed = [...things.values()].map((thing) => ({ thing, key: nameKey(thing.name) }));
  return keyed.sort((a, b) => byText(a.key, b.key)).map(({ thing }) => thing);
}
