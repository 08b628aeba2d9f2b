import type { Leaning } from '../../model/mix/leaning';
import type { MixClass, ModelName } from '../../model/mix/mix-model';
import { figure, perCent } from '../figures';
import { moneyFigure, type Purse } from '../money';
import { periodName } from '../periods';
import { namePart, type Part, type Phrase } from '../phrase';
import { countWord } from '../portions';
import { MODEL_SOURCES } from './classes';
import { sureness } from './mix-table';
import { shortNames } from './short-names';

export const MODELS = {
  view: 'Models',
  title: 'Models side by side',
  picture: 'Where each dish stands on every axis that a model looks at; the same in the table below',
  follow: 'Follow a dish',
  nobody: 'no dish followed',
  howToRead: 'How to read it',
  reading:
    'One axis a line, one mark a dish, its shape its section. The upright stroke is where the class changes; the favourable side is to the right on every axis.',
  whichAxes: 'Who looks at what',
  missing: 'What is missing',
  region: 'Dishes by model, all columns',
  caption: 'Each dish by every model, most left first',
  dish: 'Dish',
  agreeHead: 'Agree',
  notSaid: 'not said',
  yes: 'yes',
  no: 'they part',
} as const;

/** The axes, each with its name, unit, and which models look at it. */
export type Axis = 'popularity' | 'margin' | 'foodCost' | 'contribution' | 'goalValue' | 'labour';

export const AXES: Readonly<
  Record<Axis, { readonly name: string; readonly isMoney: boolean; readonly models: string }>
> = {
  popularity: {
    name: 'how often it sells, against an equal share',
    isMoney: false,
    models: 'Kasavana & Smith, Miller, and the model with labour',
  },
  margin: { name: 'what a portion leaves', isMoney: true, models: 'Kasavana & Smith, and the model with labour' },
  foodCost: { name: 'food cost, low to the right', isMoney: false, models: 'Miller and Pavesic' },
  contribution: { name: 'what it left in the period', isMoney: true, models: 'Pavesic' },
  goalValue: { name: 'goal value', isMoney: false, models: 'Hayes & Huffman' },
  labour: { name: 'recipe labour a portion, little to the right', isMoney: true, models: 'the model with labour' },
};

/** Names of the models as heads of columns: whose, and the year. */
export const MODEL_HEADS: Readonly<Record<ModelName, readonly [string, string]>> = {
  'kasavana-smith': ['Kasavana & Smith', '1982'],
  miller: ['Miller', '1980'],
  pavesic: ['Pavesic', '1983'],
  'goal-value': ['Goal value', 'Hayes & Huffman, 1985'],
  labour: ['With labour', 'LeBruto and others, 1995'],
};

interface Standing {
  readonly model: ModelName;
  readonly class: MixClass | null;
  readonly leaning: Leaning | null;
  readonly classShares: Readonly<Partial<Record<MixClass, number>>> | null;
  readonly settled: boolean | null;
  readonly between: readonly [MixClass, MixClass] | null;
}

interface Item {
  readonly item: string;
  readonly classes: readonly Standing[];
  readonly agree: boolean | null;
}

/** What the sentences are made from; a MenuModelsAnswer has it all. */
export interface ModelFigures {
  readonly month: string;
  readonly locale: string;
  readonly section: string | null;
  readonly tradingDays: number;
  readonly items: readonly Item[];
}

const MOST_NAMES = 3;

function names(of: readonly string[], locale: string): Part[] {
  const shown = of.slice(0, MOST_NAMES);
  const more = of.length - shown.length;
  const parts = shown.flatMap((name, at): Part[] => {
    if (at === 0) return [namePart(name)];
    return [at === shown.length - 1 && more === 0 ? ' and ' : ', ', namePart(name)];
  });
  return more > 0 ? [...parts, ` and ${countWord(more, locale)} more`] : parts;
}

/** Where the models agree, and where they part, by rule from the classes in the table. */
export function modelsSentences({ month, locale, section, items }: ModelFigures): Phrase {
  const short = shortNames(items.map(({ item }) => item));
  const named = items.map((item, at) => ({ ...item, name: short[at] ?? item.item }));
  const scope: Part[] = section === null ? [] : [' in ', namePart(section)];
  const when: Part[] = [periodName(month, locale), ...scope, ': '];
  const spoken = named.filter(({ agree }) => agree !== null);
  if (spoken.length === 0) return [...when, 'no dish can be classed by two models yet.'];
  const leans = (leaning: Leaning) =>
    spoken.filter(({ agree, classes }) => agree && classes.some((each) => each.leaning === leaning));
  const [all, none] = [leans('for'), leans('against')];
  const part = spoken.filter(({ agree }) => agree === false);
  const forAll: Part[] =
    all.length > 0
      ? [
          'every model speaks for ',
          ...names(
            all.map(({ name }) => name),
            locale,
          ),
        ]
      : ['no dish has every model for it'];
  const againstAll: Part[] =
    none.length > 0
      ? [
          'every one against ',
          ...names(
            none.map(({ name }) => name),
            locale,
          ),
        ]
      : ['none has all against it'];
  return [...when, ...forAll, ', ', ...againstAll, '.', ...parting(part, locale)];
}

/** The dish over which the models part most: one has all for it and another all against it, where there is such a one. */
export function mostParted<T extends Item>(items: readonly T[]): T | null {
  const parted = items.filter(({ agree }) => agree === false);
  return parted.find(opposed) ?? parted[0] ?? null;
}

function opposed({ classes }: Item): boolean {
  return classes.some(({ leaning }) => leaning === 'for') && classes.some(({ leaning }) => leaning === 'against');
}

function parting(items: readonly (Item & { readonly name: string })[], locale: string): Part[] {
  if (items.length === 0) return [' They part over none.'];
  const first = mostParted(items);
  if (!first) return [];
  const [one, other] = opposites(first.classes);
  const many =
    items.length === 1 ? ' They part over one dish: ' : ` They part over ${countWord(items.length, locale)} dishes: `;
  if (!one?.class || !other?.class) return [];
  return [
    many,
    namePart(first.name),
    ' is ',
    namePart(one.class),
    ` by ${MODEL_HEADS[one.model][0]} and `,
    namePart(other.class),
    ` by ${MODEL_HEADS[other.model][0]}.`,
  ];
}

/** Two standings that lean as far apart as any. */
function opposites(classes: readonly Standing[]): readonly (Standing | undefined)[] {
  const said = classes.filter(({ leaning }) => leaning !== null);
  const order: readonly Leaning[] = ['for', 'mixed', 'against'];
  const sorted = said.toSorted((a, b) => order.indexOf(a.leaning ?? 'mixed') - order.indexOf(b.leaning ?? 'mixed'));
  return [sorted[0], sorted.at(-1)];
}

/** What the figures of the page stand on. */
export function modelsBasis({
  section,
  tradingDays,
  locale,
}: Omit<ModelFigures, 'items' | 'month'>): readonly string[] {
  const days = tradingDays === 1 ? 'business day' : 'business days';
  return [
    Object.values(MODEL_SOURCES).join('; '),
    section === null ? 'whole menu' : `section ${section}, averages of its own`,
    'achieved prices, net',
    `${figure(tradingDays, locale, 0)} ${days} with sales`,
    'costs by the price in force each day',
  ];
}

/** A class, and under it how sure that is: 65 : 35 star. */
export function classCell(standing: Standing, locale: string): { readonly name: string; readonly sure: string } {
  if (standing.class === null) return { name: MODELS.notSaid, sure: '' };
  return { name: standing.class, sure: sureness(standing, locale).text };
}

export function agreeCell({ agree }: Pick<Item, 'agree'>): string {
  return agree === null ? MODELS.notSaid : agree ? MODELS.yes : MODELS.no;
}

/** A value on an axis as it is printed there. */
export function axisFigure(axis: Axis, value: number, purse: Purse): string {
  if (axis === 'popularity') return perCent(value, purse.locale, 0);
  if (axis === 'foodCost') return perCent(value, purse.locale);
  return axis === 'goalValue' ? figure(value, purse.locale, 0) : moneyFigure(value.toString(), purse);
}

/** The end of a threshold: its exact value, as the mix prints its own. */
export function thresholdFigure(axis: Axis, value: number, purse: Purse): string {
  if (axis === 'popularity') return perCent(value, purse.locale, 0);
  return axis === 'foodCost' ? perCent(value, purse.locale, { least: 1, most: 2 }) : axisFigure(axis, value, purse);
}

/** What each model says of a dish, in one line: star by Kasavana & Smith, winner by Miller ... */
export function followedWords({ item, classes }: Pick<Item, 'item' | 'classes'>): string {
  const said = classes.flatMap(({ model, class: name }) =>
    name === null ? [] : `${name} by ${MODEL_HEADS[model][0]}`,
  );
  return `${item}: ${said.length > 0 ? said.join(' · ') : MODELS.notSaid}`;
}

/** The name of an axis with its unit. */
export function axisName(axis: Axis, sign: string): string {
  const { name, isMoney } = AXES[axis];
  const [what, ...more] = name.split(', ');
  return isMoney ? [what, sign, ...more].join(', ') : name;
}

export function modelsTitle(period: string): string {
  return `${MODELS.title}, ${period}`;
}
