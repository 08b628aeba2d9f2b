import { addDays, dayText } from '../core/days';
import { loadCounts } from '../db/load-stock';
import { negativeNumber, sameItemTwice } from '../format/words/prep-sheet';
import type { ItemId } from '../model/facts';
import { WEEKS_BACK } from '../model/prep/like-days';
import { type PrepComponent, prepSheet } from '../reports/prep-sheet';
import type { Asker } from '../session/asker';
import { type KitchenAsked, kitchenOn } from './kitchen-on';
import { askedThing } from './named-thing';
import type { PrepSheetAnswer } from './prep-sheet-shape';
import { type Answered, answered, refused } from './problem';
import { writtenIssues } from './written-issues';

export interface PrepAsked extends KitchenAsked {
  /** Portions that somebody expects instead of the mean, by name or number of the item. */
  readonly portions: readonly { readonly item: string; readonly portions: number }[];
  /** Guests that somebody expects; null: the mean. */
  readonly covers: number | null;
}

/** What to make for a day: expected portions, batches by component, what to take from the store, minutes by grade. */
export async function prepSheetAnswer(asker: Asker, asked: PrepAsked): Promise<Answered<PrepSheetAnswer>> {
  const said = [
    ...asked.portions.map(({ item, portions }) => [item, portions] as const),
    ['covers', asked.covers] as const,
  ];
  for (const [name, number] of said) {
    if (number !== null && !(number >= 0 && Number.isFinite(number))) return refused(400, negativeNumber(name));
  }
  const kitchen = await kitchenOn(
    asker,
    asked,
    (tx, { day }) => loadCounts(tx, { from: day, to: addDays(day, 1) }),
    WEEKS_BACK,
  );
  if (!kitchen.ok) return kitchen;
  const { venue, day, costed, read: counts } = kitchen.answer;
  const portions = new Map<ItemId, number>();
  for (const { item, portions: number } of asked.portions) {
    const thing = askedThing(costed, item);
    if (!thing.ok) return thing;
    if (portions.has(thing.answer.id)) return refused(400, sameItemTwice(thing.answer.name));
    portions.set(thing.answer.id, number);
  }
  const sheet = prepSheet(costed, day, { counts, portions, covers: asked.covers });
  return answered({
    ...{
      venue,
      date: dayText(day),
      currency: costed.venue.currency,
      locale: costed.venue.locale,
      like: sheet.like.map(dayText),
    },
    ...{ expectedCovers: sheet.expectedCovers, covers: sheet.covers },
    items: sheet.items.map(({ item, channel, expected, days, portions: served }) => ({
      ...{ item, channel, expected, days, portions: served },
    })),
    components: sheet.components.map(writtenComponent),
    ingredients: sheet.ingredients.map(({ id: _, ...ingredient }) => ingredient),
    work: sheet.work.map((work) => ({ ...work })),
    withoutMinutes: [...sheet.withoutMinutes],
    issues: writtenIssues(sheet.issues),
  });
}

function writtenComponent(component: PrepComponent): PrepSheetAnswer['components'][number] {
  const { id: _, held, earliest, cautions, ...same } = component;
  return {
    ...same,
    held: held?.quantity ?? null,
    countedOn: held === null ? null : dayText(held.countedOn),
    tooOld: held?.tooOld ?? false,
    earliest: earliest === null ? null : dayText(earliest),
    cautions: [...cautions],
  };
}
