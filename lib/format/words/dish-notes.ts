import { figure, perCent } from '../figures';
import { currencySign, money, moneyFigure, type Purse } from '../money';
import { dayName } from '../periods';
import { figurePart, type Part, type Phrase } from '../phrase';
import { portionsFigure } from '../portions';

export const DISH_NOTES = {
  labour: 'Labour and loss',
  afterLabour: 'After labour',
  loss: 'Small-batch loss',
  lossWhere: 'beside the cost, not in it',
  noMinutes: 'Nobody has stated the minutes of',
  noPlating: 'Plating minutes are not stated.',
  unknown: 'unknown',
  energy: 'Energy is not in it.',
  contains: 'Contains',
  mayContain: 'May contain',
  notKnown: 'Not known',
  nothingDeclared: 'None of the listed allergens was declared.',
  allergenCaution:
    'From what was declared of the ingredients. It says nothing of cross-contact in the kitchen, and a supplier’s new specification voids it: labels, local food law and qualified people go first.',
  allergensOff: 'It is not on offer in this period, so its allergens are not listed.',
  cautions: 'Caution',
  standing: 'Where it stands',
  turning: 'Turning prices',
  turningNote: 'At that price all period, with nothing else moved, it changes its class by Kasavana & Smith.',
  noTurning: 'no price',
  now: 'now',
  turnsAt: 'turns at',
  ingredient: 'Ingredient',
  development: 'Development',
  missing: 'What is missing',
  standingNote: 'How sure: sampling of days only, not doubt in costs.',
} as const;

/** The usual caution for what a recipe states; it defers to law and trained people. */
const CAUTIONS: Readonly<Record<string, string>> = {
  'raw egg': 'raw or barely cooked egg: say so to guests who should not eat it, and follow local food law.',
  alcohol: 'alcohol: say so on the menu and to whoever asks; local law decides who may be served.',
  'liquid nitrogen':
    'liquid nitrogen: it has to be gone entirely before anyone eats; good ventilation, trained people only, and the rules of your authority.',
  'dry ice':
    'dry ice: it must not be eaten or touched and has to be gone before anyone eats; good ventilation, trained people only.',
};

export function cautionWords({
  caution,
  from,
}: {
  readonly caution: string;
  readonly from: readonly string[];
}): string {
  const usual = CAUTIONS[caution.toLowerCase()] ?? `${caution}: as the recipe says.`;
  const where = from.length === 0 ? '' : ` (${from.join(', ')})`;
  const [head = '', ...rest] = usual.split(':');
  return `${head.charAt(0).toUpperCase()}${head.slice(1)}${where}:${rest.join(':')}`;
}

/** Minutes as a table prints them. */
export function minutes(count: number, locale: string): string {
  return `${figure(count, locale, { least: 0, most: count < 0.1 ? 2 : 1 })}\u00a0min`;
}

/** hands-on, pastry chef. */
export function workName(kind: 'handsOn' | 'plating', grade: string | null): string {
  const what = kind === 'handsOn' ? 'Hands-on' : 'Plating';
  return grade === null ? `${what}, grade not stated` : `${what}, ${grade}`;
}

/** Milk, eggs, gluten. */
export function allergenNames(allergens: readonly { readonly allergen: string }[]): string {
  const names = allergens.map(({ allergen }) => allergen).join(', ');
  return `${names.charAt(0).toUpperCase()}${names.slice(1)}.`;
}

/** Which things leave allergens unknown. */
export function unknownWords(
  unknown: readonly { readonly allergen: string; readonly from: readonly string[] }[],
  item: string,
): string {
  const from = [...new Set(unknown.flatMap((each) => each.from))];
  const names = unknown.map(({ allergen }) => allergen).join(', ');
  const all = `${names.charAt(0).toUpperCase()}${names.slice(1)}`;
  if (from.length === 1 && from[0] === item) return `${all}: it has no recipe that would say. Write one.`;
  return `${all}: ${from.join(', ')} ${from.length === 1 ? 'declares' : 'declare'} nothing. Ask the supplier.`;
}

const LISTS = {
  eu: 'the 14 of Regulation (EU) 1169/2011',
  us: 'the 9 of US law',
} as const;

export function listWords(list: 'eu' | 'us', date: string, locale: string): string {
  return `By ${LISTS[list]}, as of ${dayName(date, locale)}.`;
}

/** Which components lose by small batches, the largest first, three at most. */
export function lossWords(
  components: readonly { readonly item: string; readonly lostPct: number | null }[],
  locale: string,
): Phrase | null {
  const lost = components.filter(({ lostPct }) => (lostPct ?? 0) > 0).slice(0, 3);
  if (lost.length === 0) return null;
  const each = lost.flatMap(({ item, lostPct }, index): Part[] => [
    index === 0 ? '' : ', ',
    `${item} `,
    figurePart(perCent(lostPct ?? 0, locale)),
  ]);
  return ['Thrown of what is made: ', ...each, '.'];
}

/** What the trials cost and when that is paid back. */
export function developmentPhrase(
  made: {
    readonly trials: number;
    readonly hours: number;
    readonly cost: string | null;
    readonly margin: string | null;
    readonly otherwise: string | null;
    readonly payback: number | null;
    readonly lastTrial: string;
  },
  purse: Purse,
): Phrase {
  const { locale } = purse;
  const trials = `${figure(made.trials, locale, 0)} ${made.trials === 1 ? 'trial' : 'trials'}`;
  const hours = `${figure(made.hours, locale, { least: 0, most: 1 })} hours`;
  const until = `the last on ${dayName(made.lastTrial, locale)}`;
  if (made.cost === null) return [`${trials}, ${hours}, ${until}. What they cost is not known in full.`];
  const cost = [`${trials}, ${hours}, ${until}, cost `, figurePart(money(made.cost, purse)), '.'];
  if (made.margin === null || made.otherwise === null) return cost;
  const against = [
    ' A portion leaves ',
    figurePart(money(made.margin, purse)),
    ' where its guests would otherwise leave ',
    figurePart(money(made.otherwise, purse)),
  ];
  if (made.payback === null) return [...cost, ...against, ': at that, the trials are not paid back.'];
  const portions = portionsFigure(Math.ceil(made.payback), locale);
  return [...cost, ...against, ': paid back after ', figurePart(`${portions} portions`), '.'];
}

export function perPlatingMinute(amount: string, purse: Purse): Phrase {
  return ['Leaves ', figurePart(money(amount, purse)), ' for each minute of plating.'];
}

/** € a kg, under the name of an ingredient. */
export function turningUnit(unit: 'kg' | 'l' | 'each', purse: Purse): string {
  const by = unit === 'kg' ? 'a kg' : unit === 'l' ? 'a litre' : 'each';
  return `${currencySign(purse)} ${by}`;
}

export function lossFigure(loss: string | null, purse: Purse): string {
  return loss === null ? DISH_NOTES.unknown : moneyFigure(loss, purse);
}
