import { figure } from '../figures';
import { currencySign, money, moneyFigure, type Purse } from '../money';
import { dayName } from '../periods';
import { figurePart, namePart, type Part, type Phrase } from '../phrase';

export const TREE = {
  name: 'The cost of a portion as bars: the plate, the lines of its recipe, and what is bought for each; the table of the working holds the same',
  follow: 'Follow through the picture',
  followInstead: 'Follow:',
  nothing: 'There is nothing to draw: no cost of it is known.',
  oneCost: 'There is nothing to draw: its cost is one figure and has no parts.',
  notKnown: 'not known',
} as const;

/** Under the picture: what its heights are, which day it is of, what it leaves out, and what is followed through it. */
export function treeCaption(
  tree: {
    readonly date: string;
    /** Lines without a name in the picture. */
    readonly folded: number;
    /** A line of it is the share for what is not measured. */
    readonly notMeasured: boolean;
    readonly unknown: readonly string[];
    readonly credits: number;
    readonly followed: { readonly name: string; readonly cost: number } | null;
  },
  purse: Purse,
): Phrase {
  const { date, folded, unknown, credits } = tree;
  const rest =
    folded === 0
      ? ''
      : ` ${figure(folded, purse.locale, 0)} ${folded === 1 ? 'line is' : 'lines are'} named in the working only.`;
  return [
    `${currencySign(purse)} a portion on ${dayName(date, purse.locale)}, height is cost: the plate, the lines of its recipe, what is bought.${rest}`,
    ...followedWords(tree, purse),
    ...(credits > 0 ? [' What is made beside it is taken off, ', figurePart(money(credits, purse)), '.'] : []),
    ...(unknown.length > 0
      ? [' Hatched, without a height of its own: what is not known, ', ...names(unknown), '.']
      : []),
  ];
}

function followedWords(
  {
    followed,
    notMeasured,
  }: { readonly followed: { readonly name: string; readonly cost: number } | null; readonly notMeasured: boolean },
  purse: Purse,
): readonly Part[] {
  if (followed === null) return [];
  const cost = figurePart(money(followed.cost, purse));
  const before = notMeasured ? ', before its part of what is not measured' : '';
  return [' Followed in colour: ', namePart(followed.name), ', ', cost, ` of the plate${before}.`];
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
