import { itemUses } from '../../db/item-uses';
import { takeOutItem } from '../../db/take-out';
import { stillUsed } from '../../format/words/kitchen';
import type { Asker } from '../../session/asker';
import { deleteShape } from './edit-shapes';
import { type Kept, notKept } from './kept';
import { kitchenWrite } from './kitchen-write';
import { askedFor } from './read-edit';

/** Deletes an item that nothing uses, with all that is stated of it; else everything that uses it is named. */
export async function deleteItem(asker: Asker, body: unknown): Promise<Kept> {
  const { asked, wrong } = askedFor(deleteShape, body);
  if (wrong) return wrong;
  return kitchenWrite(asker, asked, async (tx, { item }) => {
    if (!item) throw new Error('what is deleted is there');
    const uses = await itemUses(tx, item.id);
    if (uses.length > 0) throw notKept('in-use', stillUsed(item.name, uses), { uses });
    return {
      day: null,
      async save() {
        await takeOutItem(tx, item.id);
        return { id: item.id, name: item.name };
      },
    };
  });
}
