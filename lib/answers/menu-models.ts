import { dayText } from '../core/days';
import { openDatabase } from '../db/database';
import { moneyText } from '../format/money-text';
import { noSuchSection } from '../format/words/problems';
import { sectionsOf } from '../model/offered';
import { type MenuModels, menuModels } from '../reports/menu-models';
import type { Asker } from '../session/asker';
import { askedPeriod } from './asked-period';
import { askedVenue } from './asked-venue';
import { costedPeriods } from './costed-periods';
import type { MenuModelsAnswer } from './menu-models-shape';
import { type Answered, answered, refused } from './problem';
import { writtenIssues } from './written-issues';

/** A question about the models side by side. Null: the only venue; the whole menu. */
export interface MenuModelsAsked {
  readonly venue: string | null;
  readonly month: string;
  readonly section: string | null;
}

/** Every model on the items of a period, the same for page, command and HTTP. */
export async function menuModelsAnswer(asker: Asker, asked: MenuModelsAsked): Promise<Answered<MenuModelsAnswer>> {
  const db = await openDatabase();
  const venue = await askedVenue(db, asker, asked.venue);
  if (!venue.ok) return venue;
  const found = await askedPeriod(db, asker, venue.answer, asked.month);
  if (!found.ok) return found;
  const { period, before } = found.answer;
  const { periods } = await costedPeriods(db, asker, venue.answer.id, [period.range, before.range]);
  const [now, previous] = periods;
  if (!now || !previous) throw new Error('two periods were asked for');
  const { section } = asked;
  const models = menuModels(now, { section, previous });
  if (section !== null && models.items.length === 0)
    return refused(404, noSuchSection(section, sectionsOf(now.things)));
  return answered(written(models, period.name));
}

/** The report as the interface writes it: money as decimal text, days as ISO text, issues in words. */
function written(report: MenuModels, month: string): MenuModelsAnswer {
  const { name, currency, locale, popularityFactor } = report.venue;
  const { menu } = report;
  const money = (amount: number | null) => (amount === null ? null : moneyText(amount, currency));
  return {
    ...{ venue: name, month, currency, locale, section: report.section },
    period: { from: dayText(report.period.from), to: dayText(report.period.to) },
    tradingDays: report.tradingDays,
    resamples: report.resamples,
    models: [...report.models],
    thresholds: {
      popularityFactor,
      margin: money(menu?.meanMargin ?? null),
      foodCostPct: menu?.foodCost ?? null,
      contribution: money(menu?.meanContribution ?? null),
      goalValue: menu?.goalValue ?? null,
      labour: money(menu?.meanLabour ?? null),
    },
    items: report.items.map((item) => ({
      ...{ item: item.item, section: item.section, sold: item.sold, popularity: item.popularity },
      netPrice: money(item.netPrice),
      foodCostPct: item.foodCost,
      margin: money(item.margin),
      contribution: money(item.contribution),
      goalValue: item.goalValue,
      recipeLabour: money(item.recipeLabour),
      classes: item.standings.map(({ between, ...standing }) => ({ ...standing, between: between && [...between] })),
      agree: item.agree,
    })),
    issues: writtenIssues(report.issues),
  };
}
