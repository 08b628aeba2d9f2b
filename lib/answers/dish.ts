import { addDays, type Day } from '../core/days';
import type { Period } from '../core/periods';
import { type Database, openDatabase } from '../db/database';
import { inVenue } from '../db/in-venue';
import { loadFacts } from '../db/load-facts';
import { loadMenuPrices } from '../db/load-menu-prices';
import { notSold } from '../format/words/problems';
import { listOf } from '../model/allergens/allergen-lists';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, MenuPrice, VenueId } from '../model/facts';
import { type Advice, advice } from '../model/mix/advice';
import { homeSection } from '../model/mix/home-section';
import { MIX_MODELS } from '../model/mix/mix-models';
import { isOffered } from '../model/offered';
import type { Thing } from '../model/things';
import { trialCosts } from '../model/trial-costs';
import { allergens } from '../reports/allergens';
import { type DevelopedDish, development } from '../reports/development';
import { dish } from '../reports/dish';
import { dishChange } from '../reports/dish-change';
import { dishPeriods } from '../reports/dish-periods';
import type { MenuMix } from '../reports/menu-mix';
import type { Asker } from '../session/asker';
import { askedPeriod } from './asked-period';
import { askedVenue } from './asked-venue';
import { costedPeriods } from './costed-periods';
import type { DishAnswer } from './dish-shape';
import { dishTurning } from './dish-turning';
import { type DishFound, writtenDish } from './dish-written';
import { keptMix } from './kept-mix';
import { askedThing } from './named-thing';
import { pastPeriods } from './past-periods';
import { pricedPeriod } from './priced-period';
import { type Answered, answered, refused } from './problem';

/** A question about one dish in a period. */
export interface DishAsked {
  readonly venue: string | null;
  readonly month: string;
  /** Name or id. */
  readonly item: string;
}

/** One dish in depth: what it is, leaves and takes, what changed and why, and through the periods; the same for page, command and HTTP. */
export async function dishAnswer(asker: Asker, asked: DishAsked): Promise<Answered<DishAnswer>> {
  const db = await openDatabase();
  const venue = await askedVenue(db, asker, asked.venue);
  if (!venue.ok) return venue;
  const found = await askedPeriod(db, asker, venue.answer, asked.month);
  if (!found.ok) return found;
  const { period, before: earlier } = found.answer;
  const ranges = [earlier.range, period.range];
  const [before, everything] = (await costedPeriods(db, asker, venue.answer.id, ranges, 'everything')).periods;
  if (!before || !everything) throw new Error('two periods were asked for');
  const named = askedThing(everything, asked.item);
  if (!named.ok) return named;
  const thing = named.answer;
  const isBought = thing.kind === 'ingredient';
  if ((isBought || thing.kind === 'component') && !isOffered(thing)) return refused(404, notSold(thing.name, isBought));

  const past = await pastPeriods(db, asker, venue.answer.id, period);
  // costed for what is on offer, where it is: then its issues are those that the mix of the period has
  const offered = past.at(-1)?.costed;
  const now = offered?.nodeOf.has(thing.id) ? offered : everything;
  const section = homeSection(now, now.nodeOf.get(thing.id) ?? -1);
  const [earlierOffered] = (await costedPeriods(db, asker, venue.answer.id, [earlier.range])).periods;
  const mixes = earlierOffered && offered ? modelMixes(offered, earlierOffered, section) : [];
  const report = dish(now, thing.id, section);
  if (!report) throw new Error('everything that has a name is among the things');
  const priced = await pricedPeriod(asker, { venue: asked.venue, month: asked.month, section });
  const { menu, developed } = await stated(db, asker, venue.answer.id, period, everything, thing);
  return answered(
    writtenDish({
      ...{ month: period.name, before: earlier.name, report, section },
      mixes,
      advice: advised(now, mixes, thing.id),
      turning: priced.ok ? dishTurning(priced.answer.model, thing.name, report.bought, report.venue.currency) : [],
      change: dishChange(before, everything, thing.id, section),
      periods: dishPeriods(
        past.map(({ costed }) => costed),
        thing.id,
        section,
      ),
      months: past.map(({ period: { name } }) => name),
      ...{ menu, developed },
      allergens: allergensOf(now, thing.id),
    }),
  );
}

/** What can be said of a dish in the mix that it stands in. */
function advised(now: CostedPeriod, [mix]: readonly MenuMix[], item: ItemId): Advice | null {
  return mix ? (advice(now, mix.items, listOf(now.venue)).get(item) ?? null) : null;
}

/** The mix that a dish stands in, by each model. */
function modelMixes(now: CostedPeriod, before: CostedPeriod, section: string | null): readonly MenuMix[] {
  return Object.values(MIX_MODELS).map((model) => keptMix(now, before, section, model));
}

function allergensOf(period: CostedPeriod, item: ItemId): DishFound['allergens'] {
  const { items, list, day } = allergens(period, { list: listOf(period.venue) });
  const row = items.find(({ id }) => id === item);
  return row ? { list, day, row } : null;
}

/** The item's menu prices up to the end of the period, and what it cost to develop; null where nothing was tried. */
async function stated(
  db: Database,
  asker: Asker,
  venue: VenueId,
  { range }: Period,
  everything: CostedPeriod,
  { id }: Thing,
): Promise<{ readonly menu: readonly MenuPrice[]; readonly developed: DevelopedDish | null }> {
  return inVenue(db, { venue, person: asker.person }, 'read', async (tx) => {
    const prices = await loadMenuPrices(tx, range, () => 0);
    const menu = prices.filter(({ item }) => item === id);
    const tried = await tx.prisma.trial.count({ where: { venueId: tx.venue, itemId: id } });
    if (tried === 0) return { menu, developed: null };
    const facts = await loadFacts(tx, { from: addDays(range.to, -1) as Day, to: range.to });
    const trials = trialCosts({ ...facts, trials: facts.trials.filter(({ item }) => item === id) });
    return { menu, developed: development(everything, trials).dishes[0] ?? null };
  });
}
