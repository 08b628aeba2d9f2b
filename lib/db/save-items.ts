import { nameKey } from '../core/name-key';
import type { ItemKind } from '../model/facts';
import type { RowFault } from '../model/refusal';
import type { VenueTx } from './in-venue';
import { fault, isFault, type Outcome } from './plan-keyed';
import { factTable, insertRows, storedRows, updateRows } from './save-rows';

const ITEM = factTable('item', { kind: 'item_kind', name: 'text', name_key: 'text' });

/** What a name stands for in this venue. */
export interface KnownItem {
  readonly id: number;
  readonly kind: ItemKind;
  readonly name: string;
}

/** Everything that has a name, by nameKey. */
export type KnownItems = ReadonlyMap<string, KnownItem>;

export async function knownItems(tx: VenueTx): Promise<KnownItems> {
  const rows = await storedRows(tx, ITEM);
  return new Map(
    rows.map(({ id, kind, name, name_key }) => [name_key ?? '', { id, kind: kind as ItemKind, name: name ?? '' }]),
  );
}

/** A name that is to stand for a kind of thing. */
export interface WantedItem {
  readonly name: string;
  readonly kind: ItemKind;
}

/** Makes items that are new; those that are there stay as they are. */
export async function makeItems(tx: VenueTx, known: KnownItems, wanted: readonly WantedItem[]): Promise<KnownItems> {
  const fresh = firstOfEach(wanted).filter(([key]) => !known.has(key));
  if (fresh.length === 0) return known;
  await insertRows(
    tx,
    ITEM,
    fresh.map(([name_key, { kind, name }]) => ({ kind, name, name_key })),
  );
  return knownItems(tx);
}

/**
 * Makes items that are new and gives those that are there the kind and the spelling that the rows of a file state, the first row for
 * each; the rows are those with these outcomes. A row that alters only its item's kind or spelling is `changed`.
 */
export async function settleItems(
  tx: VenueTx,
  known: KnownItems,
  wanted: readonly WantedItem[],
  outcomes: readonly Outcome[],
): Promise<{ readonly items: KnownItems; readonly outcomes: readonly Outcome[] }> {
  const sound = firstOfEach(wanted.filter((_, place) => !isFault(outcomes[place] ?? 'unchanged')));
  const altered = new Map(
    sound.flatMap(([key, item]) => {
      const there = known.get(key);
      return there && (there.kind !== item.kind || there.name !== item.name) ? [[item, there.id] as const] : [];
    }),
  );
  if (altered.size > 0) {
    await updateRows(
      tx,
      ITEM,
      [...altered].map(([{ kind, name }, id]) => ({ id, kind, name })),
    );
  }
  const items = await makeItems(
    tx,
    altered.size > 0 ? await knownItems(tx) : known,
    sound.map(([, item]) => item),
  );
  return {
    items,
    outcomes: outcomes.map((outcome, place) => {
      const item = wanted[place];
      return outcome === 'unchanged' && item && altered.has(item) ? 'changed' : outcome;
    }),
  };
}

/** Gives an item another name, which no other item has. */
export async function renameKnown(tx: VenueTx, id: number, name: string): Promise<void> {
  await updateRows(tx, ITEM, [{ id, name, name_key: nameKey(name) }]);
}

function firstOfEach(wanted: readonly WantedItem[]): readonly (readonly [string, WantedItem])[] {
  const firsts = new Map<string, WantedItem>();
  for (const item of wanted) {
    const key = nameKey(item.name);
    if (!firsts.has(key)) firsts.set(key, item);
  }
  return [...firsts];
}

/** The number of an item that is known to be there. */
export function itemId(items: KnownItems, name: string): number {
  const item = items.get(nameKey(name));
  if (!item) throw new Error(`no item is called ${name}`);
  return item.id;
}

/** Items that have a recipe, and so cannot become ingredients. */
export async function itemsWithRecipe(tx: VenueTx): Promise<ReadonlySet<number>> {
  const rows = await tx.prisma.recipeVersion.groupBy({ by: ['itemId'], where: { venueId: tx.venue } });
  return new Set(rows.map(({ itemId: id }) => id));
}

/** Why a name cannot be used as an ingredient's, or null. */
export function ingredientFault(items: KnownItems, name: string): RowFault | null {
  const there = items.get(nameKey(name));
  if (there?.kind === 'ingredient') return null;
  return fault('unknown-ingredient', 'ingredient', name, { kind: there?.kind ?? null });
}
