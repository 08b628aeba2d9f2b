import { csvText } from '../format/csv-text';
import { type CostLineAnswer, costLineShape, type DishCostAnswer } from './dish-cost-shape';

/** Fields that hold several values: they stand in the JSON only. */
const MANY_VALUED = new Set(['offer', 'recipe', 'issues', 'lines']);
const OF_THE_OFFER = [
  'supplier',
  'code',
  'packCount',
  'packSize',
  'packUnit',
  'price',
  'priceKind',
  'priceFrom',
] as const;

/** One line a line of the working, each under the one it is part of; `level` says how deep it stands, from 1. */
export function dishCostCsv(answer: DishCostAnswer): string {
  const own = Object.keys(costLineShape.shape).filter((name) => !MANY_VALUED.has(name));
  return csvText(
    ['level', ...own, ...OF_THE_OFFER],
    answer.lines.flatMap((line) => flat(line, 1)),
  );
}

function flat(line: CostLineAnswer, level: number): readonly Readonly<Record<string, unknown>>[] {
  const offer = Object.fromEntries(OF_THE_OFFER.map((name) => [name, line.offer?.[name] ?? null]));
  return [{ ...line, level, ...offer }, ...line.lines.flatMap((each) => flat(each, level + 1))];
}
