import { type Day, dayText } from '../../../lib/core/days';
import { seededRandom } from '../../../lib/core/random';
import { between } from '../dice';
import { SEED } from '../house';
import { COUNT_DAYS, TRADING_DAYS } from '../trade/calendar';
import { isOnBooks, recipeOn } from './recipe-book';
import { componentsServed } from './served';

/** A component that was found in a fridge on the evening of a stocktake. */
export interface Prepared {
  readonly item: string;
  /** In the unit in which the recipe gives it first. */
  readonly amount: number;
  readonly place: string;
}

/** What is worth counting, and where it stands. */
const COUNTED: Readonly<Record<string, string>> = {
  'Custard base': 'Walk-in',
  'Dark crémeux': 'Walk-in',
  'Milk crémeux': 'Walk-in',
  'White mousse': 'Walk-in',
  'Whipped milk ganache': 'Walk-in',
  'Black sesame cream': 'Walk-in',
  'Chestnut cream': 'Walk-in',
  'Smoked tea ganache': 'Walk-in',
  'Pistachio ganache': 'Walk-in',
  'Chocolate sauce': 'Walk-in',
  'Mirror glaze': 'Walk-in',
  'Dulse caramel': 'Walk-in',
  'Lemon curd': 'Walk-in',
  'Passion fruit curd': 'Walk-in',
  'Raspberry conserve': 'Walk-in',
  'Poached quinces': 'Walk-in',
  'Black cherry compote': 'Walk-in',
  'Chocolate sponge': 'Freezer',
  'Honey parfait': 'Freezer',
  'Vanilla ice': 'Freezer',
  'Malt ice': 'Freezer',
  'Milk ice': 'Freezer',
  'Crème fraîche ice': 'Freezer',
  'Mint ice': 'Freezer',
  'Chocolate sorbet': 'Freezer',
  'Raspberry sorbet': 'Freezer',
  'Sea buckthorn sorbet': 'Freezer',
  'Sweet pastry': 'Freezer',
  Brownie: 'Pastry shelf',
  'Tide sheets': 'Chocolate room',
  'Hazelnut praline': 'Chocolate room',
  'Praline crisp': 'Chocolate room',
  'Sea salt bonbons': 'Chocolate room',
  'Praline squares': 'Chocolate room',
  'Chewy caramels': 'Chocolate room',
};

/** Nobody makes more than four days' worth ahead, sweets for the box apart. */
const MOST_DAYS_AHEAD = 4;

/** Mean use of a component over the next trading days, or the last ones where there are no more. */
function usePerDay(item: string, day: Day): number {
  const ahead = TRADING_DAYS.filter((each) => each > day).slice(0, 4);
  const days = ahead.length === 4 ? ahead : TRADING_DAYS.slice(-4);
  return days.reduce((sum, each) => sum + (componentsServed(each).get(item) ?? 0), 0) / days.length;
}

function drawPrepared(): ReadonlyMap<Day, readonly Prepared[]> {
  const random = seededRandom(SEED + 4);
  return new Map(
    COUNT_DAYS.map((day) => {
      const found = Object.entries(COUNTED).flatMap(([item, place]) => {
        const days = between(random, 0.6, 1.3);
        const perDay = usePerDay(item, day);
        if (perDay === 0 || !isOnBooks(item, dayText(day))) return [];
        const recipe = recipeOn(item, dayText(day));
        const keeps = Math.min(MOST_DAYS_AHEAD, (recipe.keepsDays ?? 1) * 0.6);
        const step = recipe.gives?.[1] === 'each' ? 1 : 50;
        const amount = Math.round((perDay * days * keeps) / step) * step;
        return amount > 0 ? [{ item, amount, place }] : [];
      });
      return [day, found];
    }),
  );
}

/** Prepared components at each stocktake. */
export const PREPARED: ReadonlyMap<Day, readonly Prepared[]> = drawPrepared();
