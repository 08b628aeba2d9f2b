import { dayText } from '../core/days';
import { openDatabase } from '../db/database';
import { moneyText } from '../format/money-text';
import { noSuchModel, noSuchSection, noSuchSetMenus } from '../format/words/problems';
import { listOf } from '../model/allergens/allergen-lists';
import type { ItemId } from '../model/facts';
import { type Advice, advice } from '../model/mix/advice';
import { KASAVANA_SMITH } from '../model/mix/kasavana-smith';
import type { MixModel } from '../model/mix/mix-model';
import { MIX_MODELS } from '../model/mix/mix-models';
import { sectionsOf, spelledSection } from '../model/offered';
import type { MenuMix, MixItem } from '../reports/menu-mix';
import type { Asker } from '../session/asker';
import { askedPeriod } from './asked-period';
import { askedVenue } from './asked-venue';
import { costedPeriods } from './costed-periods';
import { keptMix } from './kept-mix';
import type { AdviceAnswer, MenuMixAnswer } from './menu-mix-shape';
import { type Answered, answered, refused } from './problem';
import { writtenIssues } from './written-issues';

/** A question about the menu mix. Null: the only venue; the whole menu; the first model. */
export interface MenuMixAsked {
  readonly venue: string | null;
  readonly month: string;
  readonly section: string | null;
  readonly model: string | null;
  /** section (where nothing is said) or spread. */
  readonly setMenus?: string | null;
}

/** Names of sales that wait, as many as a sentence holds. */
const LARGEST = 3;

/** The menu mix of a period, the same for page, command and HTTP. */
export async function menuMixAnswer(asker: Asker, asked: MenuMixAsked): Promise<Answered<MenuMixAnswer>> {
  const model = askedModel(asked.model);
  if (model === null) return refused(400, noSuchModel(asked.model ?? '', Object.keys(MIX_MODELS)));
  const setMenus = asked.setMenus ?? 'section';
  if (setMenus !== 'section' && setMenus !== 'spread') return refused(400, noSuchSetMenus(setMenus));
  const db = await openDatabase();
  const venue = await askedVenue(db, asker, asked.venue);
  if (!venue.ok) return venue;
  const found = await askedPeriod(db, asker, venue.answer, asked.month);
  if (!found.ok) return found;
  const { period, before: earlier } = found.answer;
  const { periods } = await costedPeriods(db, asker, venue.answer.id, [period.range, earlier.range]);
  const [now, before] = periods;
  if (!now || !before) throw new Error('two periods were asked for');
  const sections = sectionsOf(now.things);
  const section = spelledSection(sections, asked.section);
  if (section === undefined) return refused(404, noSuchSection(asked.section ?? '', sections));
  const mix = keptMix(now, before, section, model, setMenus);
  return answered(written(mix, period.name, advice(now, mix.items, listOf(now.venue))));
}

/** The model of a name, Kasavana & Smith's where none is named; null where there is none of that name. */
export function askedModel(name: string | null): MixModel | null {
  return Object.values(MIX_MODELS).find((model) => model.name === (name ?? KASAVANA_SMITH.name)) ?? null;
}

/** The report as the interface writes it: money as decimal text, days as ISO text, issues in words. */
function written(mix: MenuMix, month: string, advised: ReadonlyMap<ItemId, Advice>): MenuMixAnswer {
  const { currency, locale } = mix.venue;
  const money = (amount: number | null) => (amount === null ? null : moneyText(amount, currency));
  const item = (row: MixItem): MenuMixAnswer['items'][number] => ({
    item: row.item,
    section: row.section,
    sold: row.sold,
    comps: row.comps,
    share: row.share,
    expected: row.expected,
    daysOnSale: row.daysOnSale,
    netPrice: money(row.netPrice),
    revenue: money(row.revenue),
    plateCost: money(row.plateCost),
    floor: money(row.halfKnown?.floor ?? null),
    linesMissing: row.halfKnown?.missing ?? null,
    linesTotal: row.halfKnown?.lines ?? null,
    estimated: row.estimated,
    foodCostPct: row.foodCost,
    margin: money(row.margin),
    contribution: money(row.contribution),
    class: row.class,
    classShares: row.classShares,
    settled: row.settled,
    between: row.between && [...row.between],
    spread: row.spread,
    advice: writtenAdvice(advised.get(row.id) ?? null, currency),
  });
  return {
    venue: mix.venue.name,
    month,
    period: { from: dayText(mix.period.from), to: dayText(mix.period.to) },
    model: mix.model,
    currency,
    locale,
    section: mix.section,
    setMenus: mix.setMenus,
    setMenusSold: mix.setMenusSold,
    tradingDays: mix.tradingDays,
    resamples: mix.resamples,
    thresholds: {
      popularity: mix.thresholds.popularity,
      popularityFactor: mix.venue.popularityFactor,
      margin: money(mix.thresholds.margin),
      foodCostPct: mix.thresholds.foodCost,
      contribution: money(mix.thresholds.contribution),
      goalValue: mix.thresholds.goalValue,
      labour: money(mix.thresholds.labour),
    },
    totals: {
      sold: mix.totals.sold,
      comps: mix.totals.comps,
      revenue: money(mix.totals.revenue),
      costedSold: mix.totals.costedSold,
      costedRevenue: moneyText(mix.totals.costedRevenue, currency),
      estimatedSold: mix.totals.estimatedSold,
      plateCost: money(mix.totals.plateCost),
      foodCostPct: mix.totals.foodCost,
      margin: money(mix.totals.margin),
    },
    coverage: mix.coverage,
    waiting: {
      ...{ rows: mix.waiting.rows, portions: mix.waiting.portions, names: mix.waiting.names.length },
      largest: mix.waiting.names.slice(0, LARGEST).map(({ name }) => name),
    },
    stockCounted: mix.stockCounted,
    costNext: mix.costNext.map(({ item: name, share }) => ({ item: name, share })),
    items: mix.items.map(item),
    issues: writtenIssues(mix.issues),
  };
}

/** Advice on one item as the interface writes it. */
export function writtenAdvice(advised: Advice | null, currency: string): AdviceAnswer | null {
  if (advised === null) return null;
  const { againstAverage, rise, leavesLess, mayLose, takenOffFrom, onlyWithout, mostPlating } = advised;
  return {
    againstAverage: moneyText(againstAverage, currency),
    rise: rise === null ? null : moneyText(rise, currency),
    ...{ leavesLess, mayLose, takenOffFrom, onlyWithout: [...onlyWithout], mostPlatingMinutes: mostPlating },
  };
}
