import type { Allergen, AllergenList } from '../allergens/allergen-lists';
import { breakEvenSalesChange } from '../break-even-sales';
import type { CostedPeriod } from '../costed-period';
import type { ItemId } from '../facts';
import { type Carried, carriedBy } from './carried';

/** An item of a mix, as far as advice looks at it. */
export interface AdvisedItem {
  readonly id: ItemId;
  readonly sold: number;
  /** Contribution margin per portion; null where it is not known. */
  readonly margin: number | null;
  /** Share of the resamples in which it leaves less than the average; null where there are none. */
  readonly leavesLess: number | null;
}

/** What can be said of one item with its condition. Money in venue currency per portion, net of sales tax. */
export interface Advice {
  /** Margin less the average margin: below zero where it leaves less. */
  readonly againstAverage: number;
  readonly leavesLess: number | null;
  /** The rise of its net price at which it leaves the average; null where it does already, or where it alone makes the average. */
  readonly rise: number | null;
  /** Share of its portions that it may lose at that rise before it leaves less in the period than now; null without a rise that pays. */
  readonly mayLose: number | null;
  /**
   * Taking it off pays only if more than this share of its guests order another: 0 and less where it leaves nothing, above 1 where it never
   * pays. Null where the others leave nothing, or were not sold.
   */
  readonly takenOffFrom: number | null;
  /** Allergens of the list that nothing in it declares, alone among the items on the menu on the last day. */
  readonly onlyWithout: readonly Allergen[];
  /** Its plating minutes, where they are the most of all the items. */
  readonly mostPlating: number | null;
}

/**
 * Advice on the items of a mix, by item: conditions, never commands. Items without a known margin have none.
 *
 * average = sum(CM sold) / sum(sold); rise = (average - CM_i) / (1 - m_i) with m_i its share of the costed portions, since the dish lifts the
 * average too; may lose = rise / (CM_i + rise), the break-even sales change; taking off = CM_i / mean CM of the others.
 */
export function advice(
  period: CostedPeriod,
  items: readonly AdvisedItem[],
  list: AllergenList,
): ReadonlyMap<ItemId, Advice> {
  const costed = items.flatMap(({ margin, ...item }) => (margin === null ? [] : [{ ...item, margin }]));
  const sold = costed.reduce((sum, item) => sum + item.sold, 0);
  const left = costed.reduce((sum, item) => sum + item.margin * item.sold, 0);
  const nodes = items.flatMap(({ id }) => period.nodeOf.get(id) ?? []);
  const carried = carriedBy(period, nodes, list);
  if (sold <= 0) return new Map();
  return new Map(
    costed.map(({ id, sold: own, margin, leavesLess }) => {
      const rest = sold - own;
      return [
        id,
        {
          ...{ leavesLess, ...onMargin(margin, left / sold, own / sold) },
          takenOffFrom: rest > 0 ? shareOf(margin, (left - margin * own) / rest) : null,
          ...(carried.get(id) ?? NOTHING),
        },
      ] as const;
    }),
  );
}

const NOTHING: Carried = { onlyWithout: [], mostPlating: null };

/** An item's margin against the average, and the rise that reaches it. */
function onMargin(margin: number, average: number, share: number): Pick<Advice, 'againstAverage' | 'rise' | 'mayLose'> {
  const againstAverage = margin - average;
  const rise = againstAverage < 0 && share < 1 ? -againstAverage / (1 - share) : null;
  const change = rise === null ? null : breakEvenSalesChange(margin, rise);
  // a plate that costs more than it brings loses by every portion: it may lose them all
  return { againstAverage, rise, mayLose: change === null ? null : Math.min(1, -change) };
}

function shareOf(margin: number, others: number): number | null {
  return others > 0 ? margin / others : null;
}
