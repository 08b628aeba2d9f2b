import { countRows } from './rows/counts';
import { coversRows } from './rows/covers';
import { exchangeRateRows } from './rows/exchange-rates';
import { ingredientRows } from './rows/ingredients';
import { labourRows } from './rows/labour';
import { measureRows } from './rows/measures';
import { menuRows } from './rows/menu';
import { moveRows } from './rows/moves';
import { offerPriceRows } from './rows/offer-prices';
import { offerRows } from './rows/offers';
import { partRows } from './rows/parts';
import { purchaseRows } from './rows/purchases';
import { recipeLineRows } from './rows/recipe-lines';
import { recipeRows } from './rows/recipes';
import { saleRows } from './rows/sales';
import { supplierRows } from './rows/suppliers';
import { trialLineRows, trialRows } from './rows/trials';
import { venueRows } from './rows/venue';
import { yieldRows } from './rows/yields';

/** How the rows of each kind of file are read. */
export const ROW_KINDS = {
  venue: venueRows,
  labour: labourRows,
  exchange_rates: exchangeRateRows,
  ingredients: ingredientRows,
  measures: measureRows,
  parts: partRows,
  yields: yieldRows,
  suppliers: supplierRows,
  offers: offerRows,
  offer_prices: offerPriceRows,
  recipes: recipeRows,
  menu: menuRows,
  recipe_lines: recipeLineRows,
  sales: saleRows,
  covers: coversRows,
  purchases: purchaseRows,
  counts: countRows,
  moves: moveRows,
  trials: trialRows,
  trial_lines: trialLineRows,
} as const;
