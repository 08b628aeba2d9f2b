import { z } from 'zod';
import { issueShape, moneyShape } from './common-shape';
import { adviceShape, mixClassShape, modelShape } from './menu-mix-shape';

const fraction = z.number();
const money = moneyShape.nullable();
const both = <Shape extends z.ZodType>(shape: Shape) => z.strictObject({ before: shape, after: shape });
const work = z.array(z.strictObject({ grade: z.string().nullable(), minutes: z.number(), cost: money }));

/** One period of a dish. */
export const dishPeriodShape = z.strictObject({
  month: z.string(),
  from: z.string(),
  to: z.string(),
  onSale: z.boolean(),
  /** Of an extra: the guests that were given it. */
  sold: z.number(),
  comps: z.number(),
  share: fraction.nullable(),
  listPrice: money,
  netPrice: money,
  plateCost: money,
  estimated: z.boolean(),
  foodCostPct: fraction.nullable(),
  margin: money,
});

/** How a model classes a dish in the period. */
const standingShape = z.strictObject({
  model: modelShape,
  class: mixClassShape.nullable(),
  classShares: z.partialRecord(mixClassShape, fraction).nullable(),
  settled: z.boolean().nullable(),
  between: z.tuple([mixClassShape, mixClassShape]).nullable(),
});

/** Why the plate cost and what the dish left are not what they were in the period before. */
const changeShape = z.strictObject({
  month: z.string(),
  sold: both(z.number()),
  share: both(fraction.nullable()),
  listPrice: both(money),
  netPrice: both(money),
  margin: both(money),
  /** after - before = price + recipe; null where it is not costed in both. */
  plateCost: z
    .strictObject({
      before: moneyShape,
      /** The recipe of the period before at the prices of this one. */
      atNewPrices: moneyShape,
      after: moneyShape,
      price: moneyShape,
      recipe: moneyShape,
      ingredients: z.array(
        z.strictObject({
          item: z.string(),
          isEstimate: z.boolean(),
          before: moneyShape,
          after: moneyShape,
          price: moneyShape,
          recipe: moneyShape,
        }),
      ),
    })
    .nullable(),
  /** after - before = the sum of the parts. */
  contribution: z
    .strictObject({
      before: moneyShape,
      after: moneyShape,
      volume: moneyShape,
      mix: moneyShape,
      menuPrice: moneyShape,
      discounts: moneyShape,
      ingredientPrice: moneyShape,
      recipe: moneyShape,
    })
    .nullable(),
});

const allergen = z.strictObject({ allergen: z.string(), from: z.array(z.string()) });

/** GET months/{month}/dishes/{item}, `report dish --json` and the page of a dish: one shape. */
export const dishShape = z.strictObject({
  venue: z.string(),
  month: z.string(),
  period: z.strictObject({ from: z.string(), to: z.string() }),
  currency: z.string(),
  locale: z.string(),
  item: z.string(),
  kind: z.enum(['ingredient', 'component', 'dish', 'set_menu', 'extra']),
  section: z.string().nullable(),
  /** The section in whose mix it stands; null is the whole menu. */
  mixSection: z.string().nullable(),
  components: z.number().nullable(),
  /** Whether it was on the menu, sold or given in the period. */
  onSale: z.boolean(),
  /** The last day of the period. */
  lastDay: z.string(),
  /** Since when it has been on the menu without a break; null: not on it on the last day, or from the beginning. */
  onMenuSince: z.string().nullable(),
  /** The menu price of the last day on which it had one in the period, as listed. */
  menuPrice: money,
  /** Null where it was neither on the menu nor sold. */
  figures: z
    .strictObject({
      sold: z.number(),
      comps: z.number(),
      daysOnSale: z.number(),
      share: fraction.nullable(),
      listPrice: money,
      netPrice: money,
      plateCost: money,
      floor: money,
      linesMissing: z.number().nullable(),
      linesTotal: z.number().nullable(),
      estimated: z.boolean(),
      foodCostPct: fraction.nullable(),
      margin: money,
      contribution: money,
      /** contribution / what all costed items of the mix left. */
      contributionPct: fraction.nullable(),
    })
    .nullable(),
  /** Of an extra: what every guest was given. */
  given: z.strictObject({ covers: z.number(), perCover: money, cost: money }).nullable(),
  standings: z.array(standingShape),
  /**
   * At which price of its dearest ingredients it would change its class by Kasavana & Smith, if they had that price all period and nothing
   * else moved. Prices are of a kilogram, litre or piece (`unit`: kg, l or each); null where no price does.
   */
  turning: z.array(
    z.strictObject({
      ingredient: z.string(),
      unit: z.enum(['kg', 'l', 'each']),
      priceNow: money,
      turningPrice: money,
      classBeyond: mixClassShape.nullable(),
    }),
  ),
  /** Null where it is in no mix, or its margin is not known. */
  advice: adviceShape.nullable(),
  /** What one portion takes of what is bought, as the mean of the period; the costs sum to the plate cost. */
  bought: z.array(
    z.strictObject({
      item: z.string(),
      isEstimate: z.boolean(),
      quantity: z.number(),
      unit: z.string(),
      cost: moneyShape,
    }),
  ),
  /** Null where it was not on sale in this period or the one before. */
  change: changeShape.nullable(),
  /** Up to eighteen periods, the one asked about last. */
  periods: z.array(dishPeriodShape),
  menuEvents: z.array(
    z.strictObject({
      date: z.string(),
      channel: z.string(),
      kind: z.enum(['came', 'went', 'price']),
      price: money,
      before: money,
    }),
  ),
  work: z
    .strictObject({
      handsOn: work,
      plating: work,
      recipeLabour: money,
      platingMinutes: z.number().nullable(),
      platingCost: money,
      afterLabour: money,
      marginPerPlatingMinute: money,
      withoutMinutes: z.array(z.string()),
    })
    .nullable(),
  smallBatch: z.strictObject({
    loss: money,
    components: z.array(z.strictObject({ item: z.string(), lostPct: fraction.nullable() })),
  }),
  /** Of everything declared of what is in it; null where it is neither on offer nor given. */
  allergens: z
    .strictObject({
      list: z.enum(['eu', 'us']),
      date: z.string(),
      contains: z.array(allergen),
      mayContain: z.array(allergen),
      unknown: z.array(allergen),
      cautions: z.array(z.strictObject({ caution: z.string(), from: z.array(z.string()) })),
    })
    .nullable(),
  /** Null where nothing was tried. */
  development: z
    .strictObject({
      trials: z.number(),
      hours: z.number(),
      labour: money,
      ingredients: money,
      cost: money,
      margin: money,
      otherwise: money,
      payback: z.number().nullable(),
      lastTrial: z.string(),
    })
    .nullable(),
  issues: z.array(issueShape),
});

export type DishAnswer = z.infer<typeof dishShape>;
export type DishPeriodAnswer = z.infer<typeof dishPeriodShape>;
