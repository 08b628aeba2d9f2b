import { addDays, dayText } from '../../core/days';
import { kitchenDay } from '../../db/kitchen-day';
import { writtenItem } from '../../db/written-item';
import { noSuchVersion } from '../../format/words/kitchen';
import type { Cells } from '../../intake/rows/row-kind';
import type { Asker } from '../../session/asker';
import { duplicateShape } from './edit-shapes';
import { type Kept, notKept } from './kept';
import { kitchenWrite } from './kitchen-write';
import { newName, wrongName } from './named-item';
import { askedFor } from './read-edit';
import { preparedRecipe } from './save-recipe';

/** Makes a new recipe of the version of another that is in force on a day, with all its lines. */
export async function duplicateRecipe(asker: Asker, body: unknown): Promise<Kept> {
  const { asked, wrong } = askedFor(duplicateShape, body);
  if (wrong) return wrong;
  return kitchenWrite(asker, asked, async (tx, { item, books }) => {
    if (!item) throw new Error('what is copied is there');
    if (item.kind === 'ingredient') throw wrongName('name-taken', item.name, { kind: item.kind });
    const name = await newName(tx, asked.name, () => false, asked);
    const { versions } = await writtenItem(tx, item);
    const on = dayText(asked.of ?? (await kitchenDay(tx)));
    const version = versions.findLast(({ validFrom }) => validFrom === null || validFrom <= on);
    if (!version)
      throw notKept(
        'wrong',
        noSuchVersion(
          item.name,
          on,
          versions.map((each) => each.validFrom ?? ''),
        ),
      );
    const open = books.closedThrough === null ? null : addDays(books.closedThrough, 1);
    const from = asked.validFrom ?? open;
    const cells = { ...version.cells, valid_from: from === null ? '' : dayText(from) };
    const lines = version.lines.map(filled);
    // what is stored is written with decimal points, whatever the house writes
    return preparedRecipe(tx, { books, style: { decimalComma: false } }, name, { version: filled(cells), lines });
  });
}

function filled(cells: Readonly<Record<string, string | null>>): Cells {
  return Object.fromEntries(Object.entries(cells).map(([column, cell]) => [column, cell ?? '']));
}
