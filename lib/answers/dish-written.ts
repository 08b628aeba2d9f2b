import { addDays, type Day, dayText } from '../core/days';
import { moneyText } from '../format/money-text';
import type { MenuPrice } from '../model/facts';
import { lastMenuPrice, menuEvents, onMenuSince } from '../model/menu-events';
import type { Advice } from '../model/mix/advice';
import type { AllergenRow } from '../reports/allergens';
import type { DevelopedDish } from '../reports/development';
import type { Dish } from '../reports/dish';
import type { Both, DishChange } from '../reports/dish-change';
import type { DishInPeriod } from '../reports/dish-periods';
import type { MenuMix } from '../reports/menu-mix';
import type { DishAnswer, DishPeriodAnswer } from './dish-shape';
import { writtenAdvice } from './menu-mix';
import { writtenIssues } from './written-issues';

/** All that was found out about a dish. */
export interface DishFound {
  readonly month: string;
  /** Name of the period before. */
  readonly before: string;
  readonly report: Dish;
  readonly section: string | null;
  /** The mix that it stands in, by each model, the first one first. */
  readonly mixes: readonly MenuMix[];
  readonly turning: DishAnswer['turning'];
  readonly advice: Advice | null;
  readonly change: DishChange | null;
  readonly periods: readonly DishInPeriod[];
  /** Their names. */
  readonly months: readonly string[];
  readonly menu: readonly MenuPrice[];
  readonly developed: DevelopedDish | null;
  readonly allergens: { readonly list: 'eu' | 'us'; readonly day: Day; readonly row: AllergenRow } | null;
}

/** A dish as the interface writes it: money as decimal text, days as ISO text, issues in words. */
export function writtenDish(found: DishFound): DishAnswer {
  const { report, mixes, menu } = found;
  const { currency, name } = report.venue;
  const money = (amount: number | null) => (amount === null ? null : moneyText(amount, currency));
  const { from, to } = report.period;
  const since = onMenuSince(menu, addDays(to, -1))?.from ?? null;
  return {
    venue: name,
    month: found.month,
    period: { from: dayText(from), to: dayText(to) },
    currency,
    locale: report.venue.locale,
    item: report.item,
    kind: report.kind,
    section: report.section,
    mixSection: found.section,
    components: report.components,
    onSale: report.figures !== null || report.given !== null,
    lastDay: dayText(addDays(to, -1)),
    onMenuSince: since === null ? null : dayText(since),
    menuPrice: money(lastMenuPrice(menu, report.period)),
    figures: writtenFigures(found, money),
    given: report.given && {
      ...{ covers: report.given.covers, perCover: money(report.given.perCover), cost: money(report.given.cost) },
    },
    standings: mixes.flatMap(({ model, items }) => {
      const standing = items.find(({ id }) => id === report.id);
      if (!standing) return [];
      const { class: own, classShares, settled, between } = standing;
      return [{ model, class: own, classShares, settled, between: between && [...between] }];
    }),
    turning: found.turning,
    advice: writtenAdvice(found.advice, currency),
    bought: report.bought.map(({ item, isEstimate, quantity, unit, cost }) => ({
      ...{ item, isEstimate, quantity, unit, cost: moneyText(cost, currency) },
    })),
    change: found.change && writtenChange(found.change, found.before, currency),
    periods: found.periods.map((each, at) => writtenPeriod(each, found.months[at] ?? '', currency)),
    menuEvents: menuEvents(menu)
      .filter(({ day }) => day < to)
      .map(({ day, channel, kind, price, before }) => ({
        ...{ date: dayText(day), channel, kind, price: money(price), before: money(before) },
      })),
    work: writtenWork(report, currency),
    smallBatch: {
      loss: money(report.loss),
      components: report.losses.map(({ item, lost }) => ({ item, lostPct: lost })),
    },
    allergens: writtenAllergens(found.allergens),
    development: writtenDevelopment(found.developed, currency),
    issues: writtenIssues(report.issues),
  };
}

type Money = (amount: number | null) => string | null;

function writtenFigures({ report: { figures }, mixes: [mix] }: DishFound, money: Money): DishAnswer['figures'] {
  if (figures === null) return null;
  const { sold, margin, halfKnown } = figures;
  const contribution = margin === null ? null : margin * sold;
  const whole = mix?.totals.margin ?? null;
  return {
    ...{ sold, comps: figures.comps, daysOnSale: figures.daysOnSale, share: figures.share },
    ...{ listPrice: money(figures.listPrice), netPrice: money(figures.netPrice), plateCost: money(figures.plateCost) },
    floor: money(halfKnown?.floor ?? null),
    linesMissing: halfKnown?.missing ?? null,
    linesTotal: halfKnown?.lines ?? null,
    estimated: figures.estimated,
    foodCostPct: figures.foodCost,
    margin: money(margin),
    contribution: money(contribution),
    contributionPct: contribution === null || whole === null || whole <= 0 ? null : contribution / whole,
  };
}

function writtenChange(change: DishChange, month: string, currency: string): DishAnswer['change'] {
  const text = (amount: number) => moneyText(amount, currency);
  const money: Money = (amount) => (amount === null ? null : text(amount));
  const both = ({ before, after }: Both<number | null>) => ({ before: money(before), after: money(after) });
  const { cost, contribution } = change;
  return {
    month,
    ...{ sold: change.sold, share: change.share, listPrice: both(change.listPrice), netPrice: both(change.netPrice) },
    margin: both(change.margin),
    plateCost: cost && {
      ...{ before: text(cost.before), atNewPrices: text(cost.atNewPrices), after: text(cost.after) },
      ...{ price: text(cost.price), recipe: text(cost.recipe) },
      ingredients: cost.lines.map(({ item, isEstimate, before, after, price, recipe }) => ({
        ...{ item, isEstimate, before: text(before), after: text(after), price: text(price), recipe: text(recipe) },
      })),
    },
    contribution: contribution && {
      ...{ before: text(contribution.before), after: text(contribution.after) },
      volume: text(contribution.parts.volume),
      mix: text(contribution.parts.mix),
      menuPrice: text(contribution.parts.menuPrice),
      discounts: text(contribution.parts.discounts),
      ingredientPrice: text(contribution.parts.ingredientPrice),
      recipe: text(contribution.parts.recipe),
    },
  };
}

function writtenPeriod(row: DishInPeriod, month: string, currency: string): DishPeriodAnswer {
  const money: Money = (amount) => (amount === null ? null : moneyText(amount, currency));
  return {
    ...{ month, from: dayText(row.period.from), to: dayText(row.period.to), onSale: row.onSale },
    ...{ sold: row.sold, comps: row.comps, share: row.share },
    ...{ listPrice: money(row.listPrice), netPrice: money(row.netPrice), plateCost: money(row.plateCost) },
    ...{ estimated: row.estimated, foodCostPct: row.foodCost, margin: money(row.margin) },
  };
}

function writtenWork({ work }: Dish, currency: string): DishAnswer['work'] {
  if (work === null) return null;
  const money: Money = (amount) => (amount === null ? null : moneyText(amount, currency));
  const graded = (each: typeof work.handsOn) => each.map((one) => ({ ...one, cost: money(one.cost) }));
  return {
    ...{ handsOn: graded(work.handsOn), plating: graded(work.plating) },
    ...{ recipeLabour: money(work.recipeLabour), platingMinutes: work.platingMinutes },
    ...{ platingCost: money(work.platingCost), afterLabour: money(work.afterLabour) },
    marginPerPlatingMinute: money(work.marginPerPlatingMinute),
    withoutMinutes: [...work.withoutMinutes],
  };
}

function writtenAllergens(found: DishFound['allergens']): DishAnswer['allergens'] {
  if (found === null) return null;
  const { row } = found;
  const of = (state: string) =>
    row.allergens.flatMap((each) => (each.state === state ? [{ allergen: each.allergen, from: [...each.from] }] : []));
  return {
    ...{ list: found.list, date: dayText(found.day) },
    ...{ contains: of('contains'), mayContain: of('may-contain'), unknown: of('unknown') },
    cautions: row.cautions.map(({ caution, from }) => ({ caution, from: [...from] })),
  };
}

function writtenDevelopment(developed: DevelopedDish | null, currency: string): DishAnswer['development'] {
  const last = developed?.trials.at(-1);
  if (!developed || !last) return null;
  const money: Money = (amount) => (amount === null ? null : moneyText(amount, currency));
  return {
    ...{ trials: developed.trials.length, hours: developed.hours, labour: money(developed.labour) },
    ...{ ingredients: money(developed.ingredients), cost: money(developed.cost), margin: money(developed.margin) },
    ...{ otherwise: money(developed.otherwise), payback: developed.payback, lastTrial: dayText(last.day) },
  };
}
