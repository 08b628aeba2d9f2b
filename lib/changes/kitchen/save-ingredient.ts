import { nameKey } from '../../core/name-key';
import { saveIngredients } from '../../db/save-ingredients';
import { itemId, knownItems } from '../../db/save-items';
import { saveMeasures } from '../../db/save-measures';
import { saveParts } from '../../db/save-parts';
import { saveYields } from '../../db/save-yields';
import { takeOutOthers } from '../../db/take-out';
import { dayInForce } from '../../db/version-days';
import { ROW_KINDS } from '../../intake/row-kinds';
import type { Asker } from '../../session/asker';
import { ingredientEditShape } from './edit-shapes';
import type { Kept } from './kept';
import { kitchenWrite } from './kitchen-write';
import { newName, wrongName } from './named-item';
import { allSaved, askedFor, placed, readCells } from './read-edit';

/**
 * Saves a version of an ingredient from a day on, with its measures, parts and yields by use: the version replaces the one of the same day,
 * the three lists are the whole truth. Read and saved as rows of the data folder are.
 */
export async function saveIngredient(asker: Asker, body: unknown): Promise<Kept> {
  const { asked, wrong } = askedFor(ingredientEditShape, body);
  if (wrong) return wrong;
  return kitchenWrite(asker, asked, async (tx, { item, books, style }) => {
    const isBought = (kind: string): boolean => kind === 'ingredient';
    const name =
      item?.name ?? (await newName(tx, asked.name, (kind) => kind === 'ingredient' || kind === 'dish', asked));
    if (item && !isBought(item.kind)) throw wrongName('unknown-ingredient', name, { kind: item.kind });
    const own = { ingredient: name };
    const cells = {
      version: [{ at: 'version', cells: asked.version }],
      measures: placed('measures', asked.measures),
      parts: placed('parts', asked.parts),
      yields: placed('yields', asked.yields),
    };
    const stated = <Row>(rows: readonly Row[]) => rows.map((row, index) => ({ line: index + 1, row }));
    const [version] = readCells(ROW_KINDS.ingredients, style, own, cells.version);
    const measures = readCells(ROW_KINDS.measures, style, own, cells.measures);
    const parts = readCells(ROW_KINDS.parts, style, own, cells.parts);
    const yields = readCells(ROW_KINDS.yields, style, own, cells.yields);
    if (!version) throw new Error('one version was to be read');
    return {
      day: await dayInForce(tx, 'ingredient_version', item?.id ?? null, version.validFrom),
      makesKnown: 'ingredients',
      async save() {
        const saved = await saveIngredients(tx, stated([version]), books.closedThrough);
        allSaved(saved.outcomes, cells.version);
        allSaved((await saveMeasures(tx, stated(measures))).outcomes, cells.measures);
        allSaved((await saveParts(tx, stated(parts))).outcomes, cells.parts);
        allSaved((await saveYields(tx, stated(yields))).outcomes, cells.yields);
        const id = itemId(await knownItems(tx), name);
        await takeOutOthers(
          tx,
          'named_measure',
          id,
          measures.map((row) => nameKey(row.name)),
        );
        await takeOutOthers(
          tx,
          'part',
          id,
          parts.map((row) => nameKey(row.part)),
        );
        await takeOutOthers(
          tx,
          'yield_use',
          id,
          yields.map((row) => nameKey(row.use)),
        );
        return { id, name };
      },
    };
  });
}
