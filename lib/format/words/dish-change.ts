import type { ContributionPart } from '../change-sheet';
import { currencySign, type Purse } from '../money';
import { periodName } from '../periods';
import { countWord } from '../portions';

export const CHANGE = {
  ingredient: 'Bought for a portion',
  price: 'Price',
  recipe: 'Recipe',
  dearer: 'dearer or cheaper',
  moreOrLess: 'more or less of it',
  total: 'Plate cost',
  account: 'What it left, and why that changed',
} as const;

const PARTS: Readonly<Record<ContributionPart, string>> = {
  volume: 'More or fewer portions of everything',
  mix: 'Its share of them',
  menuPrice: 'Menu price',
  discounts: 'Discounts',
  ingredientPrice: 'Prices of what is bought',
  recipe: 'Recipe',
};

export function partName(part: ContributionPart): string {
  return PARTS[part];
}

export function changeTitle(since: string, locale: string): string {
  return `What changed since ${periodName(since, locale)}`;
}

/** Where no price and no recipe changed what is printed. */
export function sameWords(since: string, cost: string, purse: Purse): string {
  return `Since ${periodName(since, purse.locale)} neither prices nor the recipe changed the plate cost of ${currencySign(purse)}${cost}.`;
}

/** Heads and units of the table of the change. */
export function changeHeads(
  before: string,
  after: string,
  purse: Purse,
): readonly (readonly [name: string, unit: string])[] {
  const sign = currencySign(purse);
  return [
    [CHANGE.ingredient, ''],
    [periodName(before, purse.locale), sign],
    [CHANGE.price, CHANGE.dearer],
    [CHANGE.recipe, CHANGE.moreOrLess],
    [periodName(after, purse.locale), sign],
  ];
}

export function restName(count: number, locale: string): string {
  return `${countWord(count, locale)} that did not change`.replace(/^./, (letter) => letter.toUpperCase());
}

export function leftIn(month: string, locale: string): string {
  return `Left in ${periodName(month, locale)}`;
}
