import type { Day } from '../core/days';
import { grouped } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { VenueTx } from '../db/in-venue';
import { isFault } from '../db/plan-keyed';
import { countUnlocked } from '../db/save-load';
import { collectUnlocked, type ReadSale, saveUnlocked, type UnlockedSale } from '../db/save-sales-unlocked';
import { settleWaiting, type WaitingRow, waitingForOthers } from '../db/save-waiting';
import type { FileKind } from '../intake/file-kinds';
import { rowReader } from '../intake/read-rows';
import { ROW_KINDS } from '../intake/row-kinds';
import type { RowFault } from '../model/refusal';
import { KEYED_KINDS, type KeyedKind } from './keyed-kinds';

/** Kinds that make things known for which rows of other kinds may wait. */
const MAKES_KNOWN: readonly FileKind[] = ['ingredients', 'offers', 'recipes', 'menu', 'trials'];

/** Kinds whose rows may wait, in an order in which what one unlocks comes before what may wait for it. */
const MAY_WAIT: readonly KeyedKind[] = [
  'measures',
  'parts',
  'yields',
  'offers',
  'offer_prices',
  'recipe_lines',
  'purchases',
  'counts',
  'moves',
  'trials',
  'trial_lines',
];

/** How many rows were taken that had waited, and how many that had stood in for them were taken out since what they wait for is whole now. */
export interface Unlocked {
  readonly unlocked: number;
  readonly unlockedWithdrawn: number;
}

export const NOTHING_UNLOCKED: Unlocked = { unlocked: 0, unlockedWithdrawn: 0 };

/**
 * Tries the rows again that wait for what a file of this kind may have brought, each as if its own file came now. It withdraws nothing but
 * what was carried over from the file before as long as they waited. They count as taken in the load that brought them.
 */
export async function unlockWaiting(tx: VenueTx, kind: KeyedKind, closedThrough: Day | null): Promise<Unlocked> {
  if (!MAKES_KNOWN.includes(kind)) return NOTHING_UNLOCKED;
  const byLoad = new Map<number, number>();
  let unlockedWithdrawn = 0;
  for (const waiting of MAY_WAIT) {
    for (const [load, rows] of grouped(await waitingForOthers(tx, waiting), (row) => row.load)) {
      const { taken, withdrawn } = await tryAgain(tx, waiting, load, rows, closedThrough);
      unlockedWithdrawn += withdrawn;
      byLoad.set(load, (byLoad.get(load) ?? 0) + taken);
    }
  }
  if (await collectUnlocked(tx, closedThrough, readSales)) {
    const saved = await saveUnlocked(tx);
    for (const [load, rows] of saved.taken) byLoad.set(load, (byLoad.get(load) ?? 0) + rows);
    unlockedWithdrawn += saved.withdrawn;
  }
  await countUnlocked(tx, new Map([...byLoad].filter(([, rows]) => rows > 0)));
  return { unlocked: [...byLoad.values()].reduce((sum, rows) => sum + rows, 0), unlockedWithdrawn };
}

async function tryAgain(
  tx: VenueTx,
  kind: KeyedKind,
  load: number,
  rows: readonly WaitingRow[],
  closedThrough: Day | null,
): Promise<{ readonly taken: number; readonly withdrawn: number }> {
  const again = rows.map((row) => ({ ...row, day: null, position: Number(row.fault.facts.position ?? 0) }));
  const saving = { load, source: rows[0]?.source ?? '', closedThrough, speaksFor: null };
  const { outcomes, withdrawn } = await KEYED_KINDS[kind].again(again).save(tx, saving);
  const taken: WaitingRow[] = [];
  const refused: { row: WaitingRow; fault: RowFault }[] = [];
  for (const [place, row] of rows.entries()) {
    const outcome = outcomes[place] ?? 'unchanged';
    if (!isFault(outcome)) taken.push(row);
    else refused.push({ row, fault: { ...outcome, facts: { ...outcome.facts, ...positionOf(row) } } });
  }
  await settleWaiting(tx, taken, refused);
  return { taken: taken.length, withdrawn };
}

function positionOf({ fault }: WaitingRow): { position?: number } {
  return fault.facts.position === undefined ? {} : { position: Number(fault.facts.position) };
}

// The day of a waiting sale was settled when its file was read.
const readSale = rowReader(ROW_KINDS.sales, { style: { decimalComma: true }, clock: { timeZone: 'UTC', dayEnds: 0 } });

function readSales(rows: readonly UnlockedSale[]): readonly ReadSale[] {
  return rows.flatMap(({ id, raw }) => {
    const { row } = readSale(raw);
    return row === null ? [] : [{ ...row, id, itemKey: nameKey(row.item) }];
  });
}
