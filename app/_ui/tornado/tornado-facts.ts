import { currencySign, moneyFigure, type Purse, printedCoins, signedCoins } from '@/lib/format/money';
import { unitName } from '@/lib/format/words/price-changes';
import { paidRange, SPREAD, spreadHeads, unmovedNote } from '@/lib/format/words/price-spread';
import type { Tornado } from '@/lib/reports/tornado';
import type { TornadoFacts, TornadoRow } from './tornado';

/** Bars that are drawn; the others matter less. */
const DRAWN = 8;

/** The widest bars of a tornado on one axis, as they are printed; null where no price ever moved. */
export function tornadoFacts({ bars, unmoved }: Tornado, purse: Purse): TornadoFacts | null {
  const drawn = bars.slice(0, DRAWN);
  if (drawn.length === 0) return null;
  const ends = drawn.flatMap(({ atLowest, atHighest }) => [atLowest, atHighest]);
  const low = Math.min(0, ...ends);
  const high = Math.max(0, ...ends);
  const span = high - low || 1;
  const at = (value: number): number => (value - low) / span;
  const change = (value: number): Pick<TornadoRow['dear'], 'text' | 'tone'> => {
    const coins = printedCoins(value, purse.currency);
    return { text: signedCoins(coins, purse), tone: coins === 0 ? 'plain' : coins < 0 ? 'dear' : 'spare' };
  };
  return {
    caption: SPREAD.caption,
    heads: spreadHeads(currencySign(purse)),
    zero: at(0),
    rows: drawn.map(({ goods, range, atLowest, atHighest }) => ({
      item: goods.name,
      prices: paidRange(moneyFigure(range.lowest, purse), moneyFigure(range.highest, purse), unitName(goods.unit)),
      dear: { at: at(Math.min(0, atHighest)), ...change(atHighest) },
      spare: { at: at(Math.max(0, atLowest)), ...change(atLowest) },
    })),
    note: unmovedNote(unmoved.length, bars.length - drawn.length, purse.locale),
  };
}
