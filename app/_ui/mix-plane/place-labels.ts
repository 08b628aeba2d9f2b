import { seededRandom } from '@/lib/core/random';
import { clashCost, coverCost, overlap, type Surroundings } from './label-clashes';
import { type Label, labelPlaces, type Place } from './label-places';

/** What leaving a label out costs: more than any lone blemish, less than two labels on one another. */
const DROPPED = 75;
const DROPPED_FIRST = 150;
const SWEEPS = 700;
const HOT = 40;
const COLD = 0.4;

interface Option {
  readonly place: Place | null;
  readonly cost: number;
}

/**
 * Places labels beside their marks so that none covers another, by simulated annealing with a seed: the same picture comes out the
 * same every time. A label that finds no room is left out (null).
 *
 * Cost and candidates: Christensen, Marks & Shieber (1995), "An empirical study of algorithms for point-feature label placement".
 */
export function placeLabels(labels: readonly Label[], around: Surroundings, seed = 1): (Place | null)[] {
  const options = labels.map((label, index) => optionsOf(label, index, around));
  const random = seededRandom(seed);
  const chosen = options.map((all) =>
    all.reduce((best, option, at) => (option.cost < (all[best]?.cost ?? 0) ? at : best), 0),
  );
  const placeOf = (label: number, at: number) => options[label]?.[at]?.place ?? null;

  const costOf = (label: number, at: number): number => {
    const place = placeOf(label, at);
    let cost = options[label]?.[at]?.cost ?? 0;
    if (place === null) return cost;
    chosen.forEach((otherAt, other) => {
      const against = other === label ? null : placeOf(other, otherAt);
      if (against) cost += clashCost(place, against);
    });
    return cost;
  };

  const steps = labels.length * SWEEPS;
  for (let step = 0; step < steps; step++) {
    const heat = HOT * (COLD / HOT) ** (step / steps);
    const label = Math.floor(random() * labels.length);
    const count = options[label]?.length ?? 1;
    const now = chosen[label] ?? 0;
    const next = Math.floor(random() * count);
    if (next === now) continue;
    const worse = costOf(label, next) - costOf(label, now);
    if (worse <= 0 || random() < Math.exp(-worse / heat)) chosen[label] = next;
  }
  settle(options, chosen, costOf);
  return withoutOverlaps(
    chosen.map((at, label) => placeOf(label, at)),
    labels,
    options,
  );
}

function optionsOf(label: Label, index: number, around: Surroundings): readonly Option[] {
  const places = labelPlaces(label, around.bounds).map((place) => ({ place, cost: coverCost(place, index, around) }));
  return [...places, { place: null, cost: label.first ? DROPPED_FIRST : DROPPED }];
}

/** At the end each label takes its best place as the others stand, until none moves. */
function settle(
  options: readonly (readonly Option[])[],
  chosen: number[],
  costOf: (label: number, at: number) => number,
): void {
  for (let round = 0, moved = true; moved && round < 20; round++) {
    moved = false;
    options.forEach((all, label) => {
      const now = chosen[label] ?? 0;
      let best = now;
      let least = costOf(label, now);
      all.forEach((_, at) => {
        const cost = costOf(label, at);
        if (cost < least - 1e-9) {
          best = at;
          least = cost;
        }
      });
      if (best !== now) {
        chosen[label] = best;
        moved = true;
      }
    });
  }
}

/**
 * Whatever the search came to, no two labels overlap: those that go first keep their place or take the best one that is left among
 * their like, and of the others the one that would cover goes.
 */
function withoutOverlaps(
  places: readonly (Place | null)[],
  labels: readonly Label[],
  options: readonly (readonly Option[])[],
): (Place | null)[] {
  const order = labels
    .map((_, index) => index)
    .sort((a, b) => Number(labels[b]?.first) - Number(labels[a]?.first) || a - b);
  const kept: Place[] = [];
  const isFree = (place: Place) => !kept.some((other) => overlap(place.box, other.box, 0));
  const result: (Place | null)[] = places.map(() => null);
  for (const index of order) {
    const wanted = places[index] ?? (labels[index]?.first ? bestFree(options[index] ?? [], isFree) : null);
    if (!wanted || !isFree(wanted)) continue;
    kept.push(wanted);
    result[index] = wanted;
  }
  return result;
}

function bestFree(options: readonly Option[], isFree: (place: Place) => boolean): Place | null {
  const free = options.filter(({ place, cost }) => place && cost < DROPPED_FIRST && isFree(place));
  return (
    free.reduce<Option | null>((best, option) => (best && best.cost <= option.cost ? best : option), null)?.place ??
    null
  );
}
