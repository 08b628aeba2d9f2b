import type { WeekAnswer } from '@/lib/answers/week-shape';
import { figure } from '@/lib/format/figures';
import { currencySign, type Purse } from '@/lib/format/money';
import { weekdayLabel } from '@/lib/format/periods';
import type { WeekCells } from '@/lib/format/week-rows';
import { weekPanelNames } from '@/lib/format/words/week-table';
import type { Panel, SlotFacts } from '../slot-panels/slot-facts';

type Figures = Pick<WeekAnswer['days'][number], 'covers' | 'spendPerCover' | 'sold' | 'contribution'>;

const amount = (money: string | null): number | null => (money === null ? null : Number(money));

/** The days of a week as panels on one axis, each held against the mean of its weekday in the weeks before; the week itself over each panel. */
export function weekSlots(answer: WeekAnswer, sum: WeekCells, purse: Purse): SlotFacts {
  const { locale } = purse;
  const names = weekPanelNames(currencySign(purse));
  const isHollow = answer.week.provisional || answer.running;
  const panel = (
    key: keyof typeof names,
    kind: Panel['kind'],
    read: (figures: Figures) => number | null,
    last: string,
  ): Panel => ({
    ...{ key, name: names[key], kind, line: null, last },
    values: answer.days.map((day) => ({
      value: day.sold === 0 && day.covers === null ? null : read(day),
      hollow: isHollow,
      against: day.usual && read(day.usual),
    })),
    figure: (value, decimals) => figure(value, locale, decimals),
  });
  return {
    slots: answer.days.map(({ day }) => {
      const { short, day: date } = weekdayLabel(day, locale);
      return { key: day, label: short, below: date };
    }),
    panels: [
      panel('covers', 'bars', ({ covers }) => covers, sum.covers),
      panel('spend', 'dots', ({ spendPerCover }) => amount(spendPerCover), sum.spend),
      panel('sold', 'bars', ({ sold }) => sold, sum.sold),
      panel('left', 'bars', ({ contribution }) => amount(contribution), sum.left),
    ],
    events: [],
  };
}
