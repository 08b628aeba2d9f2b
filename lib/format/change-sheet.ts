import { allocated } from '../core/allocation';
import { currencyDigits } from './currency-digits';
import { figure, signedFigure } from './figures';
import type { Purse } from './money';

/** The change of a plate cost; that of a DishAnswer is one. */
export interface CostChangeFigures {
  readonly before: string;
  readonly after: string;
  readonly price: string;
  readonly recipe: string;
  readonly ingredients: readonly {
    readonly item: string;
    readonly isEstimate: boolean;
    readonly before: string;
    readonly price: string;
    readonly recipe: string;
  }[];
}

export interface ChangeRow {
  readonly item: string;
  readonly isEstimate: boolean;
  readonly before: string;
  readonly price: string;
  readonly recipe: string;
  readonly after: string;
}

export interface ChangeSheet {
  readonly rows: readonly ChangeRow[];
  /** Ingredients that changed nothing that is printed, as one row; null where there are none. */
  readonly rest: (Omit<ChangeRow, 'item' | 'isEstimate'> & { readonly count: number }) | null;
  readonly total: Omit<ChangeRow, 'item' | 'isEstimate'>;
}

/**
 * The change of a plate cost as it is printed, with one decimal more than the currency has: every row adds up across (before, price,
 * recipe, after) and every column down to its total; what rounding leaves goes to the rows that it took most from.
 */
export function changeSheet(change: CostChangeFigures, purse: Purse): ChangeSheet {
  const digits = (currencyDigits(purse.currency) ?? 2) + 1;
  const steps = (amount: string): number => Number(amount) * 10 ** digits;
  const { ingredients } = change;
  const [before, after] = [Math.round(steps(change.before)), Math.round(steps(change.after))];
  const recipe = Math.round(steps(change.recipe));
  const price = after - before - recipe;
  const column = (whole: number, of: 'before' | 'price' | 'recipe') =>
    allocated(
      whole,
      ingredients.map((each) => steps(each[of])),
    );
  const [befores, prices, recipes] = [column(before, 'before'), column(price, 'price'), column(recipe, 'recipe')];
  const cells = ingredients.map(({ item, isEstimate }, at) => ({
    ...{ item, isEstimate, before: befores[at] ?? 0, price: prices[at] ?? 0, recipe: recipes[at] ?? 0 },
  }));
  const still = cells.filter((cell) => cell.price === 0 && cell.recipe === 0);
  const print = (cell: { readonly before: number; readonly price: number; readonly recipe: number }) => ({
    before: figure(cell.before / 10 ** digits, purse.locale, digits),
    price: signedFigure(cell.price / 10 ** digits, purse.locale, digits),
    recipe: signedFigure(cell.recipe / 10 ** digits, purse.locale, digits),
    after: figure((cell.before + cell.price + cell.recipe) / 10 ** digits, purse.locale, digits),
  });
  const stillBefore = still.reduce((sum, cell) => sum + cell.before, 0);
  return {
    rows: cells
      .filter((cell) => !still.includes(cell))
      .map((cell) => ({ item: cell.item, isEstimate: cell.isEstimate, ...print(cell) })),
    rest: still.length === 0 ? null : { count: still.length, ...print({ before: stillBefore, price: 0, recipe: 0 }) },
    total: print({ before, price, recipe }),
  };
}

/** Why a dish left more or less than before; that of a DishAnswer is one. */
export interface ContributionFigures {
  readonly before: string;
  readonly after: string;
  readonly volume: string;
  readonly mix: string;
  readonly menuPrice: string;
  readonly discounts: string;
  readonly ingredientPrice: string;
  readonly recipe: string;
}

export const CONTRIBUTION_PARTS = ['volume', 'mix', 'menuPrice', 'discounts', 'ingredientPrice', 'recipe'] as const;

export type ContributionPart = (typeof CONTRIBUTION_PARTS)[number];

/** The account from what it left before to what it left now, in the currency's own digits; the parts sum as printed. */
export function contributionAccount(
  contribution: ContributionFigures,
  purse: Purse,
): {
  readonly before: string;
  readonly parts: readonly { readonly part: ContributionPart; readonly figure: string }[];
  readonly after: string;
} {
  const digits = currencyDigits(purse.currency) ?? 2;
  const coins = (amount: string): number => Number(amount) * 10 ** digits;
  const [before, after] = [Math.round(coins(contribution.before)), Math.round(coins(contribution.after))];
  const printed = allocated(
    after - before,
    CONTRIBUTION_PARTS.map((part) => coins(contribution[part])),
  );
  const print = (count: number) => figure(count / 10 ** digits, purse.locale, digits);
  return {
    before: print(before),
    parts: CONTRIBUTION_PARTS.map((part, at) => ({
      part,
      figure: signedFigure((printed[at] ?? 0) / 10 ** digits, purse.locale, digits),
    })),
    after: print(after),
  };
}
