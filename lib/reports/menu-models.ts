import type { DayRange } from '../core/days';
import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { issueList } from '../model/issue-list';
import { labourIssues } from '../model/labour-issues';
import type { ClassShares } from '../model/mix/certainty';
import { goalValue } from '../model/mix/goal-value';
import { type Leaning, leaning } from '../model/mix/leaning';
import { classIssues, modelIssues, sectionIssues } from '../model/mix/mix-issues';
import type { MenuAverages, MixClass, ModelName } from '../model/mix/mix-model';
import { MIX_MODELS } from '../model/mix/mix-models';
import { type ClassedItem, RESAMPLES, sectionMix } from '../model/mix/section-mix';
import { verdict } from '../model/mix/settled';
import { itemSection } from '../model/offered';
import { issuesOf } from '../model/reached';

/** Where one model puts an item, and how sure that is. */
export interface ModelStanding {
  readonly model: ModelName;
  /** Null where the model cannot say. */
  readonly class: MixClass | null;
  readonly leaning: Leaning | null;
  readonly classShares: ClassShares | null;
  readonly settled: boolean | null;
  readonly between: readonly [MixClass, MixClass] | null;
}

export interface ModelledItem {
  readonly id: ItemId;
  readonly item: string;
  readonly section: string | null;
  readonly sold: number;
  /** sold / expected: what the volume cut looks at; null where nothing was expected. */
  readonly popularity: number | null;
  readonly netPrice: number | null;
  readonly foodCost: number | null;
  readonly margin: number | null;
  readonly contribution: number | null;
  readonly goalValue: number | null;
  readonly recipeLabour: number | null;
  /** In the order of the models. */
  readonly standings: readonly ModelStanding[];
  /** Whether all models that can say lean the same way; null where fewer than two can. */
  readonly agree: boolean | null;
}

/** The models side by side, on the same items and days. */
export interface MenuModels {
  readonly venue: VenueSettings;
  readonly period: DayRange;
  readonly section: string | null;
  readonly tradingDays: number;
  readonly resamples: number | null;
  readonly models: readonly ModelName[];
  /** What items are held against; null where nothing with a known margin was sold. */
  readonly menu: MenuAverages | null;
  /** What leaves most first; what is not costed last. */
  readonly items: readonly ModelledItem[];
  readonly issues: readonly Issue[];
}

export interface MenuModelsOptions {
  readonly section: string | null;
  /** The period before, which has to agree before a class is called settled. */
  readonly previous?: CostedPeriod;
  readonly resamples?: number;
}

/** The classes that every model gives to the items of a section, and where the models agree and part. */
export function menuModels(period: CostedPeriod, options: MenuModelsOptions): MenuModels {
  const { section, previous, resamples = RESAMPLES } = options;
  const models = Object.values(MIX_MODELS);
  const mixes = models.map((model) => ({
    model,
    mix: sectionMix(period, section, model, resamples),
    before: previous ? sectionMix(previous, section, model, resamples).items : [],
  }));
  const [first] = mixes;
  if (!first) throw new Error('there is always a model');
  const labour = mixes.find(({ model }) => model.asksLabour) ?? first;
  const items = first.mix.items.map((item, at): ModelledItem => {
    const standings = mixes.map(({ model, mix, before }): ModelStanding => {
      const own = mix.items[at];
      const earlier = before.find(({ thing }) => thing.id === item.thing.id);
      const classShares = own?.certainty?.classShares ?? null;
      const standing = { class: own?.class ?? null, classShares };
      const was = earlier ? { class: earlier.class, classShares: earlier.certainty?.classShares ?? null } : null;
      return {
        model: model.name,
        ...standing,
        leaning: standing.class === null ? null : leaning(standing.class),
        ...verdict(standing, was),
      };
    });
    return modelled(item, standings, labour.mix.items[at]?.labour ?? null, period.venue.variableCost);
  });
  const nodes = first.mix.items.map(({ node }) => node);
  const days = first.mix.trading.days.length;
  const found = issueList();
  for (const issue of [
    ...issuesOf(period, nodes),
    ...models.flatMap(({ name }) => modelIssues(period.venue.name, name, period.venue)),
    ...labourIssues(period, nodes),
    ...sectionIssues(section ?? period.venue.name, items.length, days, period.waiting.rows > 0),
    ...first.mix.items.flatMap((item) => classIssues(item.thing.name, item.daysOnSale, days)),
  ]) {
    found.add(issue);
  }
  return {
    venue: period.venue,
    period: period.range,
    section,
    tradingDays: days,
    resamples: first.mix.resamples,
    models: models.map(({ name }) => name),
    menu: labour.mix.menu,
    items: items.sort(
      (a, b) =>
        (a.contribution === null ? 1 : 0) - (b.contribution === null ? 1 : 0) ||
        (b.contribution ?? 0) - (a.contribution ?? 0) ||
        byText(nameKey(a.item), nameKey(b.item)),
    ),
    issues: found.issues(),
  };
}

function modelled(
  item: ClassedItem,
  standings: readonly ModelStanding[],
  recipeLabour: number | null,
  variableCost: number | null,
): ModelledItem {
  const { thing, sold, expected, netPrice, foodCost, margin } = item;
  const leanings = standings.flatMap((standing) => standing.leaning ?? []);
  return {
    id: thing.id,
    item: thing.name,
    section: itemSection(thing),
    sold,
    popularity: expected > 0 ? sold / expected : null,
    ...{ netPrice, foodCost, margin },
    contribution: margin === null ? null : margin * sold,
    goalValue:
      foodCost === null || netPrice === null || variableCost === null
        ? null
        : goalValue(foodCost, sold, netPrice, variableCost),
    recipeLabour,
    standings,
    agree: leanings.length < 2 ? null : new Set(leanings).size === 1,
  };
}
