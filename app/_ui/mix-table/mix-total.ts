import type { MenuMixAnswer } from '@/lib/answers/menu-mix-shape';
import { figure, perCentFigure } from '@/lib/format/figures';
import { coinsFigure, moneyFigure, printedCoins } from '@/lib/format/money';
import { portionsFigure } from '@/lib/format/portions';
import { costedOnly, dishCount, type MixColumn, TABLE } from '@/lib/format/words/mix-table';

/** The last row: counts and money are the sums of the rows as printed; prices and margins are means of a portion. */
export interface MixTotal {
  readonly label: string;
  readonly note: string | null;
  readonly cells: Readonly<Partial<Record<MixColumn, string>>>;
}

export function mixTotal(mix: MenuMixAnswer, locale: string): MixTotal {
  const purse = { currency: mix.currency, locale };
  const { totals } = mix;
  const costed = mix.items.filter((item) => item.margin !== null);
  const perPortion = (amount: string | null, portions: number) =>
    amount === null || portions === 0 ? TABLE.unknown : moneyFigure(Number(amount) / portions, purse);
  const coins = costed.reduce((sum, item) => sum + printedCoins(item.contribution ?? '0', mix.currency), 0);
  // a price is a mean of the portions whose price is known in full
  const known = mix.items.filter((item) => item.sold > 0 && item.netPrice !== null);
  const priced = known.reduce((sum, item) => sum + item.sold, 0);
  const brought = known.length === 0 ? null : String(known.reduce((sum, item) => sum + Number(item.revenue), 0));
  const isPartial = costed.length < mix.items.length;
  return {
    label: dishCount(mix.items.length),
    note: isPartial && costed.length > 0 ? costedOnly(costed.length) : null,
    cells: {
      sold: portionsFigure(totals.sold, locale),
      comps: totals.comps === 0 ? TABLE.none : portionsFigure(totals.comps, locale),
      share: totals.sold === 0 ? TABLE.none : figure(100, locale, 1),
      price: perPortion(brought, priced),
      plateCost: perPortion(totals.plateCost, totals.costedSold),
      foodCost: totals.foodCostPct === null ? TABLE.unknown : perCentFigure(totals.foodCostPct, locale),
      leaves: perPortion(totals.margin, totals.costedSold),
      contribution: totals.margin === null ? TABLE.unknown : coinsFigure(coins, purse),
    },
  };
}
