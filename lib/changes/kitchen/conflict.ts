import { grouped } from '../../core/grouped';
import { nameKey } from '../../core/name-key';
import type { VenueTx } from '../../db/in-venue';
import { changesAfter, deletedItem, type RecordedChange } from '../../db/item-record';
import { loadVenue } from '../../db/load-venue';
import { type KnownItem, knownItems } from '../../db/save-items';
import { writtenItem } from '../../db/written-item';
import { momentName } from '../../format/periods';
import {
  alreadyThere,
  changedMeanwhile,
  deletedMeanwhile,
  goneFromKitchen,
  recordedText,
} from '../../format/words/kitchen';
import { type NotKept, notKept, type OthersWrite } from './kept';

/** Who changed an item after the revision that an editor read, when and what, with both states. Null where nobody did. */
export async function conflictOf(
  tx: VenueTx,
  item: KnownItem,
  revision: number | null,
  yours: unknown,
): Promise<NotKept | null> {
  const changes = await changesAfter(tx, item.id, revision ?? 0);
  if (changes.length === 0 && revision !== null) return null;
  const theirs = await writtenItem(tx, item);
  const writes = await othersWrites(tx, changes);
  const last = writes.at(-1);
  const words =
    revision === null || !last
      ? alreadyThere(item.name)
      : changedMeanwhile(item.name, last.person, momentName(last.at, await loadVenue(tx)));
  return notKept('conflict', words, { conflict: { writes, theirs, yours } });
}

/** Why there is no item of a name or number: it was deleted meanwhile, by whom and when; or there never was one. */
export async function goneOrNever(
  tx: VenueTx,
  named: string,
  revision: number | null,
  yours: unknown,
): Promise<NotKept> {
  const number = /^\d{1,9}$/.test(named) ? Number(named) : null;
  const gone = revision === null ? null : await deletedItem(tx, nameKey(named), number);
  const writes = gone === null ? [] : await othersWrites(tx, await changesAfter(tx, gone, revision ?? 0));
  const last = writes.at(-1);
  if (!last) return notKept('no-item', goneFromKitchen(named));
  return notKept('conflict', deletedMeanwhile(named, last.person, momentName(last.at, await loadVenue(tx))), {
    conflict: { writes, theirs: null, yours },
  });
}

async function othersWrites(tx: VenueTx, changes: readonly RecordedChange[]): Promise<readonly OthersWrite[]> {
  const names = new Map([...(await knownItems(tx)).values()].map(({ id, name }) => [id, name]));
  return [...grouped(changes, ({ at, person }) => `${at} ${person}`).values()].flatMap((write): OthersWrite[] => {
    const last = write.at(-1);
    if (!last) return [];
    const did = write.map((change) => recordedText(change.thing, didOf(change), aboutOf(change, names)));
    return [{ person: last.person, at: last.at, write: last.id, did: [...new Set(did)] }];
  });
}

function didOf({ before, after }: RecordedChange): 'added' | 'changed' | 'taken-away' {
  if (before === null) return 'added';
  return after === null ? 'taken-away' : 'changed';
}

/** The thing that a line asks for, the day from which a version holds, or the name. */
function aboutOf({ thing, before, after }: RecordedChange, names: ReadonlyMap<number, string>): string | null {
  const row = after ?? before ?? {};
  if (thing === 'recipe_line') return names.get(Number(row.item_id)) ?? null;
  const about = thing.endsWith('_version') ? row.valid_from : row.name;
  return typeof about === 'string' ? about : null;
}
