import { z } from 'zod';
import { issueShape, moneyShape } from './common-shape';

const kinds = ['ingredient', 'component', 'dish', 'set_menu', 'extra'] as const;

/** The recipe that something is made by on the day. */
const recipeShape = z.strictObject({
  /** From which day this version holds; null: from the beginning. */
  validFrom: z.string().nullable(),
  /** What one batch gives after what every batch loses, before breakage; a plate gives 1 each. */
  usable: z.number().nullable(),
  usableUnit: z.string().nullable(),
  batchLossG: z.number().nullable(),
  /** Made but not served: every line below takes 1 / (1 - breakagePct) of what is stated. */
  breakagePct: z.number(),
  /** Air beaten in, as a share of the mix: usable is with it. */
  overrunPct: z.number().nullable(),
  /** Of a part of something bought: its share of the price of the whole. */
  costSharePct: z.number().nullable(),
});

/** The offer and the price point that a price comes from. */
const offerShape = z.strictObject({
  supplier: z.string(),
  code: z.string(),
  packCount: z.number(),
  packSize: z.number(),
  packUnit: z.string(),
  /** Of one pack, in `currency`. */
  price: moneyShape,
  currency: z.string(),
  /** Venue currency for one unit of `currency`; 1 for the venue's own. */
  rate: z.number(),
  priceKind: z.enum(['agreed', 'list', 'quote', 'invoice']),
  priceFrom: z.string(),
  /** Last day of an agreed price; null: open-ended. */
  priceTo: z.string().nullable(),
});

/** One line of what a cost is made of; its own lines are what it is made of itself, and their costs sum to its cost. */
export const costLineShape = z.strictObject({
  item: z.string(),
  /** estimate: the owner's, in place of a recipe. not_measured: quantity is the venue's share, unitPrice the food and drink it is taken of. */
  kind: z.enum([...kinds, 'estimate', 'not_measured']),
  /** Place in its recipe, from 1. */
  position: z.number().nullable(),
  /** As the recipe states it, for as much as the whole takes. */
  quantity: z.number().nullable(),
  unit: z.string().nullable(),
  as: z.enum(['prepared', 'bought']),
  /** Which yield, and which part, of what is bought. */
  use: z.string().nullable(),
  part: z.string().nullable(),
  /** The choice of which it is one, and its share of the guests. */
  choice: z.string().nullable(),
  sharePct: z.number().nullable(),
  /** made: the line makes it, so that bought and cost are below zero. used: made as a by-product, it is worth its credit. */
  byProduct: z.enum(['made', 'used']).nullable(),
  /** quantity x sharePct / usableYieldPct / (1 - breakagePct of the recipe it stands in), in boughtUnit: g, ml or each. */
  bought: z.number().nullable(),
  boughtUnit: z.string().nullable(),
  usableYieldPct: z.number().nullable(),
  /** Of one boughtUnit. */
  unitPrice: moneyShape.nullable(),
  /** bought x unitPrice; null where it is not known. */
  cost: moneyShape.nullable(),
  /** The known part of a cost that is not known. */
  floor: moneyShape.nullable(),
  department: z.enum(['food', 'drink', 'packaging']).nullable(),
  estimated: z.boolean(),
  offer: offerShape.nullable(),
  recipe: recipeShape.nullable(),
  issues: z.array(issueShape),
  /** Its lines are left out, since there are too many: ask for its own working. */
  closed: z.boolean(),
  get lines() {
    return z.array(costLineShape);
  },
});

export type CostLineAnswer = z.infer<typeof costLineShape>;

/** What the plate cost of a period is the mean of. */
const periodShape = z.strictObject({
  month: z.string(),
  from: z.string(),
  to: z.string(),
  sold: z.number(),
  /** Portion-weighted mean, the figure of the menu mix. */
  plateCost: moneyShape.nullable(),
  /** The mean is of these; channels apart where they cost differently. */
  spans: z.array(
    z.strictObject({
      channel: z.string().nullable(),
      from: z.string(),
      to: z.string(),
      sold: z.number(),
      plateCost: moneyShape.nullable(),
    }),
  ),
});

/** GET dishes/{item}/cost, `report dish-cost --json` and the workings of /menu: one shape. */
export const dishCostShape = z.strictObject({
  venue: z.string(),
  item: z.string(),
  kind: z.enum(kinds),
  date: z.string(),
  /** In which it is sold: packaging and courses can differ; null where it is sold in none. */
  channel: z.string().nullable(),
  currency: z.string(),
  locale: z.string(),
  /** What plateCost is the cost of: one portion; of a component, one batch; null where a batch is not measured. */
  per: z.strictObject({ quantity: z.number(), unit: z.string() }).nullable(),
  plateCost: moneyShape.nullable(),
  floor: moneyShape.nullable(),
  linesMissing: z.number().nullable(),
  linesTotal: z.number().nullable(),
  estimated: z.boolean(),
  recipeLabour: moneyShape.nullable(),
  recipe: recipeShape.nullable(),
  /** The period that was asked about, where one was: the day is then the last one in it on which the item was on sale. */
  period: periodShape.nullable(),
  lines: z.array(costLineShape),
  issues: z.array(issueShape),
});

export type DishCostAnswer = z.infer<typeof dishCostShape>;
