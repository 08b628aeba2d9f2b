import { dayText } from '../core/days';
import { noSuchList } from '../format/words/problems';
import { batchesOfPlate, noRecipeThen, notSoMany, portionsOfComponent } from '../format/words/recipe-card';
import type { ItemId } from '../model/facts';
import { recipeCard } from '../reports/recipe-card';
import type { Asker } from '../session/asker';
import { writtenRecipe } from './dish-cost-written';
import { type KitchenAsked, kitchenOn } from './kitchen-on';
import { type Answered, answered, refused } from './problem';
import { writtenWhatsInIt } from './recipe';
import type { RecipeCardAnswer } from './recipe-card-shape';
import { writtenIssues } from './written-issues';
import { readItem } from './written-item';

export interface CardAsked extends KitchenAsked {
  /** Name or number. */
  readonly item: string;
  /** Of what is plated; and of a component. Null: one. */
  readonly portions: number | null;
  readonly batches: number | null;
  /** Whose list of allergens, eu or us; null: the EU's. */
  readonly list: string | null;
}

/** A recipe scaled to portions or batches, for the bench. */
export async function recipeCardAnswer(asker: Asker, asked: CardAsked): Promise<Answered<RecipeCardAnswer>> {
  const list = asked.list ?? 'eu';
  if (list !== 'eu' && list !== 'us') return refused(400, noSuchList(list));
  const times = asked.portions ?? asked.batches ?? 1;
  if (!(times > 0 && times <= MOST)) return refused(400, notSoMany(MOST));
  const kitchen = await kitchenOn(asker, asked, (tx, { venue }) => readItem(tx, venue, asked.item, false));
  if (!kitchen.ok) return kitchen;
  const { venue, day, costed, read } = kitchen.answer;
  if (!read.ok) return read;
  const { written } = read.answer;
  const { kind, item } = written;
  if (kind === 'component' && asked.portions !== null) return refused(400, portionsOfComponent(item));
  if (kind !== 'component' && asked.batches !== null) return refused(400, batchesOfPlate(item));
  const card = recipeCard(costed, written.id as ItemId, day, { times, list });
  if (card === null || kind === 'ingredient') return refused(404, noRecipeThen(item, dayText(day)));
  const { validFrom } = card.recipe;
  const from = validFrom === null ? null : dayText(validFrom);
  const notes = written.versions.find((version) => version.validFrom === from)?.lines ?? [];
  return answered({
    ...{ venue, date: dayText(day), currency: costed.venue.currency, locale: costed.venue.locale, item, kind, times },
    ...{ recipe: writtenRecipe(card.recipe), gives: card.gives, serves: card.serves },
    lines: card.lines.map(({ share, usableYield, ...line }, place) => ({
      ...line,
      ...{ sharePct: share, usableYieldPct: usableYield, note: notes[place]?.note ?? null },
    })),
    ...{ handsOnMinutes: card.handsOnMinutes, grade: card.grade },
    ...{ platingMinutes: card.platingMinutes, platingGrade: card.platingGrade },
    ...{ shelfLifeDays: card.shelfLifeDays, thrownAtClose: card.thrownAtClose, smallestBatch: card.smallestBatch },
    whatsInIt: writtenWhatsInIt(card.whatsInIt, list),
    issues: writtenIssues(card.issues),
  });
}

const MOST = 100_000;
