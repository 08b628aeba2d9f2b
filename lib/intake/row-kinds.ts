import { coversRows } from './rows/covers';
import { ingredientRows } from './rows/ingredients';
import { measureRows } from './rows/measures';
import { menuRows } from './rows/menu';
import { offerPriceRows } from './rows/offer-prices';
import { offerRows } from './rows/offers';
import { recipeLineRows } from './rows/recipe-lines';
import { recipeRows } from './rows/recipes';
import { saleRows } from './rows/sales';
import { supplierRows } from './rows/suppliers';
import { venueRows } from './rows/venue';

/** How the rows of each kind of file are read. */
export const ROW_KINDS = {
  venue: venueRows,
  ingredients: ingredientRows,
  measures: measureRows,
  suppliers: supplierRows,
  offers: offerRows,
  offer_prices: offerPriceRows,
  recipes: recipeRows,
  menu: menuRows,
  recipe_lines: recipeLineRows,
  sales: saleRows,
  covers: coversRows,
} as const;
