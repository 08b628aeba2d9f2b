import { type Day, dayText, weekday } from '../../../lib/core/days';
import { type Random, seededRandom } from '../../../lib/core/random';
import { swing, times } from '../dice';
import { SEED } from '../house';
import { MENU, menuPriceOn } from '../menu';
import { rounded } from '../rounding';
import { type Appetite, DISHES_WANTED, DRINKS_WANTED, OUT_OF_THE_HOUSE_WANTED, SET_MENUS_WANTED } from './appetite';
import { summerness, TRADING_DAYS, yearsOpen } from './calendar';
import { COVERS } from './covers';

/** What the till rang up of an item in a channel on one day. */
export interface Sale {
  readonly day: Day;
  readonly item: string;
  readonly channel: 'dine_in' | 'takeaway' | 'delivery';
  readonly sold: number;
  readonly comps: number;
  /** What was paid, tax inside, after the discount. */
  readonly gross: number;
  readonly discount: number;
}

/** Plates that a guest who does not take a set menu orders. */
const PLATES_PER_GUEST = 1.14;
const COMPED = 0.008;
/** Guests who turn to another plate when a price rises by a per cent, in per cent. */
const PRICE_SENSE = 1.1;
const WEEKS_OF_NOVELTY = 4;
const LOCALS_EVENING = {
  items: ['Harbour brownie, malt ice', 'Drinking chocolate, warm madeleines'],
  weekday: 3,
  off: 0.1,
};

function wanted(appetite: Appetite, day: Day): number {
  const { liking, summer = 0, night = 0, sunday = 0, perYear = 0 } = appetite;
  const isNight = [5, 6].includes(weekday(day));
  const isSunday = weekday(day) === 7;
  const sway = (1 + summer * summerness(day)) * (isNight ? 1 + night : 1) * (isSunday ? 1 + sunday : 1);
  return liking * sway * (1 + perYear * yearsOpen(day));
}

/** A dearer plate is ordered less, a new one more for its first weeks. */
function pull(item: string, day: Day): number {
  const text = dayText(day);
  const steps = MENU.filter(
    (step) => step.item === item && step.channel === 'dine_in' && step.from <= text && !step.off,
  );
  const first = steps[0];
  const latest = steps.at(-1);
  if (!first || !latest) return 1;
  const weeks = (Date.parse(text) - Date.parse(latest.from)) / (7 * 86_400_000);
  const isNew = latest.from > '2025-05-01' && steps.length === 1;
  const novelty = isNew && weeks < WEEKS_OF_NOVELTY ? 1 + 0.25 * (1 - weeks / WEEKS_OF_NOVELTY) : 1;
  return novelty * (latest.price / first.price) ** -PRICE_SENSE;
}

function rung(day: Day, item: string, channel: Sale['channel'], sold: number, random: Random): Sale | null {
  const comps = channel === 'dine_in' ? times(random, sold * COMPED) : 0;
  const price = menuPriceOn(item, channel, dayText(day));
  if (price === null || sold + comps === 0) return null;
  const month = Number(dayText(day).slice(5, 7));
  const isLocals = weekday(day) === LOCALS_EVENING.weekday && (month <= 3 || month >= 11) && channel === 'dine_in';
  const discount = isLocals && LOCALS_EVENING.items.includes(item) ? rounded(sold * price * LOCALS_EVENING.off, 2) : 0;
  return { day, item, channel, sold, comps, gross: rounded(sold * price - discount, 2), discount };
}

function salesOf(day: Day, random: Random): readonly Sale[] {
  const covers = COVERS.get(day) ?? 0;
  const text = dayText(day);
  const sets = Object.entries(SET_MENUS_WANTED).map(([item, appetite]) => ({
    item,
    sold: times(random, covers * wanted(appetite, day)),
  }));
  const aLaCarte = Math.max(0, covers - sets.reduce((sum, { sold }) => sum + sold, 0));
  const onMenu = Object.entries(DISHES_WANTED)
    .filter(([item]) => menuPriceOn(item, 'dine_in', text) !== null)
    .map(([item, appetite]) => ({ item, weight: wanted(appetite, day) * pull(item, day) * swing(random, 0.16) }));
  const weights = onMenu.reduce((sum, { weight }) => sum + weight, 0);
  const plates = onMenu.map(({ item, weight }) => ({
    item,
    sold: times(random, (aLaCarte * PLATES_PER_GUEST * weight) / weights),
  }));
  const drinks = Object.entries(DRINKS_WANTED).map(([item, appetite]) => ({
    item,
    sold: times(random, covers * wanted(appetite, day)),
  }));
  const indoors = [...plates, ...sets, ...drinks].map(({ item, sold }) => rung(day, item, 'dine_in', sold, random));
  const outdoors = Object.entries(OUT_OF_THE_HOUSE_WANTED).flatMap(([item, channels]) =>
    (['takeaway', 'delivery'] as const).map((channel) =>
      rung(day, item, channel, times(random, wanted(channels[channel], day)), random),
    ),
  );
  return [...indoors, ...outdoors].filter((sale): sale is Sale => sale !== null);
}

function drawSales(): readonly Sale[] {
  const random = seededRandom(SEED + 2);
  return TRADING_DAYS.flatMap((day) => salesOf(day, random));
}

export const SALES: readonly Sale[] = drawSales();
