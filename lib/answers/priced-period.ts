import { openDatabase } from '../db/database';
import { noSuchSection } from '../format/words/problems';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId } from '../model/facts';
import { sectionsOf } from '../model/offered';
import type { Goods, PriceModel } from '../model/price-model/price-model';
import { priceModelOf, pricesPaid } from '../model/price-model/price-model-of';
import type { Asker } from '../session/asker';
import { askedPeriod } from './asked-period';
import { askedVenue } from './asked-venue';
import { costedPeriods } from './costed-periods';
import { pastPeriods } from './past-periods';
import { type Answered, answered, refused } from './problem';

/** A question about the prices of a period. Null: the only venue; the whole menu. */
export interface PricedAsked {
  readonly venue: string | null;
  readonly month: string;
  readonly section: string | null;
}

/** A period ready for changes of its prices. */
export interface PricedPeriod {
  readonly venue: string;
  readonly month: string;
  readonly section: string | null;
  /** Of the venue: what it was made from. */
  readonly revision: number;
  readonly costed: CostedPeriod;
  readonly model: PriceModel;
}

// A model belongs to its costed period, which is made anew for each revision of the venue.
const made = new WeakMap<CostedPeriod, Map<string | null, PriceModel>>();

/** The price model of a period, with what each ingredient cost over eighteen periods: the same for page, command and HTTP. */
export async function pricedPeriod(asker: Asker, asked: PricedAsked): Promise<Answered<PricedPeriod>> {
  const db = await openDatabase();
  const venue = await askedVenue(db, asker, asked.venue);
  if (!venue.ok) return venue;
  const found = await askedPeriod(db, asker, venue.answer, asked.month);
  if (!found.ok) return found;
  const { period } = found.answer;
  const { section } = asked;
  const { revision, periods } = await costedPeriods(db, asker, venue.answer.id, [period.range]);
  const [costed] = periods;
  if (!costed) throw new Error('one period was asked for');
  const models = made.get(costed) ?? new Map<string | null, PriceModel>();
  made.set(costed, models);
  let model = models.get(section);
  if (!model) {
    const past = await pastPeriods(db, asker, venue.answer.id, period);
    model = priceModelOf(costed, section, allPaid([...past.map((each) => each.costed), costed]));
    models.set(section, model);
  }
  if (section !== null && model.items.length === 0) {
    return refused(404, noSuchSection(section, sectionsOf(costed.things)));
  }
  return answered({ venue: venue.answer.name, month: period.name, section, revision, costed, model });
}

/** What each ingredient cost over several periods. */
function allPaid(periods: readonly CostedPeriod[]): ReadonlyMap<ItemId, Goods['paid']> {
  const all = new Map<ItemId, Goods['paid']>();
  for (const period of periods) {
    for (const [item, paid] of pricesPaid(period)) {
      const known = all.get(item);
      const { lowest = Number.POSITIVE_INFINITY, highest = 0 } = paid ?? {};
      all.set(item, {
        lowest: Math.min(known?.lowest ?? Number.POSITIVE_INFINITY, lowest),
        highest: Math.max(known?.highest ?? 0, highest),
      });
    }
  }
  return all;
}
