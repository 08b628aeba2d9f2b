import type { Day } from '../../../lib/core/days';
import { PARTS } from '../ingredients/measures-and-parts';
import { partKey } from './needs';
import { usedByDay } from './used';

/** What is kept of parts left over at close, at most: grams of white in the freezer, grams of yolk under film, husks in the sugar jar. */
const KEPT: Readonly<Record<string, number>> = {
  'Shell eggs/white': 3500,
  'Shell eggs/yolk': 400,
  'Vanilla pods/husk': 40,
};

export interface StoreDay {
  /** Whole ingredients that went out, in base units. */
  readonly used: ReadonlyMap<string, number>;
  /** Parts in the freezer at close, in their own unit. */
  readonly partsLeft: ReadonlyMap<string, number>;
}

/** Eggs are cracked and pods split when a part runs out: as many as the part that runs out first asks for. */
function splitDay(needs: ReadonlyMap<string, number>, left: Map<string, number>): ReadonlyMap<string, number> {
  const whole = new Map([...needs].filter(([resource]) => !resource.includes('/')));
  for (const ingredient of new Set(PARTS.map((part) => part.ingredient))) {
    const parts = PARTS.filter((part) => part.ingredient === ingredient);
    const missing = parts.map(({ part, output }) => {
      const key = partKey(ingredient, part);
      return ((needs.get(key) ?? 0) - (left.get(key) ?? 0)) / output[0];
    });
    const cracked = Math.max(0, ...missing);
    whole.set(ingredient, (whole.get(ingredient) ?? 0) + cracked);
    for (const { part, output } of parts) {
      const key = partKey(ingredient, part);
      const rest = (left.get(key) ?? 0) + cracked * output[0] - (needs.get(key) ?? 0);
      left.set(key, Math.min(rest, KEPT[key] ?? Number.POSITIVE_INFINITY));
    }
  }
  return whole;
}

function openEachDay(): ReadonlyMap<Day, StoreDay> {
  const left = new Map<string, number>();
  return new Map(
    [...usedByDay()].map(([day, needs]) => {
      const used = splitDay(needs, left);
      return [day, { used, partsLeft: new Map(left) }];
    }),
  );
}

/** What went out of the store on each day from the first to the last, and which parts were left over. */
export const STORE: ReadonlyMap<Day, StoreDay> = openEachDay();
