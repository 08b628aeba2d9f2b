import { figure, perCent } from '../figures';
import { figurePart, namePart, type Phrase } from '../phrase';
import { countWord } from '../portions';

export const SPREAD = {
  caption: 'What each price’s own spread is worth',
  prices: 'Paid in 18 months',
  dear: 'At its dearest',
  picture: 'less left · more left',
  spare: 'At its cheapest',
  item: 'Bought',
  note: 'Each at the highest and at the lowest price of the last 18 months all period, everything else as it was. Money left in the period, less what was left.',
  groups: 'Food cost by product group, %',
  noGroup: 'no product group',
} as const;

export function spreadHeads(sign: string): readonly [string, string, string, string, string] {
  return [SPREAD.item, SPREAD.prices, `${SPREAD.dear}, ${sign}`, SPREAD.picture, `${SPREAD.spare}, ${sign}`];
}

/** 27.00 to 36.50 a kg. */
export function paidRange(lowest: string, highest: string, unit: string): string {
  return `${lowest} to ${highest} a ${unit}`;
}

/** Goods whose price never moved have no bar. */
export function unmovedNote(unmoved: number, more: number, locale: string): string {
  const others = more > 0 ? ` ${capital(countWord(more, locale))} more with less to gain or lose are left out.` : '';
  if (unmoved === 0) return `${SPREAD.note}${others}`;
  const have = unmoved === 1 ? 'good has' : 'goods have';
  return `${SPREAD.note}${others} ${capital(countWord(unmoved, locale))} ${have} no bar: the price did not move in that time, which is no sign that it will not.`;
}

/** Whether one product group carries the menu, in plain words. */
export function concentrationSentence(
  most: {
    readonly group: string;
    readonly share: number;
    readonly dishes: number;
    readonly of: number;
    readonly carries: boolean;
  },
  locale: string,
): Phrase {
  const use = most.dishes === 1 ? ' dishes takes' : ' dishes take';
  const dishes = [figurePart(figure(most.dishes, locale, 0)), ' of ', figurePart(figure(most.of, locale, 0)), use];
  return [
    namePart(most.group),
    most.carries ? ' carries this menu: it is ' : ' is the largest product group, ',
    figurePart(perCent(most.share, locale, 0)),
    ' of the food cost, and ',
    ...dishes,
    ' some of it.',
  ];
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
