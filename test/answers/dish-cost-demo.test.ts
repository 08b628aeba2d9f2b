import { expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { addDays, type Day, parseDay } from '@/lib/core/days';
import { isNear } from '@/lib/core/near';
import { inVenue } from '@/lib/db/in-venue';
import { loadFacts } from '@/lib/db/load-facts';
import { venuesSeenBy } from '@/lib/db/venues';
import type { CostLine } from '@/lib/model/cost-line';
import { costPeriod } from '@/lib/model/costed-period';
import { costWorking } from '@/lib/reports/cost-working';
import { dishCosts } from '@/lib/reports/dish-costs';
import { currentAsker } from '@/lib/session/asker';
import { freshDatabase } from '../fresh-database';

const { db } = await freshDatabase();
const { person } = currentAsker();

const known = (line: CostLine): number => line.cost ?? line.floor ?? 0;
const sum = (lines: readonly CostLine[]): number => lines.reduce((total, line) => total + known(line), 0);
const everyLine = (lines: readonly CostLine[]): readonly CostLine[] =>
  lines.flatMap((line) => [line, ...everyLine(line.lines)]);
const day = (text: string): Day => parseDay(text) ?? expect.unreachable(text);

test('costWorking(everything of the demo restaurant): the parts sum to the whole, which dish-costs has too', async () => {
  await loadFolder(db, 'seed/demo-house');
  const [venue] = await venuesSeenBy(db, person);
  const id = venue?.id ?? expect.unreachable('the demo restaurant was loaded');
  const seen = { lines: 0, byProducts: 0, parts: 0, choices: 0, breakage: 0, packed: 0, costed: 0 };
  for (const on of ['2025-10-15', '2026-05-20', '2026-10-31'].map(day)) {
    const range = { from: on, to: addDays(on, 1) };
    const facts = await inVenue(db, { venue: id, person }, 'read', (tx) => loadFacts(tx, range));
    const period = costPeriod(facts, range, 'everything');
    for (const { id: item, name } of facts.items) {
      const channels = [null, ...(period.packings.get(period.nodeOf.get(item) ?? -1)?.keys() ?? [])];
      for (const channel of channels) {
        const working = costWorking(period, item, on, channel) ?? expect.unreachable(name);
        const whole = working.plateCost ?? working.halfKnown?.floor ?? 0;
        expect(isNear(sum(working.lines), whole), `${name}: ${sum(working.lines)} is not ${whole}`).toBe(true);
        if (working.plateCost !== null) seen.costed += 1;
        if (channel !== null) seen.packed += 1;
        for (const line of everyLine(working.lines)) {
          seen.lines += 1;
          if (line.byProduct !== null) seen.byProducts += 1;
          if (line.part !== null) seen.parts += 1;
          if (line.choice !== null) seen.choices += 1;
          if ((line.recipe?.breakage ?? 0) > 0) seen.breakage += 1;
          expect(line.closed).toBe(false);
          if (line.lines.length > 0) {
            expect(isNear(sum(line.lines), known(line)), `${name}, ${line.item}`).toBe(true);
          }
        }
      }
    }
    for (const row of dishCosts(costPeriod(facts, range)).items) {
      const working = costWorking(period, row.id, on, row.channel);
      expect(working?.plateCost === null, row.item).toBe(row.plateCost === null);
      expect(isNear(working?.plateCost ?? 0, row.plateCost ?? 0), `${row.item} ${row.channel}`).toBe(true);
      expect(isNear(working?.recipeLabour ?? 0, row.recipeLabour ?? 0), `${row.item} ${row.channel}`).toBe(true);
    }
  }
  // a restaurant without these would test none of them
  for (const [what, count] of Object.entries(seen)) expect(count, what).toBeGreaterThan(0);
});
