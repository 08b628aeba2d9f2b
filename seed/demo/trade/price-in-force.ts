import { baseAmount, convert, ingredientSizes } from '../kitchen/measures';
import { ingredientNamed } from '../kitchen/recipe-book';
import type { Offer, Supplier } from '../shapes';
import { SUPPLIERS } from '../suppliers/all-suppliers';
import { POUND_RATES } from '../suppliers/greywick-imports';

const RANK = { agreed: 0, list: 1, invoice: 2, quote: 3 } as const;

/** The price of one pack on a day, in the supplier's currency: agreed before list before invoice; null before the first. */
export function packPriceOn(offer: Offer, day: string): number | null {
  const holds = offer.prices.filter(
    (point) =>
      point.kind !== 'quote' &&
      point.minimumPacks === undefined &&
      point.from <= day &&
      (point.to === undefined || day <= point.to),
  );
  const best = [...holds].sort((a, b) => RANK[a.kind] - RANK[b.kind] || b.from.localeCompare(a.from))[0];
  return best ? best.price : null;
}

/** Euros for one unit of a supplier's currency on a day. */
export function rateOn(supplier: Supplier, day: string): number {
  if (supplier.currency === undefined) return 1;
  const rate = POUND_RATES.filter(([from]) => from <= day).at(-1);
  if (!rate) throw new Error(`no rate of ${supplier.currency} on ${day}`);
  return rate[1];
}

/** Pack content in the base unit in which the ingredient is bought. */
export function packContent(offer: Offer): number {
  const ingredient = ingredientNamed(offer.ingredient);
  if (!ingredient) throw new Error(`${offer.code} is for ${offer.ingredient}, which nobody knows`);
  const [count, size, unit] = offer.pack;
  const { base, amount } = baseAmount(offer.ingredient, size, unit);
  return count * convert(offer.ingredient, amount, base, ingredient.measure, ingredientSizes(ingredient));
}

/** From whom an ingredient is bought on a day: the latest choice; null where nobody offers it. */
export function chosenOn(
  ingredient: string,
  day: string,
): { readonly supplier: Supplier; readonly offer: Offer } | null {
  const choices = SUPPLIERS.flatMap((supplier) =>
    supplier.offers
      .filter((offer) => offer.ingredient === ingredient && offer.chosen !== 'no')
      .map((offer) => ({ supplier, offer, from: offer.chosen === 'always' ? '' : offer.chosen })),
  );
  const inForce = choices.filter(({ from }) => from <= day).sort((a, b) => a.from.localeCompare(b.from));
  return inForce.at(-1) ?? null;
}

/** Euros for one base unit of an ingredient on a day; null where it has no price. */
export function unitPriceOn(ingredient: string, day: string): number | null {
  const chosen = chosenOn(ingredient, day);
  if (!chosen) return null;
  const price = packPriceOn(chosen.offer, day);
  return price === null ? null : (price * rateOn(chosen.supplier, day)) / packContent(chosen.offer);
}
