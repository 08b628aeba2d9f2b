import type { Day } from '../core/days';
import type { RowFault } from '../model/refusal';
import { closedFault, fault, isoDay } from './plan-keyed';

/** What a row of offers.csv says about which offer of an ingredient is bought; offers and ingredients by their keys. */
export interface StatedChoice {
  readonly line: number;
  readonly offer: string;
  readonly ingredient: string;
  /** Null: it does not say. */
  readonly chosen: boolean | null;
  readonly from: Day | null;
}

/** A choice as it is stored: from a day on, this offer of the ingredient is bought. */
export interface StoredChoice {
  readonly id: number;
  readonly offer: string;
  readonly ingredient: string;
  readonly from: Day | null;
}

export interface ChoicePlan {
  /** Why a row's choice cannot be taken, by the place of the row. */
  readonly faults: readonly (RowFault | null)[];
  /** Whether a row alters who is chosen, by the place of the row. */
  readonly alters: readonly boolean[];
  /** Choices that the row at a place makes, or takes over from another offer (id). */
  readonly put: readonly (Omit<StoredChoice, 'id'> & { readonly id: number | null; readonly place: number })[];
  readonly remove: readonly number[];
}

const slotOf = (choice: Pick<StoredChoice, 'ingredient' | 'from'>): string =>
  `${choice.ingredient}|${isoDay(choice.from) ?? ''}`;

/**
 * Which choices the rows of a file make and end. An offer that says yes or no states all its days: its earlier choices that are not
 * said again end, and so do those of an offer that now is of another ingredient. One day of an ingredient has one choice: a
 * second offer that claims it in the same file is refused, in a later file it takes over.
 */
export function planChoices(
  rows: readonly StatedChoice[],
  stored: readonly StoredChoice[],
  closedThrough: Day | null,
): ChoicePlan {
  const holders = new Map(stored.map((choice) => [slotOf(choice), choice]));
  const claims = new Map<string, StatedChoice>();
  const firstRow = new Map<string, number>();
  const says = new Set<string>();
  const faults: (RowFault | null)[] = rows.map(() => null);
  const alters = rows.map(() => false);
  const put: ChoicePlan['put'][number][] = [];
  for (const [place, row] of rows.entries()) {
    if (!firstRow.has(row.offer)) firstRow.set(row.offer, place);
    if (row.chosen !== null) says.add(row.offer);
    if (!row.chosen) continue;
    const slot = slotOf(row);
    const claim = claims.get(slot);
    if (claim && claim.offer !== row.offer) {
      faults[place] = fault('chosen-twice', 'chosen', 'yes', { line: claim.line });
    }
    if (claim) continue;
    const holder = holders.get(slot);
    if (holder?.offer !== row.offer) {
      faults[place] = closedFault(row.from, closedThrough, 'chosen_from');
      if (faults[place]) continue;
      alters[place] = true;
      const { offer, ingredient, from } = row;
      put.push({ place, id: holder?.id ?? null, offer, ingredient, from });
    }
    claims.set(slot, row);
  }
  const remove: number[] = [];
  for (const choice of stored) {
    const place = firstRow.get(choice.offer);
    if (place === undefined || claims.has(slotOf(choice))) continue;
    if (!says.has(choice.offer) && rows[place]?.ingredient === choice.ingredient) continue;
    const closed = closedFault(choice.from, closedThrough, 'chosen_from');
    if (closed) faults[place] ??= closed;
    else remove.push(choice.id);
    alters[place] = true;
  }
  return { faults, alters, put: put.filter(({ place }) => !faults[place]), remove };
}
