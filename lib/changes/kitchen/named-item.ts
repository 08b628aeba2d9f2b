import { nameKey } from '../../core/name-key';
import type { VenueTx } from '../../db/in-venue';
import { knownItems } from '../../db/save-items';
import { notKept as notKeptWords } from '../../format/words/kitchen';
import { kitchenRefusalText } from '../../format/words/kitchen-refusals';
import { CellFault, text } from '../../intake/cells';
import type { ItemKind } from '../../model/facts';
import type { RowRule } from '../../model/refusal';
import { conflictOf } from './conflict';
import { notKept } from './kept';

/** A name as it can be given to something; throws NotKept where it is blank or too long. */
export function soundName(written: string | null): string {
  const name = (written ?? '').trim();
  const read = name === '' ? new CellFault('blank') : text()(name);
  if (!(read instanceof CellFault)) return read;
  throw wrongName(read.rule, name, read.facts);
}

/**
 * The name for something new. Throws NotKept where it stands for something else already, or for the very thing, which somebody may have
 * written down meanwhile; what only the menu knows may get its recipe.
 */
export async function newName(
  tx: VenueTx,
  written: string | null,
  mayBe: (kind: ItemKind) => boolean,
  yours: unknown,
): Promise<string> {
  const name = soundName(written);
  const there = (await knownItems(tx)).get(nameKey(name));
  if (!there) return name;
  if (!mayBe(there.kind)) throw wrongName('name-taken', name, { kind: there.kind });
  const stated = await tx.prisma.item.findFirst({
    where: {
      venueId: tx.venue,
      id: there.id,
      OR: [{ recipeVersions: { some: {} } }, { ingredientVersions: { some: {} } }],
    },
    select: { id: true },
  });
  const conflict = stated && (await conflictOf(tx, there, null, yours));
  if (conflict) throw conflict;
  return there.name;
}

export function wrongName(rule: RowRule, value: string, facts = {}) {
  const text = kitchenRefusalText({ rule, column: 'name', value, facts });
  return notKept('wrong', notKeptWords, { fields: [{ name: 'name', value, text }] });
}
