import { afterAll, beforeAll, expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { type DayRange, parseDay } from '@/lib/core/days';
import { closeDatabase } from '@/lib/db/database';
import { inVenue } from '@/lib/db/in-venue';
import { loadFacts } from '@/lib/db/load-facts';
import { venuesSeenBy } from '@/lib/db/venues';
import { byProductFlows } from '@/lib/model/by-product-flows';
import { costPeriod } from '@/lib/model/costed-period';
import type { Facts } from '@/lib/model/facts';
import { needOfServed } from '@/lib/model/served';
import { surplusParts } from '@/lib/model/surplus-parts';
import { trialCosts } from '@/lib/model/trial-costs';
import { allergens } from '@/lib/reports/allergens';
import { development } from '@/lib/reports/development';
import { dishCosts } from '@/lib/reports/dish-costs';
import { labour } from '@/lib/reports/labour';
import { smallBatch } from '@/lib/reports/small-batch';
import { currentAsker } from '@/lib/session/asker';
import { PARTS } from '@/seed/demo/ingredients/measures-and-parts';
import { addNeeds, partKey } from '@/seed/demo/kitchen/needs';
import { SHOULD_HAVE_USED } from '@/seed/demo/kitchen/served';
import { freshDatabase } from '../fresh-database';

const { db, url } = await freshDatabase();
const OWNER = currentAsker();
const day = (text: string) => parseDay(text) ?? expect.unreachable(text);
const OCTOBER: DayRange = { from: day('2026-10-01'), to: day('2026-11-01') };
const YEAR: DayRange = { from: day('2025-11-01'), to: day('2026-11-01') };
let facts: Facts;

beforeAll(async () => {
  process.env.DATABASE_URL = url;
  await loadFolder(db, 'seed/demo-house');
  const [venue] = await venuesSeenBy(db, OWNER.person);
  const id = venue?.id ?? expect.unreachable('no venue');
  facts = await inVenue(db, { venue: id, person: OWNER.person }, 'read', (tx) => loadFacts(tx, YEAR));
}, 120_000);

afterAll(async () => {
  await closeDatabase();
});

/** What the kitchen's own plain recursion says that the plates of some days needed, by ingredient or "ingredient/part". */
function plainNeeds({ from, to }: DayRange): ReadonlyMap<string, number> {
  const sum = new Map<string, number>();
  for (const [on, needs] of SHOULD_HAVE_USED) if (on >= from && on < to) addNeeds(sum, needs, 1);
  return sum;
}

test.each([OCTOBER, YEAR])(
  'needOfServed(the demo restaurant) is what a plain recursion over its recipes needs',
  (range) => {
    const period = costPeriod(facts, range);
    const { count } = period.segments;
    const need = needOfServed(period);
    const total = (node: number): number =>
      need.slice(node * count, (node + 1) * count).reduce((sum, each) => sum + each, 0);
    const plain = plainNeeds(range);
    let compared = 0;
    period.things.forEach((thing, node) => {
      if (thing.kind !== 'ingredient' || thing.channel !== null) return;
      const wholeName = thing.part ? facts.items.find(({ id }) => id === thing.id)?.name : thing.name;
      const key = thing.part ? partKey(wholeName ?? '', thing.part.name) : thing.name;
      // the plain one keeps parts apart from the whole, which costs pay for by their shares
      const parts = PARTS.filter(({ ingredient }) => ingredient === thing.name && !thing.part).reduce(
        (sum, { part, output, costSharePct }) =>
          sum + ((plain.get(partKey(thing.name, part)) ?? 0) / output[0]) * (costSharePct / 100),
        0,
      );
      const wanted = (plain.get(key) ?? 0) + parts;
      expect(Math.abs(total(node) - wanted), `${key}: ${total(node)} is not ${wanted}`).toBeLessThanOrEqual(
        1e-9 * Math.abs(wanted) + 1e-9,
      );
      if (wanted !== 0) compared += 1;
    });
    expect(compared).toBeGreaterThan(60);
  },
);

test('the demo restaurant has by-products made and used, and parts that are left over', () => {
  const period = costPeriod(facts, OCTOBER);
  const need = needOfServed(period);
  const [trimmings, ...others] = byProductFlows(period, need);
  expect(others).toEqual([]);
  expect(trimmings?.thing.name).toBe('Brownie trimmings');
  expect(trimmings?.made).toBeGreaterThan(trimmings?.used ?? 0);
  // 1.50 a tray of 300 g
  expect(trimmings?.costOfUsed).toBeCloseTo(((trimmings?.used ?? 0) / 300) * 1.5, 9);
  expect(surplusParts(period, need).map(({ thing, surplusUnits }) => [thing.name, surplusUnits > 0])).toEqual([
    ['Shell eggs', true],
    ['Vanilla pods', true],
  ]);
});

test('the demo restaurant knows the work in every dish but the one on estimate, and what its batches lose', () => {
  const period = costPeriod(facts, OCTOBER);
  const { grades, items, issues } = labour(period);
  expect(items.filter(({ recipeLabour }) => recipeLabour === null).map(({ item }) => item)).toEqual([
    'Cheese and oatcakes',
  ]);
  expect(grades.map(({ grade, cost }) => [grade, (cost ?? 0) > 0])).toEqual([
    ['commis', true],
    ['finisher', true],
    ['pastry chef', true],
  ]);
  expect(issues.map(({ code }) => code)).toEqual(['no-offer']);
  const { components, money } = smallBatch(period);
  expect(components.filter(({ notStated }) => notStated)).toEqual([]);
  expect(money).toBeGreaterThan(0);
  // what each portion carries is what the components lose, but for the pre-dessert's share and the fig leaves, which have no price
  const { items: costs, extras } = dishCosts(period);
  const carried = costs.reduce((sum, row) => sum + row.sold * (row.smallBatchLoss ?? 0), 0);
  expect(carried).toBeGreaterThan(0);
  expect(carried).toBeLessThan(money ?? 0);
  expect(extras.map(({ item, covers, cost }) => [item, covers > 2000, (cost ?? 0) > 300])).toEqual([
    ['Pre-dessert', true, true],
  ]);
});

test('the demo restaurant declares the allergens of every dish but the one on estimate, and its cautions', () => {
  const { items, issues } = allergens(costPeriod(facts, OCTOBER), { list: 'eu' });
  expect(issues).toEqual([]);
  expect(items.filter(({ unknownFrom }) => unknownFrom.length > 0).map(({ item }) => item)).toEqual([
    'Cheese and oatcakes',
  ]);
  const brownie = items.find(({ item }) => item === 'Harbour brownie, malt ice');
  const states = new Map(brownie?.allergens.map(({ allergen, state }) => [allergen, state]));
  expect([states.get('gluten'), states.get('nuts'), states.get('lupin'), states.get('fish')]).toEqual([
    'contains',
    'may-contain',
    'may-contain',
    'none-declared',
  ]);
  const cautions = new Set(items.flatMap((item) => item.cautions.map(({ caution }) => caution)));
  expect([...cautions].sort()).toEqual(['alcohol', 'dry ice', 'raw egg']);
});

test('the demo restaurant has spent hours and goods on two dishes', () => {
  const { dishes, issues } = development(costPeriod(facts, OCTOBER, 'everything'), trialCosts(facts));
  expect(issues).toEqual([]);
  expect(dishes.map(({ item, hours, trials }) => [item, hours, trials.length])).toEqual([
    ['Sea buckthorn posset', 6.5, 4],
    ['Smoke and peat', 17, 7],
  ]);
  // 13.5 h of a pastry chef at 22.30, 2 h of a commis at 17.70, 1.5 h of a finisher at 17.00
  expect(dishes[1]?.labour).toBeCloseTo(13.5 * 22.3 + 2 * 17.7 + 1.5 * 17, 9);
  expect(dishes.every(({ cost, labour: hours }) => (cost ?? 0) > (hours ?? 0))).toBe(true);
});
