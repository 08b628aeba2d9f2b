import type { Day } from '../core/days';
import { type CostedPeriod, costPeriod } from './costed-period';
import type { Facts, ItemId, RecipeVersion, Trial } from './facts';
import type { Issue } from './issue';
import { costPerMinute } from './labour-rates';
import { plateCost } from './plate-cost';
import { issuesOf } from './reached';

/** What one trial cost, in venue currency. */
export interface TrialCost {
  readonly trial: Trial;
  /** hours * cost per hour of the grade on the day; null where that is not stated. */
  readonly labour: number | null;
  /** What was used, as it was taken, at the prices of the day, without q; null where a price is not known. */
  readonly ingredients: number | null;
  readonly issues: readonly Issue[];
}

/** No item has this id: a trial is costed as a dish of its own, one portion of which is all that was used. */
const TRIED = -1 as ItemId;

/** The cost of each trial: labour and ingredients at the price of that day. In the order in which they are stated. */
export function trialCosts(facts: Facts): readonly TrialCost[] {
  return facts.trials.map((trial) => {
    const range = { from: trial.day, to: (trial.day + 1) as Day };
    const name = facts.items.find(({ id }) => id === trial.item)?.name ?? '';
    const period = costPeriod(
      {
        ...facts,
        venue: { ...facts.venue, qFactor: 0 },
        items: [...facts.items, { id: TRIED, kind: 'dish', name: `${name}, trial` }],
        recipeVersions: [...facts.recipeVersions, asRecipe(trial)],
        menuPrices: [],
        sales: [{ day: trial.day, item: TRIED, channel: '', sold: 0, comps: 1, net: 0, soldWithoutRevenue: 0 }],
        covers: [],
      },
      range,
    );
    const { complete, total } = usedOf(period, trial);
    const rate = costPerMinute(period.labour.rates, trial.grade, trial.day);
    return {
      trial,
      labour: rate === null ? null : trial.hours * 60 * rate,
      ingredients: complete ? total : null,
      issues: [...asked(period), ...(rate === null ? [noRate(trial, name)] : [])],
    };
  });
}

function usedOf(period: CostedPeriod, { lines }: Trial): { readonly complete: boolean; readonly total: number } {
  if (lines.length === 0) return { complete: true, total: 0 }; // a trial at the pass uses nothing
  return plateCost(period, nodeOf(period), 0);
}

const nodeOf = (period: CostedPeriod): number => period.nodeOf.get(TRIED) ?? -1;

const asked = (period: CostedPeriod): readonly Issue[] =>
  issuesOf(period, [nodeOf(period)]).filter(({ code }) => code !== 'setting-defaulted' && code !== 'no-lines');

function noRate({ grade, day }: Trial, name: string): Issue {
  return { code: 'no-labour-rate', about: grade, facts: { recipe: name }, day };
}

function asRecipe({ lines }: Trial): RecipeVersion {
  const line = { as: 'bought' as const, use: null, part: null, choice: null, choiceShare: null, channel: null };
  return {
    ...{ item: TRIED, validFrom: null, section: null, department: null, yieldQuantity: null, yieldUnit: null },
    ...{ alsoQuantity: null, alsoUnit: null, batchLossG: null, breakage: 0, estimatedCost: null, overrun: null },
    ...{ handsOnMinutes: null, grade: null, platingMinutes: null, platingGrade: null },
    ...{ shelfLifeDays: null, smallestBatch: null, thrownAtClose: false, cautions: [], refusedLines: 0 },
    lines: lines.map((used, index) => ({ ...used, ...line, position: index + 1, byProductCredit: null })),
  };
}
