import { afterAll, beforeAll, expect, test } from 'vitest';
import { deleteItem } from '@/lib/changes/kitchen/delete-item';
import { duplicateRecipe } from '@/lib/changes/kitchen/duplicate-recipe';
import { renameItem } from '@/lib/changes/kitchen/rename-item';
import { saveIngredient } from '@/lib/changes/kitchen/save-ingredient';
import { saveRecipe } from '@/lib/changes/kitchen/save-recipe';
import { takeVersion } from '@/lib/changes/kitchen/take-version';
import { undoSave } from '@/lib/changes/kitchen/undo-save';
import { loadFolder } from '@/lib/changes/load-folder';
import { closeDatabase } from '@/lib/db/database';
import { inVenue } from '@/lib/db/in-venue';
import { changesOfWrite } from '@/lib/db/item-record';
import { freshDatabase } from '../../fresh-database';
import { everythingStored } from '../everything-stored';
import { file } from '../folders';
import { revision, venueId } from '../stored';
import { ADA, BEN, keptOf, quay, refusalOf, revisionOf, written } from './quay';

const { db, url } = await freshDatabase();
const OTHER = 'Next Door';
let made = 0;
let venue = '';

beforeAll(async () => {
  process.env.DATABASE_URL = url;
  await quay(db, OTHER);
});
afterAll(closeDatabase);

async function newQuay(): Promise<void> {
  venue = `Quay ${made++}`;
  await quay(db, venue);
}

const edit = async <More extends object>(item: string, more: More = {} as More) => ({
  venue,
  item,
  revision: await revisionOf(db, venue, item),
  ...more,
});

/** Half sugar, half hazelnuts, and half an hour of work a batch. */
const NUTTY = {
  version: {
    kind: 'component',
    valid_from: '2026-11-01',
    yield_quantity: '1000',
    yield_unit: 'g',
    hands_on_minutes: '30',
    grade: 'pastry',
  },
  lines: [
    { item: 'Sugar', quantity: '500', unit: 'g' },
    { item: 'Hazelnuts', quantity: '500', unit: 'g' },
  ],
};

async function close(day: string | null): Promise<void> {
  await inVenue(db, { venue: await venueId(db, venue), person: 'owner' }, 'write', (tx) =>
    tx.bulk.query('update venue set closed_through = $2 where id = $1', [tx.venue, day]),
  );
}

// Half sugar (0.50) and half hazelnuts (10.00) is 10.50 a kilogram, and 30 minutes at 18.00 an hour 9.00: a tart of 100 g takes
// 1.05 + 0.40 of cream and 0.90 of work, a cup of 50 g 0.525 and 0.45.
test('saveRecipe(asker, edit) with dryRun says what it does to all above it, and keeps nothing', async () => {
  await newQuay();
  const before = await everythingStored(db, venue);
  const at = await revision(db, venue);
  const kept = keptOf(await saveRecipe(ADA, await edit('Praline', { ...NUTTY, dryRun: true })));
  expect(kept.write).toBeNull();
  expect(kept.effects.date).toBe('2026-11-01');
  const costs = kept.effects.items.map(({ item, before: was, after: is }) => [
    item,
    was?.plateCost,
    is?.plateCost,
    was?.recipeLabour,
    is?.recipeLabour,
  ]);
  expect(costs).toEqual([
    ['Cup', '0.05', '0.525', '0.00', '0.45'],
    ['Praline', '1.00', '10.50', '0.00', '9.00'],
    ['Tart', '0.50', '1.45', '0.00', '0.90'],
  ]);
  expect(kept.effects.allergens.map(({ text }) => text)).toEqual(['Adds hazelnut to 2 dishes: Cup and Tart.']);
  expect(kept.effects.lines.map(({ item, before: was, after: is }) => [item, was?.quantity, is?.quantity])).toEqual([
    ['Sugar', 1000, 500],
    ['Hazelnuts', undefined, 500],
  ]);
  expect(await everythingStored(db, venue)).toEqual(before);
  expect(await revision(db, venue)).toBe(at);
});

test('saveRecipe(asker, edit) keeps what its dry run said, reads back as it was written, and leaves the other venue alone', async () => {
  await newQuay();
  const other = await everythingStored(db, OTHER);
  const at = await revision(db, venue);
  const asked = await edit('Praline', NUTTY);
  const dry = keptOf(await saveRecipe(ADA, { ...asked, dryRun: true }));
  const kept = keptOf(await saveRecipe(ADA, asked));
  expect(kept.effects).toEqual(dry.effects);
  expect(await revision(db, venue)).toBe((at ?? 0) + 1);
  const { versions, revision: now } = await written(db, venue, 'praline');
  expect(now).toBe(kept.revision);
  expect(versions.map(({ validFrom }) => validFrom)).toEqual(['2026-01-01', '2026-11-01']);
  expect(versions[1]).toMatchObject({ cells: { hands_on_minutes: '30', grade: 'pastry' }, lines: NUTTY.lines });
  expect(await everythingStored(db, OTHER)).toEqual(other);
  const again = keptOf(await saveRecipe(ADA, await edit('Praline', NUTTY)));
  expect([again.write, await revision(db, venue)]).toEqual([null, (at ?? 0) + 1]);
  const recorded = await inVenue(db, { venue: await venueId(db, venue), person: 'ada' }, 'read', (tx) =>
    changesOfWrite(tx, kept.revision),
  );
  expect(recorded.map(({ thing, person }) => [thing, person])).toEqual([
    ['recipe_version', 'ada'],
    ['recipe_line', 'ada'],
    ['recipe_line', 'ada'],
  ]);
});

test('saveIngredient(asker, edit) keeps version, measures, parts and yields as a whole', async () => {
  await newQuay();
  const egg = {
    version: {
      measure: 'each',
      usable_yield_pct: '87.5',
      contains: 'eggs',
      may_contain: 'none',
      product_group: 'Dairy',
    },
    measures: [{ name: 'tray', quantity: '30', unit: 'each' }],
    parts: [
      { part: 'yolk', output_quantity: '18', output_unit: 'g', cost_share_pct: '60' },
      { part: 'white', output_quantity: '34', output_unit: 'g', cost_share_pct: '40' },
    ],
    yields: [{ use: 'shelled', usable_yield_pct: '98' }],
  };
  keptOf(await saveIngredient(ADA, { venue, item: null, revision: null, name: ' Egg ', ...egg }));
  const first = await written(db, venue, 'egg');
  expect(first).toMatchObject({ item: 'Egg', kind: 'ingredient', measures: egg.measures, yields: egg.yields });
  expect(first.versions[0]?.cells).toMatchObject({ usable_yield_pct: '87.5', contains: 'eggs', may_contain: 'none' });
  expect(first.parts).toHaveLength(2);
  keptOf(await saveIngredient(BEN, await edit('Egg', { ...egg, measures: [], parts: egg.parts.slice(0, 1) })));
  const second = await written(db, venue, 'Egg');
  expect([second.measures.length, second.parts.length, second.yields.length]).toEqual([0, 1, 1]);
});

test('saveRecipe(asker, edit) refuses with every wrong field, and keeps nothing', async () => {
  await newQuay();
  const before = await everythingStored(db, venue);
  const lines = [
    { item: 'Sugar', quantity: '1,5', unit: 'g' },
    { item: 'Sugar', quantity: '0', unit: 'g' },
    { item: 'Sugar', quantity: '5', unit: '', colour: 'brown' },
  ];
  const unread = refusalOf(await saveRecipe(ADA, await edit('Praline', { ...NUTTY, lines })));
  expect(unread.fields.map(({ name, text }) => [name, text])).toEqual([
    [
      'lines.1.quantity',
      '“1,5” in quantity is no number. Write digits only, such as 12.50, without thousands marks and without a unit.',
    ],
    ['lines.2.quantity', '0 as quantity is not above zero. Write how much it is, or take the line out.'],
    ['lines.3.colour', 'There is no field “colour” here. Leave it out.'],
    ['lines.3.unit', 'The unit is blank. Fill it in.'],
  ]);
  const unknown = [{ item: 'Sand', quantity: '5', unit: 'g' }];
  const unsaved = refusalOf(await saveRecipe(ADA, await edit('Praline', { ...NUTTY, lines: unknown })));
  expect(unsaved.fields).toEqual([
    {
      name: 'lines.1.item',
      value: 'Sand',
      text: 'There is no “Sand” yet. Write it down as an ingredient or a component first, or correct the name.',
    },
  ]);
  const shape = refusalOf(await saveRecipe(ADA, { venue, item: 'Praline' }));
  expect([shape.why, shape.fields.map(({ name }) => name)]).toEqual(['wrong', ['revision', 'version', 'lines']]);
  expect(shape.fields[0]?.text).toContain('“revision” is missing');
  const date = refusalOf(await saveRecipe(ADA, { ...(await edit('Praline', NUTTY)), date: '2026-02-30' }));
  expect(date.fields).toMatchObject([
    { name: 'date', text: expect.stringContaining('is no day of a restaurant’s books') },
  ]);
  const nowhere = refusalOf(await saveRecipe(ADA, { ...(await edit('Praline', NUTTY)), venue: 'Atlantis' }));
  expect(nowhere.why).toBe('no-venue');
  expect(await everythingStored(db, venue)).toEqual(before);
});

test('saveRecipe(asker, edit) of what somebody else changed meanwhile keeps nothing and shows both', async () => {
  await newQuay();
  const [ada, ben] = [
    await edit('Praline', NUTTY),
    await edit('Praline', { ...NUTTY, lines: NUTTY.lines.slice(0, 1) }),
  ];
  const first = keptOf(await saveRecipe(ADA, ada));
  const before = await everythingStored(db, venue);
  const { why, conflict, detail } = refusalOf(await saveRecipe(BEN, ben));
  expect(why).toBe('conflict');
  expect(detail).toMatch(/^ada changed “Praline” on \d+ [A-Z][a-z]+ 2\d\d\d, \d\d:\d\d, after you opened it\./);
  expect(conflict?.writes).toMatchObject([{ person: 'ada', write: first.write }]);
  expect(conflict?.writes[0]?.did).toEqual([
    'added a version (2026-11-01)',
    'added a line (Sugar)',
    'added a line (Hazelnuts)',
  ]);
  expect(conflict?.theirs?.versions[1]?.lines).toMatchObject(NUTTY.lines);
  expect(conflict?.yours).toMatchObject({ lines: ben.lines });
  expect(await everythingStored(db, venue)).toEqual(before);
  keptOf(await saveRecipe(BEN, { ...ben, revision: conflict?.theirs?.revision }));

  const cup = await edit('Cup');
  keptOf(await renameItem(ADA, { ...cup, name: 'Coupe' }));
  expect(
    refusalOf(await renameItem(BEN, { ...cup, item: String((await written(db, venue, 'Coupe')).id), name: 'Bowl' }))
      .why,
  ).toBe('conflict');
});

test('saveRecipe(asker, edits) of two at once keeps one of them', async () => {
  await newQuay();
  const asked = await edit('Praline', NUTTY);
  const other = { ...asked, lines: NUTTY.lines.slice(1) };
  const results = await Promise.all([saveRecipe(ADA, asked), saveRecipe(BEN, other)]);
  expect(results.map((each) => (each.ok ? 'kept' : each.refusal.why)).sort()).toEqual(['conflict', 'kept']);
});

test('saveIngredient(asker, edit) of a new one that is there already is refused with what is there', async () => {
  await newQuay();
  const bare = { version: { measure: 'g' }, measures: [], parts: [], yields: [] };
  const there = refusalOf(await saveIngredient(ADA, { venue, item: null, revision: null, name: 'CREAM', ...bare }));
  expect([there.why, there.conflict?.theirs?.item]).toEqual(['conflict', 'Cream']);
  const taken = refusalOf(await saveIngredient(ADA, { venue, item: null, revision: null, name: 'Praline', ...bare }));
  expect(taken.fields[0]).toMatchObject({ name: 'name', value: 'Praline' });
  const blank = refusalOf(await saveIngredient(ADA, { venue, item: null, revision: null, name: ' ', ...bare }));
  expect(blank.fields).toEqual([{ name: 'name', value: '', text: 'The name is blank. Fill it in.' }]);
});

test('undoSave(asker, write) puts back what the save found; its own undo brings the save again', async () => {
  await newQuay();
  const before = await everythingStored(db, venue);
  const saved = keptOf(await saveRecipe(ADA, await edit('Praline', NUTTY)));
  const after = await everythingStored(db, venue);
  const dry = keptOf(await undoSave(BEN, { venue, write: saved.write, dryRun: true }));
  expect(dry.effects.allergens.map(({ text }) => text)).toEqual(['Takes hazelnut out of 2 dishes: Cup and Tart.']);
  expect(await everythingStored(db, venue)).toEqual(after);
  const undone = keptOf(await undoSave(BEN, { venue, write: saved.write }));
  expect(await everythingStored(db, venue)).toEqual(before);
  const redone = keptOf(await undoSave(BEN, { venue, write: undone.write }));
  expect(await everythingStored(db, venue)).toEqual(after);
  keptOf(await undoSave(BEN, { venue, write: redone.write }));
  expect(await everythingStored(db, venue)).toEqual(before);
});

// From the beginning up to the 1st of November: what an edit of it does is seen on the last day of October.
test('saveRecipe and undoSave look at a day on which the version is in force', async () => {
  await newQuay();
  keptOf(await saveRecipe(ADA, await edit('Praline', NUTTY)));
  const first = {
    version: { ...NUTTY.version, valid_from: '' },
    lines: [{ item: 'Sugar', quantity: '2', unit: 'kg' }],
  };
  const saved = keptOf(await saveRecipe(ADA, await edit('Praline', first)));
  expect(saved.effects.date).toBe('2025-12-31');
  const second = {
    ...first,
    version: { ...NUTTY.version, valid_from: '2026-01-01', hands_on_minutes: '0', grade: '' },
  };
  const doubled = keptOf(await saveRecipe(ADA, await edit('Praline', second)));
  expect(doubled.effects.items.map(({ item, after }) => [item, after?.plateCost])).toContainEqual(['Tart', '0.60']);
  const undone = keptOf(await undoSave(ADA, { venue, write: doubled.write, dryRun: true }));
  expect(undone.effects.date).toBe('2026-01-01');
  expect(undone.effects.items.map(({ item, after }) => [item, after?.plateCost])).toContainEqual(['Tart', '0.50']);
});

test('undoSave(asker, write) after a later change of the same item is refused until that is undone', async () => {
  await newQuay();
  const first = keptOf(await saveRecipe(ADA, await edit('Praline', NUTTY)));
  const between = await everythingStored(db, venue);
  const second = keptOf(await saveRecipe(BEN, await edit('Praline', { ...NUTTY, lines: NUTTY.lines.slice(0, 1) })));
  const { why, detail } = refusalOf(await undoSave(ADA, { venue, write: first.write }));
  expect([why, detail]).toEqual(['no-undo', expect.stringContaining('“Praline” was changed again after that save')]);
  keptOf(await undoSave(BEN, { venue, write: second.write }));
  expect(await everythingStored(db, venue)).toEqual(between);
  keptOf(await undoSave(ADA, { venue, write: first.write }));
  expect((await written(db, venue, 'Praline')).versions).toHaveLength(1);
});

test('undoSave(asker, write) of what is used since, of a file, or of nothing is refused', async () => {
  await newQuay();
  const lines = [{ item: 'Cream', quantity: '100', unit: 'g' }];
  const version = { kind: 'component', valid_from: '2026-01-01' };
  const made = keptOf(await saveRecipe(ADA, { venue, item: null, revision: null, name: 'Whip', version, lines }));
  keptOf(
    await saveRecipe(
      ADA,
      await edit('Cup', {
        version: { kind: 'dish', valid_from: '2026-01-01' },
        lines: [{ item: 'Whip', quantity: '20', unit: 'g' }],
      }),
    ),
  );
  const used = refusalOf(await undoSave(ADA, { venue, write: made.write }));
  expect([used.why, used.uses]).toEqual(['in-use', [{ kind: 'recipe', in: 'Cup', times: 1 }]]);
  await loadFolder(db, file('ingredients.csv', ['ingredient,measure', 'Salt,g']), { venue });
  const salt = await revisionOf(db, venue, 'Salt');
  expect(refusalOf(await undoSave(ADA, { venue, write: salt })).title).toBe('It came with a file');
  expect(refusalOf(await undoSave(ADA, { venue, write: 2_000_000_000 })).title).toBe('Nothing to undo');
  const elsewhere = await revisionOf(db, OTHER, 'Cream');
  expect(refusalOf(await undoSave(ADA, { venue, write: elsewhere })).title).toBe('Nothing to undo');
});

test('renameItem(asker, edit) keeps every use, and its undo is refused where the old name is taken', async () => {
  await newQuay();
  const renamed = keptOf(await renameItem(ADA, await edit('Praline', { name: 'Nut paste' })));
  expect((await written(db, venue, 'Tart')).versions[0]?.lines[0]).toMatchObject({
    item: 'Nut paste',
    quantity: '100',
  });
  expect(renamed.effects.items).toEqual([]);
  const taken = refusalOf(await renameItem(ADA, await edit('Cup', { name: 'nut  PASTE'.replace('  ', ' ') })));
  expect(taken.fields[0]?.name).toBe('name');
  const bare = { version: { measure: 'g' }, measures: [], parts: [], yields: [] };
  keptOf(await saveIngredient(ADA, { venue, item: null, revision: null, name: 'Praline', ...bare }));
  expect(refusalOf(await undoSave(ADA, { venue, write: renamed.write })).title).toBe('The name is taken');
});

test('duplicateRecipe(asker, edit) copies the version in force with its lines', async () => {
  await newQuay();
  keptOf(await saveRecipe(ADA, await edit('Praline', NUTTY)));
  keptOf(await duplicateRecipe(ADA, await edit('Praline', { name: 'Praline 2', of: '2026-11-05' })));
  const copy = await written(db, venue, 'Praline 2');
  expect(copy.versions).toMatchObject([
    { validFrom: null, cells: { kind: 'component', yield_quantity: '1000' }, lines: NUTTY.lines },
  ]);
  expect(refusalOf(await duplicateRecipe(ADA, await edit('Praline', { name: 'Tart' }))).fields[0]?.name).toBe('name');
  await close('2026-10-31');
  keptOf(await duplicateRecipe(ADA, await edit('Praline', { name: 'Praline 3' })));
  expect((await written(db, venue, 'Praline 3')).versions[0]?.validFrom).toBe('2026-11-01');
});

test('takeVersion(asker, edit) lets the one before hold on; the only one stays', async () => {
  await newQuay();
  keptOf(await saveRecipe(ADA, await edit('Praline', NUTTY)));
  const taken = keptOf(await takeVersion(ADA, await edit('Praline', { validFrom: '2026-11-01' })));
  expect(taken.effects.items.map(({ item, after }) => [item, after?.plateCost])).toEqual([
    ['Cup', '0.05'],
    ['Praline', '1.00'],
    ['Tart', '0.50'],
  ]);
  expect(refusalOf(await takeVersion(ADA, await edit('Praline', { validFrom: '2026-01-01' }))).title).toBe(
    'The only version',
  );
  expect(refusalOf(await takeVersion(ADA, await edit('Praline', { validFrom: null }))).detail).toBe(
    '“Praline” has no version from the beginning. There is one from 2026-01-01.',
  );
  keptOf(await undoSave(ADA, { venue, write: taken.write }));
  expect((await written(db, venue, 'Praline')).versions[1]?.lines).toMatchObject(NUTTY.lines);
});

test('deleteItem(asker, edit) names every use; of what nothing uses it takes all, and undo brings all back', async () => {
  await newQuay();
  const used = refusalOf(await deleteItem(ADA, await edit('Praline')));
  expect(used.detail).toBe(
    '“Praline” cannot be deleted: it goes into Cup and Tart. Take it out there first; nothing was changed.',
  );
  const bought = refusalOf(await deleteItem(ADA, await edit('Hazelnuts')));
  expect(bought.uses).toEqual([{ kind: 'offer', in: 'Bay Stores, H1', times: 1 }]);
  keptOf(await duplicateRecipe(ADA, await edit('Tart', { name: 'Tartlet' })));
  const before = await everythingStored(db, venue);
  const read = await edit('Tartlet');
  const gone = keptOf(await deleteItem(ADA, read));
  await expect(written(db, venue, 'Tartlet')).rejects.toThrow();
  const late = refusalOf(await deleteItem(BEN, read));
  expect([late.why, late.conflict?.theirs]).toEqual(['conflict', null]);
  expect(refusalOf(await deleteItem(BEN, { venue, item: 'Nothing', revision: null })).why).toBe('no-item');
  keptOf(await undoSave(BEN, { venue, write: gone.write }));
  expect(await everythingStored(db, venue)).toEqual(before);
});

test('every write to a closed day is refused with its sentence, undo too', async () => {
  await newQuay();
  const saved = keptOf(await saveRecipe(ADA, await edit('Praline', NUTTY)));
  await close('2026-11-30');
  const before = await everythingStored(db, venue);
  const lines = NUTTY.lines.slice(1);
  const changed = refusalOf(await saveRecipe(ADA, await edit('Praline', { ...NUTTY, lines })));
  expect(changed.fields[0]?.text).toBe(
    'The books are closed through 2026-11-30, so this can no longer change. Use a later day, or have an owner reopen the period.',
  );
  const taken = refusalOf(await takeVersion(ADA, await edit('Praline', { validFrom: '2026-11-01' })));
  expect([taken.why, taken.detail]).toEqual(['closed', expect.stringContaining('closed through 2026-11-30')]);
  expect(refusalOf(await undoSave(ADA, { venue, write: saved.write })).why).toBe('closed');
  keptOf(
    await saveRecipe(ADA, await edit('Praline', { ...NUTTY, version: { ...NUTTY.version, valid_from: '2026-12-01' } })),
  );
  await close(null);
  const { versions } = await written(db, venue, 'Praline');
  expect(versions).toHaveLength(3);
  expect((await everythingStored(db, venue)).menu).toEqual(before.menu);
});

test('saveRecipe(asker, edit) speaks for lines that a file could not bring; undone, they wait again', async () => {
  await newQuay();
  await loadFolder(
    db,
    file('recipe_lines.csv', [
      'recipe,valid_from,item,quantity,unit',
      'Cup,2026-01-01,Praline,50,g',
      'Cup,2026-01-01,Sand,5,g',
    ]),
    { venue },
  );
  const before = await everythingStored(db, venue);
  const waits = async () => (await everythingStored(db, venue)).waiting?.map(({ status }) => status);
  expect(await waits()).toEqual(['waiting']);
  expect(refusalOf(await renameItem(ADA, await edit('Cup', { name: 'Coupe' }))).title).toBe('Lines are waiting');
  const version = { kind: 'dish', valid_from: '2026-01-01', plating_minutes: '1' };
  const asked = await edit('Cup', { version, lines: [{ item: 'Praline', quantity: '60', unit: 'g' }] });
  const saved = keptOf(await saveRecipe(ADA, asked));
  expect(saved.effects.items).toMatchObject([
    { item: 'Cup', before: { plateCost: null }, after: { plateCost: '0.06' } },
  ]);
  expect(await waits()).toEqual(['dismissed']);
  const undone = keptOf(await undoSave(ADA, { venue, write: saved.write }));
  expect(await waits()).toEqual(['waiting']);
  expect((await everythingStored(db, venue)).lines).toEqual(before.lines);
  keptOf(await undoSave(ADA, { venue, write: undone.write }));
  expect(await waits()).toEqual(['dismissed']);
});

test('saveIngredient(asker, edit) of what rows of files wait for takes them', async () => {
  await newQuay();
  await loadFolder(
    db,
    file('recipe_lines.csv', [
      'recipe,valid_from,item,quantity,unit',
      'Cup,2026-01-01,Praline,50,g',
      'Cup,2026-01-01,Salt,5,g',
    ]),
    { venue },
  );
  const bare = { version: { measure: 'g' }, measures: [], parts: [], yields: [] };
  const saved = keptOf(await saveIngredient(ADA, { venue, item: null, revision: null, name: 'Salt', ...bare }));
  expect(saved.unlocked).toBe(1);
  expect((await written(db, venue, 'Cup')).versions[0]?.lines).toMatchObject([{ item: 'Praline' }, { item: 'Salt' }]);
  expect(refusalOf(await undoSave(ADA, { venue, write: saved.write })).why).toBe('in-use');
});
