import { figure } from '../figures';
import { currencySign, money, moneyFigure, type Purse } from '../money';
import { dayName } from '../periods';
import { figurePart, namePart, type Part, type Phrase } from '../phrase';

export const TREE = {
  name: 'The cost of a portion as bars: the plate, the lines of its recipe, and what is bought for each; the table of the working holds the same',
  follow: 'Follow through the picture',
  nothing: 'There is nothing to draw: no cost of it is known.',
  notKnown: 'not known',
} as const;

/** Under the picture: what its heights are, which day it is of, what it leaves out, and what is followed through it. */
export function treeCaption(
  tree: {
    readonly date: string;
    readonly folded: { readonly lines: number; readonly under: number };
    readonly unknown: readonly string[];
    readonly credits: number;
    readonly followed: { readonly name: string; readonly cost: number } | null;
  },
  purse: Purse,
): Phrase {
  const { date, folded, unknown, credits, followed } = tree;
  const lines = folded.lines === 1 ? 'line' : 'lines';
  const under = folded.under > 0 ? ` under ${moneyFigure(folded.under, purse)}` : '';
  const rest =
    folded.lines === 0
      ? ''
      : ` ${figure(folded.lines, purse.locale, 0)} ${lines}${under} ${folded.lines === 1 ? 'is' : 'are'} in the table only.`;
  return [
    `${currencySign(purse)} a portion on ${dayName(date, purse.locale)}, height is cost: the plate, the lines of its recipe, what is bought.${rest}`,
    ...(followed
      ? ([
          ' Followed in colour: ',
          namePart(followed.name),
          ', ',
          figurePart(money(followed.cost, purse)),
          ' of the plate.',
        ] as Part[])
      : []),
    ...(credits > 0 ? [' What is made beside it is taken off, ', figurePart(money(credits, purse)), '.'] : []),
    ...(unknown.length > 0
      ? [' Hatched, without a height of its own: what is not known, ', ...names(unknown), '.']
      : []),
  ];
}

const NAMED = 3;

function names(all: readonly string[]): readonly Part[] {
  const named = all.slice(0, NAMED);
  const rest = all.length - named.length;
  return [
    ...named.flatMap((name, index): Part[] => [...(index === 0 ? [] : [', ']), namePart(name)]),
    ...(rest > 0 ? [` and ${rest} more`] : []),
  ];
}

/** Beside the bar of the plate. */
export function plateWords(total: number, isFloor: boolean, purse: Purse): string {
  return isFloor ? `at least ${moneyFigure(total, purse)}` : moneyFigure(total, purse);
}

/** Under the name of a part, where there is no room for what is bought beside it. */
export function mostlyWords(name: string, cost: number, purse: Purse): string {
  return `mostly ${name}, ${moneyFigure(cost, purse)}`;
}

/** A name cut to its room, at a letter, with the sign that it was. */
export function cutName(name: string, px: number, pxPerLetter: number): string {
  const letters = Math.floor(px / pxPerLetter);
  return name.length <= letters ? name : `${name.slice(0, Math.max(1, letters - 1)).trimEnd()}…`;
}
