import type { MenuMixAnswer } from '@/lib/answers/menu-mix-shape';
import { perCentFigure } from '@/lib/format/figures';
import { moneyFigure, type Purse } from '@/lib/format/money';
import type { Phrase } from '@/lib/format/phrase';
import { portionsFigure } from '@/lib/format/portions';
import { adviceSentences } from '@/lib/format/words/advice';
import { isOnTheLine } from '@/lib/format/words/classes';
import { atLeast, classWords, type MixColumn, missingLines, sureness, TABLE } from '@/lib/format/words/mix-table';
import type { MarkShape } from '../mark-shape';

/** A cell as it is printed: plain, faint (a dull nothing), or a word that leads to what is missing. */
export interface Cell {
  readonly text: string;
  readonly tone: 'plain' | 'faint' | 'unknown';
}

export type SortKey = number | string | null;

export interface MixRow {
  readonly item: string;
  readonly shape: MarkShape;
  readonly hollow: boolean;
  /** Under the name: only what is out of the ordinary. */
  readonly note: string | null;
  readonly className: string;
  readonly cells: Readonly<Record<Exclude<MixColumn, 'item'>, Cell>>;
  readonly keys: Readonly<Record<MixColumn, SortKey>>;
  readonly bar: readonly [number, number] | null;
  /** What it would take, of a dish that is on the line or leaves less than the average; null: nothing is said. */
  readonly advice: readonly Phrase[] | null;
  /** The plate cost opens to its working: not where there is nothing that it could be made up of. */
  readonly opens: boolean;
}

type Item = MenuMixAnswer['items'][number];

const plain = (text: string): Cell => ({ text, tone: 'plain' });
const unknown = (text: string): Cell => ({ text, tone: 'unknown' });
const none: Cell = { text: TABLE.none, tone: 'faint' };

function numberOf(amount: string | null): number | null {
  return amount === null ? null : Number(amount);
}

/** Every item of the mix as a row of the table: what it prints, and what it sorts by. */
export function mixRows(
  mix: MenuMixAnswer,
  locale: string,
  shapes: ReadonlyMap<string | null, MarkShape>,
): readonly MixRow[] {
  const purse = { currency: mix.currency, locale };
  return mix.items.map((item) => mixRow(item, purse, shapes.get(item.section) ?? 'circle'));
}

function mixRow(item: Item, purse: Purse, shape: MarkShape): MixRow {
  const { locale } = purse;
  const amount = (value: string | null) => (value === null ? unknown(TABLE.unknown) : plain(moneyFigure(value, purse)));
  const sure = sureness(item, locale);
  return {
    item: item.item,
    shape,
    hollow: isOnTheLine(item),
    note: noteOf(item),
    className: classWords(item),
    cells: {
      sold: item.sold === 0 ? none : plain(portionsFigure(item.sold, locale)),
      comps: item.comps === 0 ? none : plain(portionsFigure(item.comps, locale)),
      share: plain(perCentFigure(item.share, locale)),
      price: amount(item.netPrice),
      plateCost: plateCostCell(item, purse),
      foodCost: item.foodCostPct === null ? unknown(TABLE.unknown) : plain(perCentFigure(item.foodCostPct, locale)),
      leaves: amount(item.margin),
      contribution: amount(item.contribution),
      class: { text: item.class ?? TABLE.notClassed, tone: item.class === null ? 'faint' : 'plain' },
      sure: { text: sure.text, tone: sure.bar === null ? 'faint' : 'plain' },
    },
    keys: {
      item: item.item,
      sold: item.sold,
      comps: item.comps,
      share: item.share,
      price: numberOf(item.netPrice),
      plateCost: numberOf(item.plateCost),
      foodCost: item.foodCostPct,
      leaves: numberOf(item.margin),
      contribution: numberOf(item.contribution),
      class: item.class,
      sure: sure.share,
    },
    bar: sure.bar,
    advice: adviceOf(item, purse),
    opens: item.plateCost !== null || item.linesTotal !== null,
  };
}

/** Advice is for a dish that asks for a decision. */
function adviceOf({ advice, settled }: Item, purse: Purse): readonly Phrase[] | null {
  if (advice === null || (settled !== false && Number(advice.againstAverage) >= 0)) return null;
  return adviceSentences(advice, purse);
}

function plateCostCell(item: Item, purse: Purse): Cell {
  if (item.plateCost !== null) return plain(moneyFigure(item.plateCost, purse));
  return unknown(item.floor === null ? TABLE.notCosted : atLeast(item.floor, purse));
}

function noteOf(item: Item): string | null {
  if (item.estimated) return TABLE.estimate;
  if (item.plateCost !== null || item.linesMissing === null || item.linesTotal === null) return null;
  return missingLines(item.linesMissing, item.linesTotal);
}
