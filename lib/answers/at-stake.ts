import { type Day, dayText } from '../core/days';
import { twelveMonthsTo } from '../core/twelve-months';
import { type Database, openDatabase } from '../db/database';
import { inVenue } from '../db/in-venue';
import { salesDays } from '../db/load-sales';
import { moneyText } from '../format/money-text';
import { noSuchBy } from '../format/words/price-edits';
import { PRICE_UNITS } from '../format/words/price-reports';
import type { VenueId } from '../model/facts';
import type { Issue } from '../model/issue';
import { priceModelOf } from '../model/price-model/price-model-of';
import { AT_STAKE_BY, atStake, concentration } from '../reports/at-stake';
import { tornado } from '../reports/tornado';
import type { Asker } from '../session/asker';
import type { AtStakeAnswer } from './at-stake-shape';
import { costedPeriods } from './costed-periods';
import { periodWritten } from './period-written';
import { type PricedAsked, pricedPeriod } from './priced-period';
import { type Answered, answered, refused } from './problem';
import { writtenIssues } from './written-issues';

export interface AtStakeAsked extends PricedAsked {
  /** ingredient, group or supplier; null: ingredient. */
  readonly by: string | null;
}

/** What is at stake with prices, the same for command and HTTP. */
export async function atStakeAnswer(asker: Asker, asked: AtStakeAsked): Promise<Answered<AtStakeAnswer>> {
  const by = AT_STAKE_BY.find((known) => known === (asked.by ?? 'ingredient'));
  if (by === undefined) {
    const words = noSuchBy(asked.by ?? '', AT_STAKE_BY);
    return refused(400, words, [{ name: 'by', value: asked.by, text: words.detail }]);
  }
  const period = await pricedPeriod(asker, asked);
  if (!period.ok) return period;
  const { model, costed } = period.answer;
  const db = await openDatabase();
  const range = twelveMonthsTo(costed.range.to);
  const [year] = (await costedPeriods(db, asker, costed.venue.id, [range])).periods;
  if (!year) throw new Error('a year was asked for');
  const yearModel = priceModelOf(year, asked.section);
  const spread = tornado(model);
  const stake = atStake(model, by, yearModel);
  const { currency } = costed.venue;
  const money = (amount: number) => moneyText(amount, currency);
  const { issues, ...written } = periodWritten(period.answer);
  return answered({
    ...written,
    by,
    year: { from: dayText(range.from), to: dayText(range.to) },
    foodSpend: money(stake.foodSpend),
    dishes: stake.dishes,
    concentration: concentration(by === 'group' ? stake : atStake(model, 'group', null)),
    items: stake.rows.map((row) => ({
      name: row.name,
      spend: money(row.spend),
      share: row.share,
      onePercentPerYear: row.onePercentPerYear === null ? null : money(row.onePercentPerYear),
      dishes: row.dishes.length,
      dishNames: [...row.dishes],
    })),
    tornado: spread.bars.map(({ goods, range: { lowest, highest }, atLowest, atHighest }) => ({
      ingredient: goods.name,
      unit: PRICE_UNITS[goods.unit],
      ...{ lowest: money(lowest), highest: money(highest) },
      ...{ atLowest: money(atLowest), atHighest: money(atHighest) },
    })),
    unmoved: [...spread.unmoved],
    issues: [...writtenIssues(await shortYear(db, asker, costed.venue.id, range.from)), ...issues],
  });
}

/** That sales begin only within the year. */
async function shortYear(db: Database, asker: Asker, venue: VenueId, from: Day): Promise<readonly Issue[]> {
  const [first] = await inVenue(db, { venue, person: asker.person }, 'read', salesDays);
  if (first === undefined || first <= from) return [];
  return [{ code: 'year-short', about: dayText(first), facts: { from: dayText(from) } }];
}
