import { nameKey } from '../../core/name-key';
import { refusedLinesOf } from '../../db/lines-left-out';
import { knownItems, renameKnown } from '../../db/save-items';
import { linesWaiting } from '../../format/words/kitchen';
import type { Asker } from '../../session/asker';
import { renameShape } from './edit-shapes';
import { type Kept, notKept } from './kept';
import { kitchenWrite } from './kitchen-write';
import { soundName, wrongName } from './named-item';
import { askedFor } from './read-edit';

/** Gives an item another name. What uses it goes on using it; a file that still has the old name makes something new. */
export async function renameItem(asker: Asker, body: unknown): Promise<Kept> {
  const { asked, wrong } = askedFor(renameShape, body);
  if (wrong) return wrong;
  return kitchenWrite(asker, asked, async (tx, { item }) => {
    if (!item) throw new Error('what is renamed is there');
    const name = soundName(asked.name);
    const there = (await knownItems(tx)).get(nameKey(name));
    if (there && there.id !== item.id) throw wrongName('name-taken', name, { kind: there.kind });
    const waiting = await refusedLinesOf(tx, item.name);
    if (waiting > 0) throw notKept('wrong', linesWaiting(item.name, waiting));
    return {
      day: null,
      makesKnown: item.kind === 'ingredient' ? 'ingredients' : 'recipes',
      async save() {
        await renameKnown(tx, item.id, name);
        return { id: item.id, name };
      },
    };
  });
}
