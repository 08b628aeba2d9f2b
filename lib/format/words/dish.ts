import type { ItemKind } from '../../model/facts';
import type { ModelName } from '../../model/mix/mix-model';
import { figure, perCent, signedFigure } from '../figures';
import { exactMoney, exactMoneyFigure, money, moneyFigure, type Purse, printedCoins } from '../money';
import { dayName, monthName, periodName } from '../periods';
import { figurePart, namePart, type Part, type Phrase } from '../phrase';
import { countWord, portionsFigure } from '../portions';
import {
  CLASS_MEANING,
  type ClassName,
  classBefore,
  isDoubtedBefore,
  otherClass,
  pairInPerCent,
  type Standing,
} from './classes';
import type { StateWords } from './shell';

export const DISH = {
  tryPrice: 'Try another price',
  notOnSale: 'not on the menu in this period',
  everyGuest: 'given to every guest',
  setMenu: 'set menu',
  extra: 'extra',
  netPrice: 'net price',
  plateCost: 'plate cost',
  leaves: 'leaves',
  beforeLabour: 'a portion, before labour',
  notCosted: 'not costed',
  unknown: 'unknown',
  ownRounding: 'Each figure is rounded by itself.',
  estimate: 'the owner’s estimate',
  working: 'The working',
  change: 'What changed',
  allDishes: 'All dishes',
  bought: 'Bought for a portion',
  cost: 'Cost',
} as const;

/** What the words of a dish are made from; a DishAnswer has it all. */
export interface DishFigures {
  readonly item: string;
  readonly month: string;
  readonly currency: string;
  readonly kind: ItemKind;
  readonly section: string | null;
  /** In whose mix it stands; null is the whole menu. */
  readonly mixSection: string | null;
  readonly components: number | null;
  readonly onSale: boolean;
  readonly onMenuSince: string | null;
  readonly menuPrice: string | null;
  readonly figures: {
    readonly sold: number;
    readonly comps: number;
    readonly netPrice: string | null;
    readonly plateCost: string | null;
    readonly floor: string | null;
    readonly linesMissing: number | null;
    readonly linesTotal: number | null;
    readonly estimated: boolean;
    readonly foodCostPct: number | null;
    readonly margin: string | null;
    readonly contribution: string | null;
    readonly contributionPct: number | null;
  } | null;
  readonly given: { readonly covers: number; readonly perCover: string | null; readonly cost: string | null } | null;
  readonly standings: readonly (Standing & { readonly model: ModelName })[];
  readonly turning: readonly TurningFigures[];
  readonly bought: readonly { readonly item: string; readonly isEstimate: boolean; readonly cost: string }[];
  readonly change: DishChangeFigures | null;
}

/** The turning price of one ingredient; that of a DishAnswer is one. */
export interface TurningFigures {
  readonly ingredient: string;
  readonly unit: 'kg' | 'l' | 'each';
  readonly priceNow: string | null;
  readonly turningPrice: string | null;
  readonly classBeyond: ClassName | null;
}

export interface DishChangeFigures {
  readonly month: string;
  readonly plateCost: {
    readonly before: string;
    readonly after: string;
    readonly price: string;
    readonly recipe: string;
    readonly ingredients: readonly { readonly item: string; readonly price: string; readonly recipe: string }[];
  } | null;
}

/** 2026-09 as September where it is a month of the same year as the other, else in full. */
function briefly(month: string, beside: string, locale: string): string {
  const name = periodName(month, locale);
  const isMonth = /^\d{4}-\d{2}$/.test(month);
  return isMonth && month.slice(0, 4) === beside.slice(0, 4) ? monthName(month, locale).replace(/\s*\d{4}$/, '') : name;
}

/** Above the name: section, components, since when it is on the menu, and how it stands. */
export function dishHead(dish: DishFigures, locale: string): readonly Phrase[] {
  const kind = dish.kind === 'set_menu' ? [DISH.setMenu] : dish.kind === 'extra' ? [DISH.everyGuest] : [];
  const components = dish.components
    ? [`${countWord(dish.components, locale)} ${dish.components === 1 ? 'component' : 'components'}`]
    : [];
  const since = dish.onMenuSince === null ? [] : [`on the menu since ${dayName(dish.onMenuSince, locale)}`];
  const off = dish.onSale ? [] : [`${DISH.notOnSale}: ${periodName(dish.month, locale)}`];
  const [standing] = modelStandings(dish);
  return [
    ...(dish.section === null ? [] : [[dish.section]]),
    ...kind.map((text) => [text]),
    ...components.map((text) => [text]),
    ...since.map((text) => [text]),
    ...off.map((text) => [text]),
    ...(standing?.class ? [standingPhrase(standing, locale)] : []),
  ];
}

/** How a dish stands in one model. */
export interface ModelStanding extends Standing {
  readonly model: ModelName;
  /** Its plate cost is known. */
  readonly isCosted: boolean;
}

/** Why a model has no class for a dish. */
function notClassed({ model, isCosted }: ModelStanding): string {
  if (!isCosted) return 'what it costs is not known';
  if (model === 'goal-value') return 'the venue’s variable cost is not stated, or it was on sale on too few days';
  if (model === 'labour') return 'its labour is not known, or it was on sale on too few days';
  return 'it was on sale on too few days';
}

/** The dish's standings, each with what its words need. */
export function modelStandings({
  standings,
  figures,
}: Pick<DishFigures, 'standings' | 'figures'>): readonly ModelStanding[] {
  return standings.map((each) => ({ ...each, isCosted: figures !== null && figures.plateCost !== null }));
}

/** star, settled in 99 of 100 resamples; or between which two. */
export function standingPhrase(standing: ModelStanding, locale: string): Phrase {
  const { class: own, classShares } = standing;
  if (own === null) return [`not classed: ${notClassed(standing)}`];
  const meaning: Part[] = [`${CLASS_MEANING[own]} (`, namePart(own), ')'];
  if (classShares === null) return [...meaning, ', too few days to say how sure'];
  const share = figure((classShares[own] ?? 0) * 100, locale, 0);
  const other = otherClass(standing);
  if (other === null) return [...meaning, `, settled in ${share} of 100 resamples`];
  if (isDoubtedBefore(standing))
    return [...meaning, `, in ${share} of 100 resamples, but ${classBefore(standing)} in the period before`];
  const [first, second] = pairInPerCent(classShares[own] ?? 0, classShares[other] ?? 0);
  const counted = (count: number): string => figure(count, locale, 0);
  return [...meaning, `, on the line: ${counted(first)} of 100 resamples, `, namePart(other), ` in ${counted(second)}`];
}

/** A term of the sum that stands at the head of a dish. */
export interface SumTerm {
  /** What stands before it; null for the first. */
  readonly operator: '−' | '=' | '×' | null;
  readonly figure: string;
  readonly labels: readonly string[];
  readonly result: boolean;
  /** Its figure opens to the working below. */
  readonly opens: boolean;
}

/** net price − plate cost = leaves × sold = in the month. What is not known is a word, and the terms that hang on it too. */
export function dishSum(dish: DishFigures, purse: Purse): readonly SumTerm[] {
  const { locale } = purse;
  if (dish.given) return givenSum(dish, dish.given, purse);
  if (dish.figures === null) return [];
  const { figures } = dish;
  const amount = (value: string | null, unknown: string) => (value === null ? unknown : moneyFigure(value, purse));
  const cost =
    figures.plateCost === null && figures.floor !== null
      ? `at least ${moneyFigure(figures.floor, purse)}`
      : amount(figures.plateCost, DISH.notCosted);
  const onMenu = dish.menuPrice === null ? [] : [`${moneyFigure(dish.menuPrice, purse)} on the menu`];
  const comps = figures.comps === 0 ? [] : [`${portionsFigure(figures.comps, locale)} on the house`];
  const share = figures.contributionPct;
  const term = (operator: SumTerm['operator'], text: string, labels: readonly string[], result = false): SumTerm => ({
    ...{ operator, figure: text, labels, result, opens: false },
  });
  return [
    term(null, amount(figures.netPrice, DISH.unknown), [DISH.netPrice, ...onMenu]),
    { ...term('−', cost, [DISH.plateCost, ...costLabel(figures, locale)]), opens: true },
    term('=', amount(figures.margin, DISH.unknown), [DISH.leaves, DISH.beforeLabour], true),
    term('×', portionsFigure(figures.sold, locale), [`sold in ${briefly(dish.month, dish.month, locale)}`, ...comps]),
    term(
      '=',
      amount(figures.contribution, DISH.unknown),
      ['in the period', ...(share === null ? [] : [shareOfAll(dish, share, locale)])],
      true,
    ),
  ];
}

function shareOfAll({ mixSection }: DishFigures, share: number, locale: string): string {
  return `${perCent(share, locale)} of ${mixSection === null ? 'what all left' : `what ${mixSection} left`}`;
}

function costLabel(figures: NonNullable<DishFigures['figures']>, locale: string): readonly string[] {
  const { linesMissing, linesTotal, foodCostPct } = figures;
  if (figures.estimated) return [DISH.estimate];
  if (figures.plateCost === null && linesMissing !== null && linesTotal !== null) {
    return [`${linesMissing} of ${linesTotal} lines are not known`];
  }
  return foodCostPct === null ? [] : [`${perCent(foodCostPct, locale)} food cost`];
}

function givenSum(dish: DishFigures, given: NonNullable<DishFigures['given']>, purse: Purse): readonly SumTerm[] {
  const amount = (value: string | null) => (value === null ? DISH.notCosted : moneyFigure(value, purse));
  const term = { labels: [] as readonly string[], result: false, opens: false };
  const guests = `guests in ${briefly(dish.month, dish.month, purse.locale)}`;
  return [
    { ...term, operator: null, figure: amount(given.perCover), labels: ['cost of one'], opens: true },
    { ...term, operator: '×', figure: portionsFigure(given.covers, purse.locale), labels: [guests] },
    { ...term, operator: '=', figure: amount(given.cost), labels: ['in no plate cost'], result: true },
  ];
}

/** Whether what is printed of the sum does not add up as printed, so that it has to be said. */
export function isRoundedApart(dish: DishFigures): boolean {
  const { figures, currency } = dish;
  if (!figures?.netPrice || !figures.plateCost || !figures.margin || !figures.contribution) return false;
  const coins = (amount: string) => printedCoins(amount, currency);
  const { netPrice, plateCost, margin, contribution, sold } = figures;
  return coins(netPrice) - coins(plateCost) !== coins(margin) || coins(margin) * sold !== coins(contribution);
}

/** How much of the plate hangs on its dearest ingredient, and what changed since the period before. */
export function dishSentences(dish: DishFigures, purse: Purse): Phrase {
  return [...dearest(dish, purse), ...changed(dish, purse), ...turns(dish, purse)];
}

function dearest({ bought, figures, given }: DishFigures, purse: Purse): Part[] {
  if (figures && figures.plateCost === null) return halfKnown(figures, purse);
  const whole = figures?.plateCost ?? given?.perCover ?? null;
  const [first, second] = bought;
  if (first?.isEstimate && bought.length === 1)
    return [
      'What the plate costs is the owner’s estimate, ',
      figurePart(money(first.cost, purse)),
      '; it has no recipe. ',
    ];
  if (whole === null || !first || first.isEstimate || Number(whole) <= 0) return [];
  const share = Number(first.cost) / Number(whole);
  const of: Part[] = [figurePart(money(first.cost, purse)), ' of ', figurePart(money(whole, purse))];
  if (share >= 0.25) {
    return [
      `${capital(shareWords(share))} of the plate hangs on one price: `,
      namePart(first.item),
      ' is ',
      ...of,
      '. ',
    ];
  }
  const next: Part[] = second
    ? [', then ', namePart(second.item), ' with ', figurePart(money(second.cost, purse))]
    : [];
  return ['No price carries the plate: ', namePart(first.item), ' is ', ...of, ...next, '. '];
}

/** Of a plate of which a part is not known: how much is, and that the rest hangs on it. */
function halfKnown(figures: NonNullable<DishFigures['figures']>, purse: Purse): Part[] {
  const { floor, linesMissing, linesTotal } = figures;
  if (linesMissing === null || linesTotal === null)
    return ['It has no recipe and no estimate, so what it costs and leaves is not known.'];
  const missing = `${countWord(linesMissing, purse.locale)} of its ${countWord(linesTotal, purse.locale)} lines ${linesMissing === 1 ? 'has' : 'have'} no cost`;
  const known: Part[] = floor === null ? [] : ['The plate costs at least ', figurePart(money(floor, purse)), ': '];
  return [
    ...known,
    known.length === 0 ? `${missing.charAt(0).toUpperCase()}${missing.slice(1)}` : missing,
    ', so what it leaves is not known.',
  ];
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

const SHARES: readonly (readonly [number, string])[] = [
  [0.97, 'nearly all'],
  [0.72, 'three quarters'],
  [0.63, 'two thirds'],
  [0.56, 'three fifths'],
  [0.52, 'more than half'],
  [0.48, 'half'],
  [0.44, 'nearly half'],
  [0.375, 'two fifths'],
  [0.315, 'a third'],
  [0.275, 'three tenths'],
];

/** A share of a plate in words: 0.3 is three tenths. */
export function shareWords(share: number): string {
  return SHARES.find(([from]) => share >= from)?.[1] ?? 'a quarter';
}

/** Of a change, this share has to be one ingredient's for the sentence to say "most of it". */
const MOST = 0.6;
const ALL = 0.95;

function changed({ change, month }: DishFigures, purse: Purse): Part[] {
  if (change === null || change.plateCost === null) return [];
  const { before, after, price, recipe, ingredients } = change.plateCost;
  const since = `Since ${briefly(change.month, month, purse.locale)} `;
  const moved = Number(after) - Number(before);
  const places = Math.abs(moved) < 0.005 ? exactMoney(Math.abs(moved), purse) : money(Math.abs(moved), purse);
  if (Math.abs(moved) < 0.0005) return [since, 'the plate costs the same.'];
  const way = moved > 0 ? ' more' : ' less';
  const said: Part[] = [since, 'the plate costs ', figurePart(`${places}${way}`)];
  const isPrice = Math.abs(Number(price)) >= MOST * (Math.abs(Number(price)) + Math.abs(Number(recipe)));
  const parts = ingredients.map((each) => ({ ...each, moved: Number(each.price) + Number(each.recipe) }));
  const main = [...parts].sort((a, b) => Math.sign(moved) * (b.moved - a.moved))[0];
  const share = main ? main.moved / moved : 0;
  const why = isPrice ? 'dearer' : '';
  if (!main || share < MOST) return [...said, isPrice ? ', by prices.' : ', by the recipe.'];
  const much = share >= ALL ? ', all of it ' : ', most of it ';
  const through: Part[] = isPrice ? [] : [' in the recipe'];
  return [...said, much, ...(why && moved < 0 ? ['cheaper '] : []), namePart(main.item), ...through, '.'];
}

const BY: Readonly<Record<TurningFigures['unit'], string>> = { kg: 'a kg', l: 'a litre', each: 'each' };

/** €121.08 a kg. */
export function turningWords(price: string, unit: TurningFigures['unit'], purse: Purse): string {
  return `${money(price, purse)} ${BY[unit]}`;
}

/** A turning price further away than this many times the price of today is told in no sentence. */
const FAR = 5;

/** Up to which price of what costs most in it a dish stays what it is, where that is near enough to be told. */
function turns({ turning, bought, standings }: DishFigures, purse: Purse): Part[] {
  const own = standings[0]?.class ?? null;
  const first = turning.find(({ ingredient }) => ingredient === bought[0]?.item);
  if (own === null || !first?.priceNow || !first.turningPrice || first.classBeyond === null) return [];
  const times = Number(first.turningPrice) / Number(first.priceNow);
  const price = figurePart(turningWords(first.turningPrice, first.unit, purse));
  if (times >= 1 && times <= FAR)
    return [' It stays a ', namePart(own), ' until ', namePart(first.ingredient), ' reaches ', price, '.'];
  if (times < 1 && times >= 1 / FAR)
    return [
      ' It becomes a ',
      namePart(first.classBeyond),
      ' where ',
      namePart(first.ingredient),
      ' falls to ',
      price,
      '.',
    ];
  return [];
}

/** The title of the page of a dish. */
export function dishTitle({ item, month }: { readonly item: string; readonly month: string }, locale: string): string {
  return `${item}, ${periodName(month, locale)}`;
}

/** The latest of some periods in which a dish was on sale; null where it was in none. */
export function latestWith(periods: readonly { readonly month: string; readonly onSale: boolean }[]): string | null {
  return periods.findLast(({ onSale }) => onSale)?.month ?? null;
}

/** A dish that was not on sale in the period that is looked at: what there is instead. */
export function dishState(
  { item, month }: { readonly item: string; readonly month: string },
  latest: string | null,
  locale: string,
): StateWords {
  const period = periodName(month, locale);
  const words = { title: `${item} was not on sale in ${period}` };
  if (latest === null) {
    return {
      ...words,
      text: 'Nor in any of the periods before it. What it would cost by its recipe stands below, where it has one.',
    };
  }
  return {
    ...words,
    text: 'Below stand what it would cost by its recipe, and the periods in which it was on the menu.',
    action: periodName(latest, locale),
  };
}

/** Which day a working stands for, where no period asked for it. */
export function workingDay(date: string, locale: string): string {
  return `Worked out for ${dayName(date, locale)}, by the recipe and the prices of that day.`;
}

/** What the figures of the page stand on. */
export function dishBasis(dish: DishFigures, source: string): readonly string[] {
  const scope = dish.mixSection === null ? 'whole menu' : `section ${dish.mixSection}`;
  if (dish.given) return ['cost by the price in force each day', 'guests as counted each day'];
  return [
    ...(dish.standings.length > 0 ? [source, `class and shares in the ${scope}`] : []),
    'achieved price, net',
    'all channels together',
    'cost by the price in force each day',
  ];
}

/** A change of money with its sign, to as many places as tell it from nothing. */
export function changeFigure(amount: string, purse: Purse): string {
  const small =
    Math.abs(Number(amount)) < 0.005 && Number(exactMoneyFigure(amount, purse).replace('\u2212', '-')) !== 0;
  return signedFigure(amount, purse.locale, small ? 4 : 2);
}
