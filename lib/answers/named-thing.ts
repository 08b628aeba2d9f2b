import { nameKey } from '../core/name-key';
import { noSuchItem } from '../format/words/problems';
import type { CostedPeriod } from '../model/costed-period';
import type { Thing } from '../model/things';
import { alike } from './alike';
import { type Answered, answered, refused } from './problem';

/** Parts and packings are no items. */
const isItem = ({ part, channel }: Thing): boolean => part === null && channel === null;

/** The thing of that name, or of that number; null where there is none. */
export function thingNamed({ things }: CostedPeriod, named: string): Thing | null {
  const key = nameKey(named);
  const items = things.filter(isItem);
  return items.find(({ name }) => nameKey(name) === key) ?? items.find(({ id }) => String(id) === named) ?? null;
}

/** The same, refused with the names that are like it. The period has to be costed for everything. */
export function askedThing(period: CostedPeriod, named: string): Answered<Thing> {
  const thing = thingNamed(period, named);
  if (thing) return answered(thing);
  const names = period.things.filter(isItem).map(({ name }) => name);
  return refused(404, noSuchItem(named, period.venue.name, alike(named, names)));
}
