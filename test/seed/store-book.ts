import { dayText } from '@/lib/core/days';
import { PARTS } from '@/seed/demo/ingredients/measures-and-parts';
import { COUNTS, type Count } from '@/seed/demo/kitchen/counts';
import { baseAmount, convert, ingredientSizes } from '@/seed/demo/kitchen/measures';
import { MOVES } from '@/seed/demo/kitchen/moves';
import { addNeeds, needsOfAmount, wholeUnitsForParts } from '@/seed/demo/kitchen/needs';
import { ingredientNamed, recipeOn } from '@/seed/demo/kitchen/recipe-book';
import { SHOULD_HAVE_USED } from '@/seed/demo/kitchen/served';
import { TRIALS } from '@/seed/demo/kitchen/trials';
import { SUPPLIERS } from '@/seed/demo/suppliers/all-suppliers';
import { packContent } from '@/seed/demo/trade/price-in-force';
import { PURCHASES } from '@/seed/demo/trade/purchases';

type Amounts = Map<string, number>;

function inBase(ingredient: string, quantity: number, unit: string): number {
  const known = ingredientNamed(ingredient);
  if (!known) throw new Error(ingredient);
  const { base, amount } = baseAmount(ingredient, quantity, unit);
  return convert(ingredient, amount, base, known.measure, ingredientSizes(known));
}

/** Parts as whole units, by what they are worth: sum of share * grams / grams a unit. */
function wholeAgain(amounts: Amounts): Amounts {
  const whole = new Map([...amounts].filter(([resource]) => !resource.includes('/')));
  for (const { ingredient, part, output, costSharePct } of PARTS) {
    const units = ((amounts.get(`${ingredient}/${part}`) ?? 0) / output[0]) * (costSharePct / 100);
    whole.set(ingredient, (whole.get(ingredient) ?? 0) + units);
  }
  return whole;
}

function addCount(into: Amounts, { item, part, quantity, unit, day }: Count): void {
  if (part !== undefined) {
    addNeeds(into, new Map([[`${item}/${part}`, baseAmount(item, quantity, unit).amount]]), 1);
  } else if (ingredientNamed(item)) {
    addNeeds(into, new Map([[item, inBase(item, quantity, unit)]]), 1);
  } else {
    const kept = 1 - (recipeOn(item, dayText(day)).breakagePct ?? 0) / 100;
    addNeeds(into, needsOfAmount(item, quantity, unit, dayText(day)), kept);
  }
}

/** What a stocktake found, components exploded into what was bought. */
export function stockOn(date: string): Amounts {
  const stock: Amounts = new Map();
  for (const count of COUNTS.filter(({ day }) => dayText(day) === date)) addCount(stock, count);
  return wholeAgain(stock);
}

/** What came in a month, net of what went back. */
export function boughtIn(month: string): Amounts {
  const bought: Amounts = new Map();
  for (const line of PURCHASES.filter(({ day }) => dayText(day).startsWith(month))) {
    const offer = SUPPLIERS.find(({ name }) => name === line.supplier)?.offers.find(({ code }) => code === line.code);
    if (!offer) continue;
    const { quantity, unit } = line;
    const amount =
      quantity === undefined || unit === undefined
        ? (line.packs ?? 0) * packContent(offer)
        : inBase(offer.ingredient, quantity, unit);
    bought.set(offer.ingredient, (bought.get(offer.ingredient) ?? 0) + amount);
  }
  return bought;
}

/** What a month's plates, waste, staff food and trials account for. */
export function accountedForIn(month: string): Amounts {
  const amounts: Amounts = new Map();
  for (const [day, needs] of SHOULD_HAVE_USED) if (dayText(day).startsWith(month)) addNeeds(amounts, needs, 1);
  for (const { day, item, quantity, unit, reason } of MOVES) {
    if (!dayText(day).startsWith(month) || reason === 'broken') continue;
    addNeeds(amounts, needsOfAmount(item, quantity, unit, dayText(day), { as: 'bought' }), 1);
  }
  for (const { day, lines } of TRIALS.filter((trial) => trial.day.startsWith(month))) {
    for (const [item, quantity, unit] of lines)
      addNeeds(amounts, needsOfAmount(item, quantity, unit, day, { as: 'bought' }), 1);
  }
  // parts count as the eggs that had to be cracked for them, surplus and all
  const whole = new Map([...amounts].filter(([resource]) => !resource.includes('/')));
  addNeeds(whole, wholeUnitsForParts(amounts), 1);
  return whole;
}
