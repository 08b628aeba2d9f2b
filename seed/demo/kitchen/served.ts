import { type Day, dayText } from '../../../lib/core/days';
import { COVERS } from '../trade/covers';
import { SALES } from '../trade/sales';
import { baseAmount, batchSizes, convert } from './measures';
import { addNeeds, type Needs, needsOf, outputOf } from './needs';
import { CHANGE_DAYS, ingredientNamed, recipeOn } from './recipe-book';

const PRE_DESSERT = 'Pre-dessert';
const NOTHING: Needs = new Map();

type NeedsOfPlate = (item: string, day: string, channel: string) => Needs;

/** What the plates, comps and spoonfuls of each day came to, by something that every plate needs. */
function byDay(needsOfPlate: NeedsOfPlate): ReadonlyMap<Day, Needs> {
  const days = new Map<Day, Map<string, number>>();
  for (const [day, covers] of COVERS) {
    const needs = new Map<string, number>();
    addNeeds(needs, needsOfPlate(PRE_DESSERT, dayText(day), 'dine_in'), covers);
    days.set(day, needs);
  }
  for (const { day, item, channel, sold, comps } of SALES) {
    const needs = days.get(day);
    if (needs) addNeeds(needs, needsOfPlate(item, dayText(day), channel), sold + comps);
  }
  return days;
}

const SEEN = new Map<string, Needs>();

/** Components in one served plate, in the unit in which each comes first; those inside components too. */
function componentsOf(name: string, day: string): Needs {
  const epoch = CHANGE_DAYS.filter((from) => from <= day).at(-1) ?? '';
  const key = `${name}|${epoch}`;
  const before = SEEN.get(key);
  if (before) return before;
  const recipe = recipeOn(name, day);
  const made = outputOf(recipe) * (1 - (recipe.breakagePct ?? 0) / 100);
  const needs = new Map<string, number>();
  for (const [item, quantity, unit, detail] of recipe.lines) {
    if (ingredientNamed(item)) continue;
    const part = recipeOn(item, day);
    const { base, amount } = baseAmount(item, quantity, unit);
    const into = part.gives ? baseAmount(item, 1, part.gives[1]).base : 'each';
    const share = (detail?.sharePct ?? 100) / 100;
    const each = (convert(item, amount, base, into, batchSizes(part)) * share) / made;
    if (part.kind === 'component') addNeeds(needs, new Map([[item, 1]]), each);
    addNeeds(needs, componentsOf(item, day), each);
  }
  SEEN.set(key, needs);
  return needs;
}

/** What a day's plates should have used of everything bought. */
export const SHOULD_HAVE_USED: ReadonlyMap<Day, Needs> = byDay(needsOf);

/** What a day's plates needed of every component. */
export const COMPONENTS_SERVED: ReadonlyMap<Day, Needs> = byDay((item, day) => componentsOf(item, day));

export function componentsServed(day: Day): Needs {
  return COMPONENTS_SERVED.get(day) ?? NOTHING;
}
