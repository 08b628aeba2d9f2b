import { isNear } from '../core/near';

/** What a menu price has to follow when a plate cost moves. Money per portion, net of sales tax where nothing else is said. */
export interface PriceToHold {
  /** The price as it stands on the menu. */
  readonly menuPrice: number;
  /** Sales tax inside it: net = menu price / grossed. */
  readonly grossed: number;
  /** What is listed and what is achieved of it: discounts are between them. */
  readonly listedNet: number;
  readonly achieved: number;
  /** What the channel keeps, as a fraction. */
  readonly commission: number;
  readonly priceStep: number | null;
}

/**
 * The menu price that leaves the margin where it was when a plate cost changes by so much.
 *
 * net rise = change of f / (1 - commission); listed rise = net rise * listed / achieved * (1 + tax); the price is rounded up to the
 * price step. Null where the channel keeps everything or nothing is achieved.
 */
export function priceHoldingMargin(change: number, to: PriceToHold): number | null {
  return to.commission >= 1 ? null : risen(change / (1 - to.commission), to);
}

/**
 * The menu price that leaves food-cost % where it was: net rise = achieved * (food after / food before - 1). Null where there was no
 * food cost to hold.
 */
export function priceHoldingShare(foodBefore: number, foodAfter: number, to: PriceToHold): number | null {
  return foodBefore <= 0 ? null : risen(to.achieved * (foodAfter / foodBefore - 1), to);
}

function risen(netRise: number, { menuPrice, grossed, listedNet, achieved, priceStep }: PriceToHold): number | null {
  if (achieved <= 0) return null;
  if (netRise === 0) return menuPrice;
  const price = menuPrice + ((netRise * listedNet) / achieved) * grossed;
  return priceStep === null || priceStep <= 0 ? price : roundedUp(price, priceStep);
}

/** Up to the next multiple of a step; a price on one stays there, rounding noise or not. */
function roundedUp(price: number, step: number): number {
  const steps = price / step;
  const nearest = Math.round(steps);
  return (isNear(steps, nearest) ? nearest : Math.ceil(steps)) * step;
}
