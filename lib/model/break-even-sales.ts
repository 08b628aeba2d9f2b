/**
 * Change in portions sold at which a change of price and of plate cost leaves the contribution where it was, as a fraction of today's
 * portions: below zero what a rise may lose, above zero what a cut or a dearer plate must gain.
 *
 * -(dP - df) / (CM0 + dP - df), the break-even sales change of cost-volume-profit analysis (Nagle et al., The Strategy and Tactics of
 * Pricing) against the margin before both; with df = 0 it is -dP / (CM + dP). Money in venue currency per portion, net of tax.
 * Null where the margin left is not above zero: no number of portions makes that price pay.
 */
export function breakEvenSalesChange(margin: number, priceChange: number, costChange = 0): number | null {
  const change = priceChange - costChange;
  const left = margin + change;
  return left <= 0 ? null : 0 - change / left;
}
