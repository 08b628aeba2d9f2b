import { dayText } from '../../core/days';
import { takeOutVersion } from '../../db/take-out';
import { dayInForce, versionStarts } from '../../db/version-days';
import { lastVersion, noSuchVersion } from '../../format/words/kitchen';
import type { Asker } from '../../session/asker';
import { versionShape } from './edit-shapes';
import { type Kept, notKept } from './kept';
import { kitchenWrite } from './kitchen-write';
import { askedFor } from './read-edit';

/** Takes a version of an ingredient or a recipe away, so that the one before it holds on; the only one stays. */
export async function takeVersion(asker: Asker, body: unknown): Promise<Kept> {
  const { asked, wrong } = askedFor(versionShape, body);
  if (wrong) return wrong;
  return kitchenWrite(asker, asked, async (tx, { item }) => {
    if (!item) throw new Error('what loses a version is there');
    const table = item.kind === 'ingredient' ? 'ingredient_version' : 'recipe_version';
    const starts = await versionStarts(tx, table, item.id);
    const from = asked.validFrom === null ? null : dayText(asked.validFrom);
    if (!starts.includes(from ?? '')) throw notKept('wrong', noSuchVersion(item.name, from ?? '', starts));
    if (starts.length === 1) throw notKept('wrong', lastVersion(item.name));
    return {
      day: await dayInForce(tx, table, item.id, asked.validFrom),
      async save() {
        await takeOutVersion(tx, table, item.id, from);
        return { id: item.id, name: item.name };
      },
    };
  });
}
