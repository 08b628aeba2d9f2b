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

/**
 * Tries the rows again that wait for what a file of this kind may have brought, each as if its own file came now but withdrawing nothing.
 * Answers how many were taken; they count as taken in the load that brought them.
 */
export async function unlockWaiting(tx: VenueTx, kind: KeyedKind, closedThrough: Day | null): Promise<number> {
  if (!MAKES_KNOWN.includes(kind)) return 0;
  const byLoad = new Map<number, number>();
  for (const waiting of MAY_WAIT) {
    for (const [load, rows] of grouped(await waitingForOthers(tx, waiting), (row) => row.load)) {
      const taken = await tryAgain(tx, waiting, load, rows, closedThrough);
      byLoad.set(load, (byLoad.get(load) ?? 0) + taken);
    }
  }
  if (await collectUnlocked(tx, closedThrough, readSales)) {
    for (const [load, rows] of await saveUnlocked(tx)) byLoad.set(load, (byLoad.get(load) ?? 0) + rows);
  }
  await countUnlocked(tx, new Map([...byLoad].filter(([, rows]) => rows > 0)));
  return [...byLoad.values()].reduce((sum, rows) => sum + rows, 0);
}

async function tryAgain(
  tx: VenueTx,
  kind: KeyedKind,
  load: number,
  rows: readonly WaitingRow[],
  closedThrough: Day | null,
): Promise<number> {
  const again = rows.map((row) => ({ ...row, day: null, position: Number(row.fault.facts.position ?? 0) }));
  const saving = { load, source: rows[0]?.source ?? '', closedThrough, speaksFor: null };
  const { outcomes } = await KEYED_KINDS[kind].again(again).save(tx, saving);
  const taken: WaitingRow[] = [];
  const refused: { row: WaitingRow; fault: RowFault }[] = [];
  for (const [place, row] of rows.entries()) {
    const outcome = outcomes[place] ?? 'unchanged';
    if (!isFault(outcome)) taken.push(row);
    else refused.push({ row, fault: { ...outcome, facts: { ...outcome.facts, ...positionOf(row) } } });
  }
  await settleWaiting(tx, taken, refused);
  return taken.length;
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
