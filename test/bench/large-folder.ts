import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Day, dayText } from '@/lib/core/days';
import { seededRandom } from '@/lib/core/random';
import { csvText } from '@/lib/format/csv-text';
import type { Facts, ItemId } from '@/lib/model/facts';
import { MONTH } from './large-book';

type Row = Readonly<Record<string, string | number | null>>;

/** Writes a large book as the folder of CSV files that a restaurant would bring, with sales of every dish on every day of the month. */
export function writeLargeFolder(facts: Facts, folder: string, seed = 11): void {
  const random = seededRandom(seed);
  const names = new Map(facts.items.map(({ id, name }) => [id, name]));
  const nameOf = (id: ItemId): string => names.get(id) ?? '';
  const from = (day: Day | null): string => (day === null ? '' : dayText(day));
  const dishes = facts.items.filter(({ kind }) => kind === 'dish');
  const days = Array.from({ length: MONTH.to - MONTH.from }, (_, index) => (MONTH.from + index) as Day);
  const groupOf = (id: ItemId): string => `group ${id % 40}`;
  mkdirSync(folder, { recursive: true });
  const write = (file: string, rows: readonly Row[]): void =>
    writeFileSync(join(folder, `${file}.csv`), csvText(Object.keys(rows[0] ?? {}), rows));

  write('venue', [
    { setting: 'name', value: 'Large book' },
    { setting: 'currency', value: 'EUR' },
  ]);
  write(
    'ingredients',
    facts.ingredientVersions.map(({ item, measure, usableYield }) => ({
      ...{ ingredient: nameOf(item), measure, product_group: groupOf(item) },
      usable_yield_pct: Number((usableYield * 100).toFixed(6)),
    })),
  );
  write(
    'offers',
    facts.offers.map(({ supplier, code, item, packCount, packSize, packUnit }) => ({
      ...{ supplier, code, ingredient: nameOf(item), pack_count: packCount, pack_size: packSize, pack_unit: packUnit },
    })),
  );
  const offers = new Map(facts.offers.map((offer) => [offer.id, offer]));
  write(
    'offer_prices',
    facts.pricePoints.map(({ offer, validFrom, price, kind }) => {
      const { supplier = '', code = '' } = offers.get(offer) ?? {};
      return { supplier, code, valid_from: dayText(validFrom), price, kind };
    }),
  );
  const recipes = facts.recipeVersions;
  write(
    'recipes',
    recipes.map((recipe) => ({
      recipe: nameOf(recipe.item),
      kind: recipe.yieldQuantity === null ? 'dish' : 'component',
      ...{ valid_from: from(recipe.validFrom), yield_quantity: recipe.yieldQuantity, yield_unit: recipe.yieldUnit },
      breakage_pct: recipe.breakage * 100,
    })),
  );
  write(
    'recipe_lines',
    recipes.flatMap(({ item, validFrom, lines }) =>
      lines.map((line) => ({
        ...{ recipe: nameOf(item), valid_from: from(validFrom), item: nameOf(line.item) },
        ...{ quantity: line.quantity, unit: line.unit, as: line.as },
      })),
    ),
  );
  write(
    'menu',
    dishes.map(({ name }) => ({ item: name, valid_from: '2026-01-01', price: 30, tax_pct: 10, tax_included: 'yes' })),
  );
  write(
    'sales',
    days.flatMap((day) =>
      dishes.map(({ name }) => {
        const sold = 1 + Math.floor(random() * 5);
        return { date: dayText(day), item: name, sold, gross_revenue: sold * 30, tax_pct: 10 };
      }),
    ),
  );
}
