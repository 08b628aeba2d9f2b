import { inVenue, type VenueTx } from '../../db/in-venue';
import { cameWithFile, changesAfter, changesOfWrite, itemsChanged, type RecordedChange } from '../../db/item-record';
import { itemUses } from '../../db/item-uses';
import { kitchenDay } from '../../db/kitchen-day';
import { turnBackLines } from '../../db/lines-left-out';
import { nameInTheWay, putBack, standsAsBefore } from '../../db/undo-write';
import { dayTouched } from '../../db/version-days';
import { changedSince, nameTaken, noSuchSave, savedByFile, stillUsed } from '../../format/words/kitchen';
import type { Asker } from '../../session/asker';
import { undoShape } from './edit-shapes';
import { type Kept, notKept } from './kept';
import { throughKitchenDoor } from './kitchen-door';
import { costedOn, result } from './kitchen-write';
import { askedFor } from './read-edit';

/**
 * Undoes one save of the kitchen: everything that it touched is again as it found it. Refused where the item was changed since and not
 * put back. It is a save itself, recorded, and can be undone.
 */
export async function undoSave(asker: Asker, body: unknown): Promise<Kept> {
  const { asked, wrong } = askedFor(undoShape, body);
  if (wrong) return wrong;
  return throughKitchenDoor(asker, asked.venue, (db, who) =>
    inVenue(db, who, 'write', async (tx) => {
      const { item, name, changes } = await undoable(tx, asked.write);
      const day = asked.date ?? (await dayTouched(tx, item, changes)) ?? (await kitchenDay(tx));
      const before = await costedOn(tx, day);
      await putBack(tx, changes);
      await turnBackLines(tx, changes[0]?.at ?? '');
      return result(tx, { id: item, name, day, before }, { dryRun: asked.dryRun, revision: asked.write });
    }),
  );
}

/** What a save changed, where it can be undone; throws NotKept with the reason where it cannot. */
async function undoable(
  tx: VenueTx,
  write: number,
): Promise<{ readonly item: number; readonly name: string; readonly changes: readonly RecordedChange[] }> {
  const changes = await changesOfWrite(tx, write);
  const last = changes.at(-1);
  if (!last) throw notKept('no-undo', noSuchSave);
  const [item = null, ...more] = await itemsChanged(tx, changes);
  if (item === null || more.length > 0 || (await cameWithFile(tx, write))) throw notKept('no-undo', savedByFile);
  const name = await nameOf(tx, item, changes);
  if (!(await standsAsBefore(tx, await changesAfter(tx, item, last.id)))) throw notKept('no-undo', changedSince(name));
  const inTheWay = await nameInTheWay(tx, changes);
  if (inTheWay !== null) throw notKept('no-undo', nameTaken(inTheWay));
  const isMade = changes.some(({ thing, before }) => thing === 'item' && before === null);
  const uses = isMade ? await itemUses(tx, item) : [];
  if (uses.length > 0) throw notKept('in-use', stillUsed(name, uses), { uses });
  return { item, name, changes };
}

async function nameOf(tx: VenueTx, item: number, changes: readonly RecordedChange[]): Promise<string> {
  const there = await tx.prisma.item.findFirst({ where: { venueId: tx.venue, id: item }, select: { name: true } });
  const gone = changes.find(({ thing, before }) => thing === 'item' && before !== null)?.before?.name;
  return there?.name ?? String(gone ?? '');
}
