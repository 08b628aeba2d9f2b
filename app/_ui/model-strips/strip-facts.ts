import type { MenuModelsAnswer, ModelledItemAnswer } from '@/lib/answers/menu-models-shape';
import { currencySign, type Purse } from '@/lib/format/money';
import { AXES, type Axis, axisFigure, axisName, thresholdFigure } from '@/lib/format/words/menu-models';
import { shortNames } from '@/lib/format/words/short-names';
import { type MarkShape, shapesOfSections } from '../mark-shape';

/** A dish on an axis. */
export interface StripMark {
  readonly item: string;
  readonly name: string;
  readonly shape: MarkShape;
  readonly value: number;
  readonly figure: string;
}

/** One axis with its threshold and every dish that has a place on it; the favourable side is where `rising` says: right where true. */
export interface Strip {
  readonly axis: Axis;
  readonly name: string;
  readonly rising: boolean;
  readonly threshold: { readonly value: number; readonly figure: string } | null;
  readonly marks: readonly StripMark[];
}

const VALUES: Readonly<Record<Axis, (item: ModelledItemAnswer) => number | string | null>> = {
  popularity: (item) => item.popularity,
  margin: (item) => item.margin,
  foodCost: (item) => item.foodCostPct,
  contribution: (item) => item.contribution,
  goalValue: (item) => item.goalValue,
  labour: (item) => item.recipeLabour,
};

const FALLING: ReadonlySet<Axis> = new Set(['foodCost', 'labour']);

/** The axes that have anything on them. */
export function stripsOf(answer: MenuModelsAnswer, purse: Purse): readonly Strip[] {
  const shapes = shapesOfSections(answer.items.map(({ section }) => section));
  const short = shortNames(answer.items.map(({ item }) => item));
  const { thresholds } = answer;
  const at: Readonly<Record<Axis, number | string | null>> = {
    popularity: thresholds.popularityFactor,
    margin: thresholds.margin,
    foodCost: thresholds.foodCostPct,
    contribution: thresholds.contribution,
    goalValue: thresholds.goalValue,
    labour: thresholds.labour,
  };
  return (Object.keys(AXES) as Axis[]).flatMap((axis): Strip[] => {
    const marks = answer.items.flatMap((item, index): StripMark[] => {
      const value = VALUES[axis](item);
      if (value === null) return [];
      const shape = shapes.get(item.section) ?? 'circle';
      const number = Number(value);
      return [
        {
          item: item.item,
          name: short[index] ?? item.item,
          shape,
          value: number,
          figure: axisFigure(axis, number, purse),
        },
      ];
    });
    const limit = at[axis];
    if (marks.length === 0) return [];
    const threshold =
      limit === null ? null : { value: Number(limit), figure: thresholdFigure(axis, Number(limit), purse) };
    return [{ axis, name: axisName(axis, currencySign(purse)), rising: !FALLING.has(axis), threshold, marks }];
  });
}
