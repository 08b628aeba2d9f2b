import { beforeAll, expect, test } from 'vitest';
import { type Day, dateOfDay, parseDay } from '@/lib/core/days';
import { nameKey } from '@/lib/core/name-key';
import { inVenue, type VenueTx } from '@/lib/db/in-venue';
import { loadFacts } from '@/lib/db/load-facts';
import { recipeLineKey } from '@/lib/db/load-recipes';
import { salesSpan } from '@/lib/db/load-sales';
import { createVenue } from '@/lib/db/venues';
import type { Facts, VenueId } from '@/lib/model/facts';
import { freshDatabase } from '../fresh-database';

const { db } = await freshDatabase();

const day = (text: string): Day => parseDay(text) ?? expect.unreachable(text);
const date = (text: string) => dateOfDay(day(text));
const october = { from: day('2026-10-01'), to: day('2026-11-01') };
const item = (tx: VenueTx, name: string, kind: 'ingredient' | 'dish' | 'component') =>
  tx.prisma.item.create({ data: { venueId: tx.venue, name, nameKey: nameKey(name), kind } });

async function load(tx: VenueTx, source: string, days: readonly string[], live = true) {
  const { id } = await tx.prisma.load.create({
    data: { venueId: tx.venue, kind: 'sales', source, file: 'sales.csv', digest: '', person: tx.person },
  });
  const scopes = days.map((text) => ({ venueId: tx.venue, kind: 'sales', source, day: date(text), loadId: id, live }));
  await tx.prisma.loadScope.createMany({ data: scopes });
  return id;
}

const sale = (tx: VenueTx, loadId: number, itemId: number, text: string, sold: string, channel = 'dine_in') =>
  tx.prisma.salesDay.create({
    data: { venueId: tx.venue, loadId, itemId, day: date(text), channel, rows: 1, sold, comps: 1, net: '8.10' },
  });

let marram: VenueId;

beforeAll(async () => {
  marram = (await createVenue(db, 'ada', { name: 'Marram House', stated: ['name', 'currency'], qFactor: '0.02' })).id;
  await inVenue(db, { venue: marram, person: 'ada' }, 'write', async (tx) => {
    // brought in against every order that a reader could expect
    const tart = await item(tx, 'Plum tart', 'dish');
    const sugar = await item(tx, 'Sugar', 'ingredient');
    const cream = await item(tx, 'cream', 'ingredient');
    const venueId = tx.venue;
    await tx.prisma.ingredientVersion.createMany({
      data: [
        { venueId, itemId: sugar.id, validFrom: date('2026-10-10'), measure: 'g', usableYield: '0.98' },
        { venueId, itemId: sugar.id, validFrom: date('2026-11-01'), measure: 'g' },
        { venueId, itemId: sugar.id, validFrom: null, measure: 'g' },
        { venueId, itemId: cream.id, validFrom: null, measure: 'ml', densityGPerMl: '1.01' },
      ],
    });
    const supplier = await tx.prisma.supplier.create({
      data: { venueId, name: 'Saltmarsh Dairy', nameKey: 'saltmarsh dairy' },
    });
    const pack = { venueId, supplierId: supplier.id, packCount: '12', packSize: '0.5', packUnit: 'l' };
    const dear = await tx.prisma.offer.create({ data: { ...pack, code: 'C2', codeKey: 'c2', itemId: cream.id } });
    await tx.prisma.offer.create({ data: { ...pack, code: 'C1', codeKey: 'c1', itemId: cream.id } });
    await tx.prisma.offerChoice.create({ data: { venueId, itemId: cream.id, offerId: dear.id } });
    await tx.prisma.pricePoint.createMany({
      data: [
        { venueId, offerId: dear.id, kind: 'list', validFrom: date('2026-10-31'), price: '25.20' },
        { venueId, offerId: dear.id, kind: 'list', validFrom: date('2026-11-01'), price: '99' },
        {
          venueId,
          offerId: dear.id,
          kind: 'agreed',
          validFrom: date('2026-01-01'),
          validTo: date('2026-10-30'),
          price: '24',
        },
      ],
    });
    const version = await tx.prisma.recipeVersion.create({
      data: { venueId, itemId: tart.id, validFrom: date('2026-10-05'), section: 'Plated' },
    });
    await tx.prisma.recipeLine.createMany({
      data: [
        { venueId, versionId: version.id, position: 2, itemId: cream.id, quantity: '30', unit: 'ml' },
        {
          venueId,
          versionId: version.id,
          position: 1,
          itemId: sugar.id,
          quantity: '12.5',
          unit: 'g',
          usedAs: 'bought',
        },
      ],
    });
    await tx.prisma.menuPrice.createMany({
      data: [
        {
          venueId,
          itemId: tart.id,
          channel: 'dine_in',
          validFrom: date('2026-10-20'),
          price: null,
          tax: '0.09',
          taxIncluded: true,
        },
        { venueId, itemId: tart.id, channel: 'dine_in', price: '9.50', tax: '0.09', taxIncluded: true },
      ],
    });

    const days = ['2026-09-30', '2026-10-01', '2026-10-31', '2026-11-01'];
    const book = await load(tx, 'book', days);
    const terrace = await load(tx, 'terrace', ['2026-10-01']);
    const superseded = await load(tx, 'book', ['2026-10-01'], false);
    const undone = await load(tx, 'cart', ['2026-10-02']);
    await tx.prisma.load.update({ where: { venueId_id: { venueId, id: undone } }, data: { undoneAt: new Date() } });
    for (const text of days) await sale(tx, book, tart.id, text, '3');
    await sale(tx, book, tart.id, '2026-10-01', '0.5', 'collect');
    await sale(tx, terrace, tart.id, '2026-10-01', '0.1');
    await sale(tx, superseded, tart.id, '2026-10-01', '700');
    await sale(tx, undone, tart.id, '2026-10-02', '700');
    await tx.prisma.coversDay.create({ data: { venueId, loadId: book, day: date('2026-10-31'), covers: '41' } });

    const row = { venueId, loadId: book, kind: 'recipe_lines', source: 'book', line: 4, raw: {}, rule: 'number' };
    const rowKey = recipeLineKey(' PLUM tart', '2026-10-05');
    await tx.prisma.waitingRow.createMany({
      data: [
        { ...row, rowKey },
        { ...row, rowKey, status: 'dismissed' },
        { ...row, rowKey: 'plum tart|' },
        { ...row, kind: 'recipes', rowKey },
      ],
    });
  });
});

const factsOf = (venue: VenueId) => inVenue(db, { venue, person: 'ada' }, 'read', (tx) => loadFacts(tx, october));

test('loadFacts(tx, range) names things in order of their names, whatever came first', async () => {
  const facts = await factsOf(marram);
  expect(facts.items.map(({ name }) => name)).toEqual(['cream', 'Plum tart', 'Sugar']);
  expect(facts.offers.map(({ code, supplier, packCount, packSize }) => [code, supplier, packCount, packSize])).toEqual([
    ['C1', 'Saltmarsh Dairy', 12, 0.5],
    ['C2', 'Saltmarsh Dairy', 12, 0.5],
  ]);
});

test('loadFacts(tx, range) takes what was stated before the end of the range, oldest first', async () => {
  const facts = await factsOf(marram);
  const named = nameIn(facts);
  expect(facts.ingredientVersions.map((v) => [named(v.item), v.validFrom, v.usableYield, v.densityGPerMl])).toEqual([
    ['cream', null, 1, 1.01],
    ['Sugar', null, 1, null],
    ['Sugar', day('2026-10-10'), 0.98, null],
  ]);
  expect(facts.pricePoints.map((p) => [p.kind, p.validFrom, p.validTo, p.price])).toEqual([
    ['agreed', day('2026-01-01'), day('2026-10-30'), 24],
    ['list', day('2026-10-31'), null, 25.2],
  ]);
  expect(facts.menuPrices.map((p) => [p.validFrom, p.price, p.tax, p.taxIncluded])).toEqual([
    [null, 9.5, 0.09, true],
    [day('2026-10-20'), null, 0.09, true],
  ]);
});

test('loadFacts(tx, range) has the first day of recipes that begin after the range', async () => {
  const later = (from: string, to: string) =>
    inVenue(db, { venue: marram, person: 'ada' }, 'read', async (tx) => {
      const facts = await loadFacts(tx, { from: day(from), to: day(to) });
      return facts.laterRecipes.map(({ item: id, begins }) => [nameIn(facts)(id), begins]);
    });
  expect(await later('2026-09-01', '2026-10-05')).toEqual([['Plum tart', day('2026-10-05')]]);
  expect(await later('2026-09-01', '2026-10-06')).toEqual([]);
});

test('loadFacts(tx, range) gives lines as they were written and counts those still refused', async () => {
  const facts = await factsOf(marram);
  const [version] = facts.recipeVersions;
  const named = nameIn(facts);
  expect(version?.lines.map((l) => [l.position, named(l.item), l.quantity, l.unit, l.as])).toEqual([
    [1, 'Sugar', 12.5, 'g', 'bought'],
    [2, 'cream', 30, 'ml', 'prepared'],
  ]);
  expect(version).toMatchObject({ validFrom: day('2026-10-05'), section: 'Plated', breakage: 0, refusedLines: 1 });
});

test('loadFacts(tx, range) adds up sources, exactly, and leaves out other days, superseded and undone loads', async () => {
  const facts = await factsOf(marram);
  expect(facts.sales.map(({ item: _, ...sale }) => sale)).toEqual([
    { day: day('2026-10-01'), channel: 'collect', sold: 0.5, comps: 1, net: 8.1, soldWithoutRevenue: 0 },
    { day: day('2026-10-01'), channel: 'dine_in', sold: 3.1, comps: 2, net: 16.2, soldWithoutRevenue: 0 },
    { day: day('2026-10-31'), channel: 'dine_in', sold: 3, comps: 1, net: 8.1, soldWithoutRevenue: 0 },
  ]);
  expect(facts.covers).toEqual([{ day: day('2026-10-31'), covers: 41 }]);
});

test('loadFacts(tx, range) names the settings that nobody stated', async () => {
  const { venue } = await factsOf(marram);
  expect(venue).toMatchObject({
    id: marram,
    currency: 'EUR',
    qFactor: 0.02,
    popularityFactor: 0.7,
    targetFoodCost: null,
  });
  expect(venue.defaulted).toEqual(['time_zone', 'kitchen_measures', 'q_factor_pct']);
});

test('salesSpan(tx) counts the days with live sales of each month, oldest first', async () => {
  const span = await inVenue(db, { venue: marram, person: 'ada' }, 'read', salesSpan);
  expect([...span]).toEqual([
    ['2026-09', 1],
    ['2026-10', 2],
    ['2026-11', 1],
  ]);
});

test('loadFacts(tx, range) of a year of 16 dishes in two channels takes under a second', async () => {
  const { id } = await createVenue(db, 'ada', { name: 'A year' });
  const who = { venue: id, person: 'ada' };
  await inVenue(db, who, 'write', async (tx) => {
    for (let n = 1; n <= 16; n++) await item(tx, `Dish ${n}`, 'dish');
    const loadId = await load(tx, 'book', []);
    await tx.bulk.query(
      `insert into load_scope (venue_id, kind, source, day, load_id, live)
       select $1, 'sales', 'book', date '2026-01-01' + d, $2, true from generate_series(0, 364) d`,
      [id, loadId],
    );
    await tx.bulk.query(
      `insert into sales_day (venue_id, load_id, day, item_id, channel, rows, sold, net)
       select $1, $2, date '2026-01-01' + d, i.id, c, 1, 2, 19
       from generate_series(0, 364) d, item i, unnest(array['dine_in', 'collect']) c where i.venue_id = $1`,
      [id, loadId],
    );
  });
  const started = performance.now();
  const facts = await inVenue(db, who, 'read', (tx) =>
    loadFacts(tx, { from: day('2026-01-01'), to: day('2027-01-01') }),
  );
  const took = performance.now() - started;
  expect(facts.sales).toHaveLength(11_680);
  expect(took).toBeLessThan(1000);
});

const nameIn = (facts: Facts) => (id: number) => facts.items.find((one) => one.id === id)?.name;
