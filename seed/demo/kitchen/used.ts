import { type Day, dayText, parseDay, weekday } from '../../../lib/core/days';
import { COUNT_DAYS, daysBetween, FIRST_DAY, LAST_DAY } from '../trade/calendar';
import { heavyHand } from './heavy-hand';
import { allowedBreakage, MOVES } from './moves';
import { addNeeds, needsOf, needsOfAmount } from './needs';
import { PREPARED } from './prepared';
import { recipeOn } from './recipe-book';
import { SHOULD_HAVE_USED } from './served';
import { TRIALS } from './trials';

/**
 * What really went out of the store each day, by resource: plates as the recipes say and the heavy hand on top; the waste book;
 * trials; and what was made ahead, which the stocktakes find as components.
 */
export function usedByDay(): ReadonlyMap<Day, ReadonlyMap<string, number>> {
  const days = new Map<Day, Map<string, number>>(daysBetween(FIRST_DAY, LAST_DAY).map((day) => [day, new Map()]));
  for (const [day, used] of days) {
    const month = dayText(day).slice(0, 7);
    for (const [resource, amount] of SHOULD_HAVE_USED.get(day) ?? []) {
      const [ingredient = ''] = resource.split('/');
      used.set(resource, amount * heavyHand(ingredient, month));
    }
  }
  addMoves(days);
  addTrials(days);
  addMadeAhead(days);
  return days;
}

type Days = ReadonlyMap<Day, Map<string, number>>;

function add(days: Days, day: Day, item: string, quantity: number, unit: string): void {
  const used = days.get(day);
  if (used) addNeeds(used, needsOfAmount(item, quantity, unit, dayText(day), { as: 'bought' }), 1);
}

/** Breakage that the recipes allow for is in the plates already: only what differs from it counts. */
function addMoves(days: Days): void {
  for (const { day, item, quantity, unit, reason } of MOVES) {
    if (reason !== 'broken' || weekday(day) !== 7) add(days, day, item, quantity, unit);
    else {
      const kept = 1 - (recipeOn(item, dayText(day)).breakagePct ?? 0) / 100;
      const used = days.get(day);
      if (used) addNeeds(used, needsOf(item, dayText(day)), (quantity - allowedBreakage(item, day)) * kept);
    }
  }
}

function addTrials(days: Days): void {
  for (const { day, lines } of TRIALS) {
    const read = parseDay(day);
    if (read === null) throw new Error(`${day} is no day`);
    for (const [item, quantity, unit] of lines) add(days, read, item, quantity, unit);
  }
}

/** On the evening of a stocktake the fridges hold more or less than at the one before. */
function addMadeAhead(days: Days): void {
  for (const [at, day] of COUNT_DAYS.entries()) {
    const before = COUNT_DAYS[at - 1];
    const used = days.get(day);
    if (before === undefined || !used) continue;
    const change = new Map<string, number>();
    for (const { item, amount } of PREPARED.get(day) ?? []) change.set(item, amount);
    for (const { item, amount } of PREPARED.get(before) ?? []) change.set(item, (change.get(item) ?? 0) - amount);
    for (const [item, amount] of change) {
      const kept = 1 - (recipeOn(item, dayText(day)).breakagePct ?? 0) / 100;
      addNeeds(used, needsOf(item, dayText(day)), amount * kept);
    }
  }
}
