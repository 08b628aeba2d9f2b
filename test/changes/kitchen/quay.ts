import type { Kept, Refusal } from '@/lib/changes/kitchen/kept';
import { loadFolder } from '@/lib/changes/load-folder';
import { nameKey } from '@/lib/core/name-key';
import type { Database } from '@/lib/db/database';
import { inVenue } from '@/lib/db/in-venue';
import { knownItems } from '@/lib/db/save-items';
import { type WrittenItem, writtenItem } from '@/lib/db/written-item';
import type { Asker } from '@/lib/session/asker';
import { folder } from '../folders';
import { venueId } from '../stored';

/** Two people who both may change the kitchen. */
export const ADA: Asker = { person: 'ada' };
export const BEN: Asker = { person: 'ben' };

/**
 * A small kitchen. Cream is 8.00 a kg, sugar 1.00, hazelnuts 20.00; 1 kg of praline is 1 kg of sugar: 1.00.
 * A tart is 100 g of praline and 50 g of cream: 0.10 + 0.40 = 0.50; a cup is 50 g of praline: 0.05.
 */
export async function quay(db: Database, name: string): Promise<void> {
  const packs = ['Cream,C1,8.00', 'Sugar,S1,1.00', 'Hazelnuts,H1,20.00'].map((each) => each.split(','));
  await loadFolder(
    db,
    folder({
      'venue.csv': ['setting,value', `name,${name}`, 'currency,EUR', 'locale,en-IE', 'q_factor_pct,0'],
      'labour.csv': ['grade,valid_from,cost_per_hour', 'pastry,,18'],
      'ingredients.csv': [
        'ingredient,measure,contains,may_contain',
        'Cream,g,milk,none',
        'Sugar,g,none,none',
        'Hazelnuts,g,hazelnut,none',
      ],
      'offers.csv': [
        'supplier,code,ingredient,pack_count,pack_size,pack_unit',
        ...packs.map(([item, code]) => `Bay Stores,${code},${item},1,1,kg`),
      ],
      'offer_prices.csv': [
        'supplier,code,valid_from,price',
        ...packs.map(([, code, price]) => `Bay Stores,${code},2026-01-01,${price}`),
      ],
      'recipes.csv': [
        'recipe,kind,valid_from,yield_quantity,yield_unit,hands_on_minutes,grade,plating_minutes',
        'Praline,component,2026-01-01,1000,g,0,,',
        'Tart,dish,2026-01-01,,,,,2',
        'Cup,dish,2026-01-01,,,,,1',
      ],
      'recipe_lines.csv': [
        'recipe,valid_from,item,quantity,unit',
        'Praline,2026-01-01,Sugar,1000,g',
        'Tart,2026-01-01,Praline,100,g',
        'Tart,2026-01-01,Cream,50,g',
        'Cup,2026-01-01,Praline,50,g',
      ],
      'menu.csv': ['item,valid_from,price,tax_pct,tax_included', 'Tart,2026-01-01,9,0,yes', 'Cup,2026-01-01,4,0,yes'],
    }),
  );
}

/** An item as it is written, to be read before it is edited. */
export async function written(db: Database, venue: string, item: string): Promise<WrittenItem> {
  return inVenue(db, { venue: await venueId(db, venue), person: 'ada' }, 'read', async (tx) => {
    const known = (await knownItems(tx)).get(nameKey(item));
    if (!known) throw new Error(`there is no ${item}`);
    return writtenItem(tx, known);
  });
}

export async function revisionOf(db: Database, venue: string, item: string): Promise<number> {
  return (await written(db, venue, item)).revision;
}

export function keptOf(result: Kept): Extract<Kept, { ok: true }> {
  if (!result.ok) throw new Error(JSON.stringify(result.refusal, null, 1));
  return result;
}

export function refusalOf(result: Kept): Refusal {
  if (result.ok) throw new Error('it was kept');
  return result.refusal;
}
