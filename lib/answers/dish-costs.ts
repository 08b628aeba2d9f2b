import { dayText } from '../core/days';
import { openDatabase } from '../db/database';
import { moneyText } from '../format/money-text';
import { type DishCost, type DishCosts, dishCosts } from '../reports/dish-costs';
import type { Asker } from '../session/asker';
import { askedPeriod } from './asked-period';
import { askedVenue } from './asked-venue';
import { costedPeriods } from './costed-periods';
import type { DishCostsAnswer } from './dish-costs-shape';
import { type Answered, answered } from './problem';
import { writtenIssues } from './written-issues';

/** What each dish of a period costs and leaves, by channel; the same for command and HTTP. */
export async function dishCostsAnswer(
  asker: Asker,
  asked: { readonly venue: string | null; readonly month: string },
): Promise<Answered<DishCostsAnswer>> {
  const db = await openDatabase();
  const venue = await askedVenue(db, asker, asked.venue);
  if (!venue.ok) return venue;
  const found = await askedPeriod(db, asker, venue.answer, asked.month);
  if (!found.ok) return found;
  const { period } = found.answer;
  const [costed] = (await costedPeriods(db, asker, venue.answer.id, [period.range])).periods;
  if (!costed) throw new Error('a period was asked for');
  return answered(written(dishCosts(costed), period.name));
}

/** The report as the interface writes it: money as decimal text, days as ISO text, issues in words. */
function written(costs: DishCosts, month: string): DishCostsAnswer {
  const { currency, locale } = costs.venue;
  const money = (amount: number | null) => (amount === null ? null : moneyText(amount, currency));
  const item = (row: DishCost): DishCostsAnswer['items'][number] => ({
    item: row.item,
    kind: row.kind,
    section: row.section,
    channel: row.channel,
    sold: row.sold,
    netPrice: money(row.netPrice),
    plateCost: money(row.plateCost),
    floor: money(row.halfKnown?.floor ?? null),
    linesMissing: row.halfKnown?.missing ?? null,
    linesTotal: row.halfKnown?.lines ?? null,
    estimated: row.estimated,
    recipeLabour: money(row.recipeLabour),
    foodPlusLabour: money(row.foodPlusLabour),
    smallBatchLoss: money(row.smallBatchLoss),
    foodCostPct: row.foodCost,
    commission: money(row.commission),
    margin: money(row.margin),
    platingMinutes: row.platingMinutes,
    marginPerPlatingMinute: money(row.marginPerPlatingMinute),
  });
  return {
    venue: costs.venue.name,
    month,
    period: { from: dayText(costs.period.from), to: dayText(costs.period.to) },
    currency,
    locale,
    items: costs.items.map(item),
    extras: costs.extras.map(({ item: name, covers, perCover, cost }) => ({
      ...{ item: name, covers, perCover: money(perCover), cost: money(cost) },
    })),
    issues: writtenIssues(costs.issues),
  };
}
