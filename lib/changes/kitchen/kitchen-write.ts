import { addDays, type Day } from '../../core/days';
import { nameKey } from '../../core/name-key';
import type { Database } from '../../db/database';
import { inVenue, type VenueTx } from '../../db/in-venue';
import { itemRevision, thisWrite } from '../../db/item-record';
import { kitchenDay } from '../../db/kitchen-day';
import { loadFacts } from '../../db/load-facts';
import { loadVenue } from '../../db/load-venue';
import { type KnownItem, knownItems } from '../../db/save-items';
import { type VenueBooks, venueBooks } from '../../db/save-venue-settings';
import { hasDecimalComma } from '../../format/decimal-comma';
import { type CostedPeriod, costPeriod } from '../../model/costed-period';
import type { ItemId } from '../../model/facts';
import { kitchenChange } from '../../reports/kitchen-change';
import type { Asker } from '../../session/asker';
import type { KeyedKind } from '../keyed-kinds';
import { unlockWaiting } from '../unlock-waiting';
import { conflictOf, goneOrNever } from './conflict';
import { writtenEffects } from './effects';
import { type Kept, NotKept } from './kept';
import { throughKitchenDoor } from './kitchen-door';

/** What every edit carries. */
export interface Edit {
  /** Name or number. */
  readonly venue: string;
  /** Name or number of the item that is edited; null where it is new. */
  readonly item: string | null;
  /** The revision of the item that the editor read; null: there was none. */
  readonly revision: number | null;
  /** The day on which its effects are worked out, ISO text; null: the day from which it holds, else the kitchen's. */
  readonly date: Day | null;
  /** Says what it would do, and keeps nothing. */
  readonly dryRun: boolean;
}

/** What an edit finds when its turn comes. */
export interface Found {
  readonly item: KnownItem | null;
  readonly books: VenueBooks;
  readonly style: { readonly decimalComma: boolean };
}

/** An edit that was looked at and can be kept. */
export interface Prepared {
  /** From which day it holds; null: from the beginning, or on every day. */
  readonly day: Day | null;
  /** Keeps it and gives the number and name of its item; throws NotKept where it cannot. */
  readonly save: () => Promise<{ readonly id: number; readonly name: string }>;
  /** The kind of file that would have brought the same: rows that wait for it are tried again. */
  readonly makesKnown?: KeyedKind;
}

/**
 * The one way in which the kitchen is changed: may the asker? -> one transaction in the venue, alone -> was the item changed since it was
 * read? -> look, cost, save, cost again. The answer says what the edit does on the day; a dry run then keeps nothing.
 */
export async function kitchenWrite(
  asker: Asker,
  edit: Edit,
  prepare: (tx: VenueTx, found: Found) => Promise<Prepared> | Prepared,
): Promise<Kept> {
  return throughKitchenDoor(asker, edit.venue, async (db, who) => {
    let makesKnown: KeyedKind | undefined;
    const kept = await inVenue(db, who, 'write', async (tx) => {
      const found = await findItem(tx, edit);
      const prepared = await prepare(tx, found);
      makesKnown = prepared.makesKnown;
      return save(tx, edit, prepared);
    });
    if (!kept.ok || kept.write === null || makesKnown === undefined) return kept;
    return { ...kept, unlocked: await tryWaitingRows(db, who, makesKnown) };
  });
}

/** In a transaction of its own: undoing the edit must not take away what a file brought. */
async function tryWaitingRows(
  db: Database,
  who: Parameters<typeof inVenue>[1],
  makesKnown: KeyedKind,
): Promise<number> {
  return inVenue(db, who, 'write', async (tx) => {
    const { unlocked } = await unlockWaiting(tx, makesKnown, (await venueBooks(tx)).closedThrough);
    if (unlocked === 0) tx.nothingChanged();
    return unlocked;
  });
}

async function findItem(tx: VenueTx, edit: Edit): Promise<Found> {
  const books = await venueBooks(tx);
  const { locale } = await loadVenue(tx);
  const style = { decimalComma: hasDecimalComma(locale) };
  if (edit.item === null) return { item: null, books, style };
  const items = await knownItems(tx);
  const named = edit.item;
  const item = items.get(nameKey(named)) ?? [...items.values()].find(({ id }) => String(id) === named);
  if (!item) throw await goneOrNever(tx, named, edit.revision, edit);
  const conflict = await conflictOf(tx, item, edit.revision, edit);
  if (conflict) throw conflict;
  return { item, books, style };
}

async function save(tx: VenueTx, edit: Edit, prepared: Prepared): Promise<Kept> {
  const day = edit.date ?? prepared.day ?? (await kitchenDay(tx));
  const before = await costedOn(tx, day);
  const { id, name } = await prepared.save();
  return result(tx, { id, name, day, before }, edit);
}

/** Everything of the venue, costed on one day. */
export async function costedOn(tx: VenueTx, day: Day): Promise<CostedPeriod> {
  const range = { from: day, to: addDays(day, 1) };
  return costPeriod(await loadFacts(tx, range), range, 'everything');
}

/** What a write came to, worked out inside its transaction; a dry run ends it there. */
export async function result(
  tx: VenueTx,
  {
    id,
    name,
    day,
    before,
  }: { readonly id: number; readonly name: string; readonly day: Day; readonly before: CostedPeriod },
  { dryRun, revision }: Pick<Edit, 'dryRun' | 'revision'>,
): Promise<Kept> {
  const write = await thisWrite(tx);
  const after = write === null ? before : await costedOn(tx, day);
  if (write === null) tx.nothingChanged();
  const done: Kept = {
    ...{ ok: true, id, item: name, unlocked: 0 },
    write: dryRun ? null : write,
    revision: dryRun ? (revision ?? 0) : await itemRevision(tx, id),
    effects: writtenEffects(kitchenChange(before, after, day, id as ItemId)),
  };
  if (dryRun) throw new NotKept(done);
  return done;
}
