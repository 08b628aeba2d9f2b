import { z } from 'zod';
import { issueShape, moneyShape } from './common-shape';
import { dishCostShape } from './dish-cost-shape';

const kinds = ['ingredient', 'component', 'dish', 'set_menu', 'extra'] as const;
const units = ['g', 'ml', 'each'] as const;
const day = z.string();
const text = z.string().nullable();

const head = { venue: z.string(), date: day, currency: z.string(), locale: z.string() };

/** A kilogram, a litre or a piece; a batch; a portion: what a cost is the cost of. */
const perShape = z.strictObject({ quantity: z.number(), unit: z.enum(units) });

/** GET ingredients */
export const ingredientsShape = z.strictObject({
  ...head,
  items: z.array(
    z.strictObject({
      id: z.number(),
      item: z.string(),
      productGroup: text,
      department: z.enum(['food', 'drink', 'packaging']).nullable(),
      /** Null: no version is in force on the date. */
      measure: z.enum(units).nullable(),
      /** Of one base unit (g, ml or each), as bought. */
      unitPrice: moneyShape.nullable(),
      per: perShape.nullable(),
      /** Of so much of it, as bought; and of so much that can be used. */
      price: moneyShape.nullable(),
      usablePrice: moneyShape.nullable(),
      usableYieldPct: z.number().nullable(),
      supplier: text,
      /** Declared words; an empty list is declared none, null is not known. */
      contains: z.array(z.string()).nullable(),
      mayContain: z.array(z.string()).nullable(),
      /** How many recipes use it, in any of their versions. */
      recipes: z.number(),
      issues: z.array(issueShape),
    }),
  ),
});
export type IngredientsAnswer = z.infer<typeof ingredientsShape>;

/** Cells by the columns of the data folder, as its files write them: per cent as per cent, null where blank. */
const cellsShape = z.record(z.string(), z.string().nullable());

/** One version as it was written; an ingredient's has no lines. */
const versionShape = z.strictObject({
  validFrom: day.nullable(),
  /** Whether it holds on the date. */
  inForce: z.boolean(),
  /** Whether its first day is closed, so that it can no longer change. */
  closed: z.boolean(),
  cells: cellsShape,
  lines: z.array(cellsShape),
});

const usesShape = z.array(
  z.strictObject({ id: z.number(), item: z.string(), kind: z.enum(kinds), versions: z.array(day.nullable()) }),
);

const writtenShape = {
  id: z.number(),
  item: z.string(),
  kind: z.enum(kinds),
  /** An edit has to carry it: the number of the last change of the item. */
  revision: z.number(),
  /** The last closed day; null: none is. */
  closedThrough: day.nullable(),
  versions: z.array(versionShape),
  /** Recipes that use it, by name. */
  whereUsed: usesShape,
};

/** GET ingredients/{item} */
export const ingredientShape = z.strictObject({
  ...head,
  ...writtenShape,
  measures: z.array(cellsShape),
  parts: z.array(cellsShape),
  yields: z.array(cellsShape),
  offers: z.array(
    z.strictObject({
      supplier: z.string(),
      code: z.string(),
      packCount: z.number(),
      packSize: z.number(),
      packUnit: z.string(),
      chosen: z.boolean(),
      /** Of a pack, in `currency`; with what kind of price it is and from when it holds. */
      price: moneyShape.nullable(),
      currency: text,
      priceKind: z.enum(['agreed', 'list', 'quote', 'invoice']).nullable(),
      priceFrom: day.nullable(),
      /** Of one base unit, in venue currency. */
      unitPrice: moneyShape.nullable(),
      issues: z.array(issueShape),
    }),
  ),
  issues: z.array(issueShape),
});
export type IngredientAnswer = z.infer<typeof ingredientShape>;

/** GET recipes */
export const recipesShape = z.strictObject({
  ...head,
  items: z.array(
    z.strictObject({
      id: z.number(),
      item: z.string(),
      kind: z.enum(kinds),
      section: text,
      /** From which day the version in force holds; null: from the beginning, or none is (hasVersion). */
      validFrom: day.nullable(),
      hasVersion: z.boolean(),
      onMenu: z.boolean(),
      per: perShape.nullable(),
      plateCost: moneyShape.nullable(),
      floor: moneyShape.nullable(),
      linesMissing: z.number().nullable(),
      linesTotal: z.number().nullable(),
      estimated: z.boolean(),
      recipeLabour: moneyShape.nullable(),
      recipes: z.number(),
    }),
  ),
});
export type RecipesAnswer = z.infer<typeof recipesShape>;

const allergenShape = z.strictObject({
  allergen: z.string(),
  state: z.enum(['contains', 'may-contain', 'unknown', 'none-declared']),
  from: z.array(z.string()),
});

/** What is in something by what was declared, and what its recipes warn of. */
export const whatsInItShape = z.strictObject({
  /** Whose list: the EU's 14, or the nine of US law. */
  list: z.enum(['eu', 'us']),
  allergens: z.array(allergenShape),
  unknownFrom: z.array(z.string()),
  otherWords: z.array(z.string()),
  cautions: z.array(z.strictObject({ caution: z.string(), from: z.array(z.string()) })),
});

/** GET recipes/{item} */
export const recipeShape = z.strictObject({
  ...head,
  ...writtenShape,
  /** Lines of its versions that a file could not bring and that wait. */
  refusedLines: z.number(),
  /** What it costs on the date, line by line. */
  cost: dishCostShape.omit({ period: true }),
  whatsInIt: whatsInItShape,
});
export type RecipeAnswer = z.infer<typeof recipeShape>;
