import type { KitchenMeasures } from '../../core/units';
import { type LineQuestion, lineQuestion, type StatedAmount } from '../../model/line-question';
import { leadingAmount } from './amount';
import { leadingUnit } from './unit-words';

/** How a line is to be read: what the venue's kitchen measures with, and whether it writes a decimal comma. */
export interface LineStyle {
  readonly measures: KitchenMeasures;
  readonly decimalComma: boolean;
}

const ABOUT =
  /^(?:(about|around|approx(?:imately)?|appr|roughly|circa|ca|nearly|almost|at least|up to|heaped|heaping|rounded|scant|generous|good)\b\.? ?|~ ?)/i;

/** A text without the word that makes an amount approximate, and the question that it raises. */
export function approximate(text: string): { readonly rest: string; readonly questions: readonly LineQuestion[] } {
  const found = ABOUT.exec(text);
  if (!found) return { rest: text, questions: [] };
  return { rest: text.slice(found[0].length), questions: [lineQuestion('approximate', { word: found[0].trim() })] };
}

/** A number and a unit, in figures or words, and nothing between them; null where there is none. */
export function plainAmount(text: string, style: LineStyle): (StatedAmount & { readonly rest: string }) | null {
  const amount = leadingAmount(text, style.decimalComma);
  const unit = amount && leadingUnit(amount.rest.replace(/^-(?=\p{L})/u, ''), style.measures);
  if (!amount || !unit || Number.isNaN(amount.quantity)) return null;
  return withOunces({ quantity: amount.quantity, unit: unit.unit, rest: unit.rest }, style);
}

/** 1 lb 4 oz is one amount: the ounces are added to the pounds. */
export function withOunces<Amount extends StatedAmount & { readonly rest: string }>(
  amount: Amount,
  style: LineStyle,
): Amount {
  const ounces = amount.unit === 'lb' ? plainAmount(amount.rest, style) : null;
  if (ounces?.unit !== 'oz' || ounces.quantity >= 16) return amount;
  return { ...amount, quantity: amount.quantity + ounces.quantity / 16, rest: ounces.rest };
}
