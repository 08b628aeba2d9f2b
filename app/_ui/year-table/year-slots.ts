import type { YearAnswer } from '@/lib/answers/year-shape';
import { figure, perCentFigure } from '@/lib/format/figures';
import { currencySign, moneyFigure, type Purse } from '@/lib/format/money';
import { monthAbbreviation, periodName } from '@/lib/format/periods';
import { portionsFigure } from '@/lib/format/portions';
import { EVENT_KINDS, eventCount, eventName, panelNames, targetName } from '@/lib/format/words/year-table';
import type { EventRow, Panel, Slot, SlotFacts, SlotValue } from '../slot-panels/slot-facts';

type Row = YearAnswer['periods'][number];
type Figures = Pick<Row, 'sold' | 'contribution' | 'foodCostPct' | 'margin'>;

const amount = (money: string | null): number | null => (money === null ? null : Number(money));

/** The year as panels on one axis: what was left, food cost, portions, mean margin; what changed on the menu beneath. */
export function yearSlots(answer: YearAnswer, purse: Purse): SlotFacts {
  const { periods, targetFoodCostPct: target } = answer;
  const { locale } = purse;
  const names = panelNames(currencySign(purse));
  const panel = (
    key: keyof typeof names,
    kind: Panel['kind'],
    read: (figures: Figures) => number | null,
    words: { readonly last: (value: number) => string; readonly tick: Panel['figure'] },
  ): Panel => {
    const values = periods.map((row) => slotValue(row, read));
    const at = values.findLastIndex(({ value }) => value !== null);
    const last = values[at]?.value ?? null;
    const when = periodName(periods[at]?.period ?? '', locale);
    const line = key === 'foodCost' && target !== null ? lineAt(target, locale) : null;
    const said = last === null ? '' : `${when}: ${words.last(last)}`;
    return { key, name: names[key], kind, values, line, last: said, figure: words.tick };
  };
  const plain: Panel['figure'] = (value, decimals) => figure(value, locale, decimals);
  const perCent: Panel['figure'] = (value, decimals) => perCentFigure(value, locale, Math.max(0, decimals - 2));
  const money = (value: number) => moneyFigure(value, purse);
  return {
    slots: periods.map(slot(locale)),
    panels: [
      panel('contribution', 'bars', (row) => amount(row.contribution), { last: money, tick: plain }),
      panel('foodCost', 'dots', (row) => row.foodCostPct, {
        last: (cost) => perCentFigure(cost, locale),
        tick: perCent,
      }),
      panel('sold', 'bars', (row) => (row.sold === 0 ? null : row.sold), {
        last: (sold) => portionsFigure(sold, locale),
        tick: plain,
      }),
      panel('margin', 'dots', (row) => amount(row.margin), { last: money, tick: plain }),
    ],
    events: eventRows(periods),
  };
}

function slotValue(row: Row, read: (figures: Figures) => number | null): SlotValue {
  return {
    value: row.sold === 0 ? null : read(row),
    hollow: row.provisional || row.running,
    against: row.yearBefore && read(row.yearBefore),
  };
}

const lineAt = (target: number, locale: string) => ({ value: target, name: targetName(perCentFigure(target, locale)) });

function slot(locale: string): (row: Row, at: number) => Slot {
  return ({ period }, at) => {
    const [year = '', number = ''] = period.split('-');
    const label = number.startsWith('P') ? number : monthAbbreviation(period, locale);
    return { key: period, label, below: at === 0 || number === '01' || number === 'P01' ? year : null };
  };
}

/** A row for each kind of change that there was. */
function eventRows(periods: readonly Row[]): readonly EventRow[] {
  const rows = EVENT_KINDS.map((kind) => ({
    key: kind,
    name: eventName(kind),
    words: periods.map(({ menuChanges }) => eventCount(kind, menuChanges)),
  }));
  return rows.filter(({ words }) => words.some((word) => word !== ''));
}
