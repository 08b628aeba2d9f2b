import { afterAll, beforeAll, expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { type DayRange, dayText, parseDay } from '@/lib/core/days';
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
  await loadFolder(db, OWNER, 'seed/demo-house', {});
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

test.each([OCTOBER, YEAR])('needOfServed(the demo restaurant) is what a plain recursion over its recipes needs', (range) => {
  const period = costPeriod(facts, range);
  const { count } = period.segments;
  const need = needOfServed(period);
  const total = (node: number): number => need.slice(node * count, (node + 1) * count).reduce((sum, each) => sum + each, 0);
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
    expect(Math.abs(total(node) - wanted), `${key}: ${total(node)} is not ${wanted}`).toBeLessThanOrEqual(1e-9 * Math.abs(wanted) + 1e-9);
    if (wanted !== 0) compared += 1;
  });
  expect(compared).toBeGreaterThan(60);
});

test('the demo restaurant shows everything that a recipe can say', () => {
  const period = costPeriod(facts, OCTOBER, 'everything');
  const need = needOfServed(period);
  console.log(JSON.stringify(byProductFlows(period, need).map(({ thing, made, used, creditOfMade, costOfUsed }) => [thing.name, made, used, creditOfMade, costOfUsed])));
  console.log(JSON.stringify(surplusParts(period, need).map(({ thing, units, asWhole, surplusUnits, surplusCost }) => [thing.name, units, asWhole, surplusUnits, surplusCost])));
  console.log(dishCosts(period).items.map((r) => [r.item, r.channel, r.sold, r.netPrice?.toFixed(2), r.plateCost?.toFixed(2), r.recipeLabour?.toFixed(2), r.smallBatchLoss?.toFixed(3), r.commission?.toFixed(2), r.margin?.toFixed(2), r.platingMinutes, r.marginPerPlatingMinute?.toFixed(2)].join(' | ')).join('\n'));
  console.log(JSON.stringify(dishCosts(period).extras), JSON.stringify(dishCosts(period).issues));
  console.log(JSON.stringify(labour(period).grades), labour(period).items.filter(i=>i.recipeLabour===null).map(i=>[i.item,i.withoutMinutes]));
  const sb = smallBatch(period); console.log(sb.money, sb.components.map(c=>[c.item,c.unit,c.used.toFixed(0),c.made?.toFixed(0),c.lost?.toFixed(3),c.money?.toFixed(2),c.notStated].join(' ')).join('\n'));
  console.log(JSON.stringify(development(period, trialCosts(facts)).dishes.map(({trials, ...d})=>d)));
  console.log(allergens(period,{list:'eu'}).items.map(r=>[r.item, ...r.allergens.filter(a=>a.state!=='none-declared').map(a=>a.allergen+':'+a.state), 'UNK', r.unknownFrom, 'C', JSON.stringify(r.cautions)].join(' ')).join('\n'), JSON.stringify(allergens(period,{list:'eu'}).issues));
});
