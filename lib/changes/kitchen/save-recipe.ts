import { dayText } from '../../core/days';
import type { VenueTx } from '../../db/in-venue';
import { dismissLines } from '../../db/lines-left-out';
import { recipeLineKey } from '../../db/load-recipes';
import { itemId, knownItems } from '../../db/save-items';
import { saveRecipeLines } from '../../db/save-recipe-lines';
import { saveRecipes } from '../../db/save-recipes';
import type { VenueBooks } from '../../db/save-venue-settings';
import { dayInForce } from '../../db/version-days';
import { ROW_KINDS } from '../../intake/row-kinds';
import type { Cells } from '../../intake/rows/row-kind';
import type { Asker } from '../../session/asker';
import { recipeEditShape } from './edit-shapes';
import type { Kept } from './kept';
import { kitchenWrite, type Prepared } from './kitchen-write';
import { newName, wrongName } from './named-item';
import { allSaved, askedFor, placed, readCells } from './read-edit';

/** Saves a version of a component, dish, set menu or extra from a day on with all its lines, in place of the version of the same day. */
export async function saveRecipe(asker: Asker, body: unknown): Promise<Kept> {
  const { asked, wrong } = askedFor(recipeEditShape, body);
  if (wrong) return wrong;
  return kitchenWrite(asker, asked, async (tx, { item, books, style }) => {
    const name = item?.name ?? (await newName(tx, asked.name, (kind) => kind !== 'ingredient', asked));
    if (item?.kind === 'ingredient') throw wrongName('name-taken', name, { kind: item.kind });
    const prepared = preparedRecipe(tx, { books, style }, name, asked);
    return { ...prepared, day: await dayInForce(tx, 'recipe_version', item?.id ?? null, prepared.day) };
  });
}

/** A version of a recipe with its lines, read and ready to be saved. */
export function preparedRecipe(
  tx: VenueTx,
  { books, style }: { readonly books: VenueBooks; readonly style: { readonly decimalComma: boolean } },
  name: string,
  written: { readonly version: Cells; readonly lines: readonly Cells[] },
): Prepared {
  const { closedThrough } = books;
  const cells = { version: [{ at: 'version', cells: written.version }], lines: placed('lines', written.lines) };
  const [version] = readCells(ROW_KINDS.recipes, style, { recipe: name }, cells.version);
  if (!version) throw new Error('one version was to be read');
  const from = version.validFrom === null ? '' : dayText(version.validFrom);
  const lines = readCells(ROW_KINDS.recipe_lines, style, { recipe: name, valid_from: from }, cells.lines);
  return {
    day: version.validFrom,
    makesKnown: 'recipes',
    async save() {
      allSaved((await saveRecipes(tx, [{ line: 1, row: version }], closedThrough)).outcomes, cells.version);
      const stated = lines.map((row, index) => ({ line: index + 1, position: index + 1, row }));
      const saved = await saveRecipeLines(tx, stated, closedThrough, new Set([recipeLineKey(name, from)]));
      allSaved(saved.outcomes, cells.lines);
      await dismissLines(tx, name, from);
      return { id: itemId(await knownItems(tx), name), name };
    },
  };
}
