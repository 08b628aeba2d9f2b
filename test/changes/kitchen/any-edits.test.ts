import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Kept } from '@/lib/changes/kitchen/kept';
import { saveRecipe } from '@/lib/changes/kitchen/save-recipe';
import { undoSave } from '@/lib/changes/kitchen/undo-save';
import { closeDatabase } from '@/lib/db/database';
import { freshDatabase } from '../../fresh-database';
import { everythingStored } from '../everything-stored';
import { ADA, keptOf, quay, refusalOf, revisionOf } from './quay';

const { db, url } = await freshDatabase();
beforeAll(() => {
  process.env.DATABASE_URL = url;
});
afterAll(closeDatabase);

const RECIPES = ['Praline', 'Tart'] as const;
const DAYS = ['2026-01-01', '2026-11-01'] as const;
const KINDS = { Praline: 'component', Tart: 'dish' } as const;

/** What a version of a recipe is made of: grams of sugar and of cream, 0 for none. */
type Lines = readonly [sugar: number, cream: number];
type Step =
  | {
      readonly do: 'save';
      readonly recipe: (typeof RECIPES)[number];
      readonly day: (typeof DAYS)[number];
      readonly lines: Lines;
    }
  | { readonly do: 'undo'; readonly back: number };

const step: fc.Arbitrary<Step> = fc.oneof(
  fc.record({
    do: fc.constant('save' as const),
    recipe: fc.constantFrom(...RECIPES),
    day: fc.constantFrom(...DAYS),
    lines: fc.tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 3 })),
  }),
  fc.record({ do: fc.constant('undo' as const), back: fc.integer({ min: 0, max: 4 }) }),
);

/** All versions of one recipe by their days; what a save of them found and left. */
type Book = Readonly<Record<string, Lines>>;
interface Saved {
  readonly write: number;
  readonly recipe: string;
  readonly found: Book;
  readonly left: Book;
}

async function save(venue: string, recipe: (typeof RECIPES)[number], day: string, lines: Lines): Promise<Kept> {
  const [sugar, cream] = lines;
  return saveRecipe(ADA, {
    venue,
    item: recipe,
    revision: await revisionOf(db, venue, recipe),
    version: { kind: KINDS[recipe], valid_from: day },
    lines: [
      { item: 'Sugar', quantity: String(sugar), unit: 'g' },
      { item: 'Cream', quantity: String(cream), unit: 'g' },
    ].filter(({ quantity }) => quantity !== '0'),
  });
}

test('saveRecipe and undoSave in any order end with the facts that the saves still standing give by themselves', async () => {
  let made = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 4, maxLength: 8 }), async (steps) => {
      const venue = `House ${made++}`;
      await quay(db, venue);
      const books: Record<string, Book> = {};
      for (const recipe of RECIPES) {
        keptOf(await save(venue, recipe, DAYS[0], [1, 1]));
        books[recipe] = { [DAYS[0]]: [1, 1] };
      }
      const writes: Saved[] = [];
      const note = (kept: Extract<Kept, { ok: true }>, recipe: string, left: Book): void => {
        const found = books[recipe] ?? {};
        if (kept.write !== null) writes.push({ write: kept.write, recipe, found, left });
        books[recipe] = left;
      };
      for (const each of steps) {
        if (each.do === 'save') {
          const left = { ...books[each.recipe], [each.day]: each.lines };
          note(keptOf(await save(venue, each.recipe, each.day, each.lines)), each.recipe, left);
          continue;
        }
        const write = writes[writes.length - 1 - each.back];
        if (!write) continue;
        const result = await undoSave(ADA, { venue, write: write.write });
        const stands = JSON.stringify(books[write.recipe]) === JSON.stringify(write.left);
        // where it stands as the save left it, it is undone; else it was changed since
        if (stands) note(keptOf(result), write.recipe, write.found);
        else expect(refusalOf(result).title).toBe('It was changed since');
      }
      const replay = `Replay ${made++}`;
      await quay(db, replay);
      for (const recipe of RECIPES) {
        for (const [day, lines] of Object.entries(books[recipe] ?? {})) keptOf(await save(replay, recipe, day, lines));
      }
      const facts = ({
        recipes,
        lines,
        lineDetails,
        items,
        ingredients,
      }: Awaited<ReturnType<typeof everythingStored>>) => ({
        ...{ recipes, lines, lineDetails, items, ingredients },
      });
      expect(facts(await everythingStored(db, venue))).toEqual(facts(await everythingStored(db, replay)));
    }),
    { numRuns: process.env.SOAK ? 60 : 3 },
  );
});
