import { figure } from './figures';

/** A count of portions; halves and other shared portions keep up to two decimals. */
export function portionsFigure(count: number, locale: string): string {
  return figure(count, locale, { least: 0, most: 2 });
}

/** A count of portions in a sentence: 1 portion, 3,412 portions. */
export function portions(count: number, locale: string): string {
  return `${portionsFigure(count, locale)} ${count === 1 ? 'portion' : 'portions'}`;
}

const WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** A small count as a word, a larger one as a figure, as sentences write them. */
export function countWord(count: number, locale: string): string {
  return WORDS[count] ?? figure(count, locale, 0);
}
