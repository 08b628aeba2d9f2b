import { byText } from '../../core/grouped';
import type { CostedPeriod } from '../costed-period';
import type { AllergenList } from './allergen-lists';
import { declaredIn } from './declared';
import { type ItemAllergens, itemAllergens } from './item-allergens';

/** The allergens of a list in something, and what its recipes warn of. */
export interface WhatsInIt extends ItemAllergens {
  /** raw egg, alcohol, liquid nitrogen, dry ice, and which recipes say so. */
  readonly cautions: readonly { readonly caution: string; readonly from: readonly string[] }[];
}

/** What was declared of all that goes into a thing on the days of a segment. */
export function whatsInIt(period: CostedPeriod, node: number, segment: number, list: AllergenList): WhatsInIt {
  const declared = declaredIn(period, node, segment);
  const cautions = [...declared.cautions].map(([caution, from]) => ({
    caution,
    from: [...new Set(from)].sort(byText),
  }));
  return {
    ...itemAllergens(declared, list),
    cautions: cautions.sort((a, b) => byText(a.caution, b.caution)),
  };
}
