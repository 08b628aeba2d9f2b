import { dayText } from '../core/days';
import { noSuchList } from '../format/words/problems';
import type { AllergenList } from '../model/allergens/allergen-lists';
import { type WhatsInIt, whatsInIt } from '../model/allergens/whats-in-it';
import type { ItemId } from '../model/facts';
import { segmentOf } from '../model/segments';
import { usualChannel } from '../model/usual-channel';
import { costWorking } from '../reports/cost-working';
import type { Asker } from '../session/asker';
import { writtenCost } from './dish-cost-written';
import { type KitchenAsked, kitchenOn } from './kitchen-on';
import type { RecipeAnswer } from './kitchen-shape';
import { type Answered, answered, refused } from './problem';
import { readItem, writtenParts } from './written-item';

export interface RecipeAsked extends KitchenAsked {
  /** Name or number. */
  readonly item: string;
  /** Whose list of allergens, eu or us; null: the EU's. */
  readonly list: string | null;
}

/** One thing that is made: all its versions as they are written, what it costs on a day line by line, what is in it, what uses it. */
export async function recipeAnswer(asker: Asker, asked: RecipeAsked): Promise<Answered<RecipeAnswer>> {
  const list = asked.list ?? 'eu';
  if (list !== 'eu' && list !== 'us') return refused(400, noSuchList(list));
  const kitchen = await kitchenOn(asker, asked, (tx, at) => readItem(tx, at.venue, asked.item, false));
  if (!kitchen.ok) return kitchen;
  const { venue, day, costed, read } = kitchen.answer;
  if (!read.ok) return read;
  const { written, refusedLines } = read.answer;
  const id = written.id as ItemId;
  const node = costed.nodeOf.get(id) ?? -1;
  const thing = costed.things[node];
  const working = thing && costWorking(costed, id, day, usualChannel(thing, day));
  if (!working) throw new Error('everything that has a name has a working');
  return answered({
    ...{ venue, date: dayText(day), currency: costed.venue.currency, locale: costed.venue.locale },
    ...writtenParts(read.answer, day),
    refusedLines,
    cost: writtenCost(working),
    whatsInIt: writtenWhatsInIt(whatsInIt(costed, node, segmentOf(costed.segments, day), list), list),
  });
}

export function writtenWhatsInIt(
  { allergens, unknownFrom, otherWords, cautions }: WhatsInIt,
  list: AllergenList,
): RecipeAnswer['whatsInIt'] {
  return {
    list,
    allergens: allergens.map((each) => ({ ...each, from: [...each.from] })),
    unknownFrom: [...unknownFrom],
    otherWords: [...otherWords],
    cautions: cautions.map(({ caution, from }) => ({ caution, from: [...from] })),
  };
}
