import type { EditTarget } from '../../model/price-model/edits';
import type { ProblemWords } from './problems';

const HOW =
  'Write what, a colon and the change: “Double cream:+10%”, “Double cream:+0.50” or “Double cream:6.20” (a kilogram, litre or piece), “group:Chocolate:-5%”, “supplier:NAME:+2%”, “everything:+3%”, “menu:DISH:14.50”, “section:NAME:+0.50”, “menu:+4%”';

export const wrongEdits = (detail: string): ProblemWords => ({ title: 'Not a change of prices', detail });

export function noEdit(text: string): string {
  return `“${text}” is no change of a price. ${HOW}.`;
}

export const noEditFields =
  'A change has of (ingredient, group, supplier, item, section, everything-bought or whole-menu), a name where it is of one, and one of changePct (0.1 is 10 % more), by and to.';

export const noEditBody =
  'Send JSON with a list of changes: {"edits": ["Double cream:+10%"]}, or {"edits": [{"of": "ingredient", "name": "Double cream", "changePct": 0.1}]}.';

export const editsTwice = 'Either --price, or --edits, not both.';
export const noEditsJson = '--edits asks for JSON: a list of changes as POST price-change takes it.';
export const whichIngredient = 'Turning prices of what? Name an ingredient with --ingredient NAME.';

export const otherDemand =
  'demand is none: portions are taken as they were sold. How guests answer a price is not worked out.';

const KINDS: Readonly<Record<EditTarget['of'], string>> = {
  ingredient: 'ingredient with a price',
  group: 'product group with a price',
  supplier: 'supplier whose price is in force',
  item: 'dish with a menu price',
  section: 'menu section with a menu price',
  'everything-bought': 'ingredient with a price',
  'whole-menu': 'dish with a menu price',
};

export function touchesNothing({ of, name }: EditTarget, alike: readonly string[]): string {
  const what = name === null ? `no ${KINDS[of]}` : `no ${KINDS[of]} called “${name}”`;
  return `There is ${what} in this period.${alike.length === 0 ? '' : ` There is ${alike.join('; ')}.`}`;
}

export function belowZero({ name }: EditTarget): string {
  return `${name === null ? 'A price' : `A price of ${name}`} would fall below zero. Make the cut smaller.`;
}

export function noSuchGoods(name: string, alike: readonly string[]): ProblemWords {
  const there = alike.length === 0 ? 'at-stake lists what is.' : `There is ${alike.join('; ')}.`;
  return { title: 'No such ingredient', detail: `No ingredient “${name}” is bought in this period. ${there}` };
}

export function noSuchBy(by: string, known: readonly string[]): ProblemWords {
  return {
    title: 'By what?',
    detail: `Nothing is added up by “${by}”. There is ${known.slice(0, -1).join(', ')} and ${known.at(-1)}.`,
  };
}

export const ingredientAsked: ProblemWords = {
  title: 'Turning prices of what?',
  detail: 'Name an ingredient with ?ingredient=NAME; at-stake lists what is bought.',
};
