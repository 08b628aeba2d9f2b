import { type Day, dayText } from '../core/days';
import { nameKey } from '../core/name-key';
import type { VenueTx } from '../db/in-venue';
import { refusedLinesOf } from '../db/lines-left-out';
import { loadClosedThrough } from '../db/load-venue';
import { type KnownItem, knownItems } from '../db/save-items';
import { type RecipeUse, whereUsed } from '../db/where-used';
import { type WrittenItem, writtenItem } from '../db/written-item';
import { noSuchItem } from '../format/words/problems';
import { alike } from './alike';
import type { RecipeAnswer } from './kitchen-shape';
import { type Answered, answered, refused } from './problem';

/** One item as it is written, with what an editor has to know beside it. */
export interface ReadItem {
  readonly written: WrittenItem;
  readonly uses: readonly RecipeUse[];
  readonly refusedLines: number;
  readonly closedThrough: Day | null;
}

/** The item of a name or number among the bought or the made ones; refused with the names that are like it. */
export async function readItem(
  tx: VenueTx,
  venue: string,
  named: string,
  isBought: boolean,
): Promise<Answered<ReadItem>> {
  const items = [...(await knownItems(tx))].filter(([, { kind }]) => (kind === 'ingredient') === isBought);
  const item: KnownItem | undefined =
    items.find(([key]) => key === nameKey(named))?.[1] ?? items.find(([, { id }]) => String(id) === named)?.[1];
  if (!item) {
    const names = items.map(([, { name }]) => name);
    return refused(404, noSuchItem(named, venue, alike(named, names)));
  }
  return answered({
    written: await writtenItem(tx, item),
    uses: await whereUsed(tx, item.id),
    refusedLines: await refusedLinesOf(tx, item.name),
    closedThrough: await loadClosedThrough(tx),
  });
}

/** What every answer about one item says of how it is written. */
export function writtenParts(
  { written, uses, closedThrough }: ReadItem,
  day: Day,
): Pick<RecipeAnswer, 'id' | 'item' | 'kind' | 'revision' | 'closedThrough' | 'versions' | 'whereUsed'> {
  const through = closedThrough === null ? null : dayText(closedThrough);
  const on = dayText(day);
  const inForce = written.versions.findLast(({ validFrom }) => validFrom === null || validFrom <= on);
  return {
    ...{ id: written.id, item: written.item, kind: written.kind, revision: written.revision, closedThrough: through },
    versions: written.versions.map((version) => ({
      validFrom: version.validFrom,
      inForce: version === inForce,
      closed: through !== null && (version.validFrom === null || version.validFrom <= through),
      cells: { ...version.cells },
      lines: version.lines.map((line) => ({ ...line })),
    })),
    whereUsed: uses.map((use) => ({ ...use, versions: [...use.versions] })),
  };
}
