import type { Day } from '../core/days';
import type { Compiled } from './compile';
import type { Issue } from './issue';
import { issueList } from './issue-list';
import { WHOLE } from './known';
import { costPerMinute, type LabourRates } from './labour-rates';
import { upward } from './passes';
import type { RecipePiece } from './recipe-piece';
import type { Segments } from './segments';
import type { Thing } from './things';

/** Minutes that a recipe itself takes, apart from what it is made of. Per base unit of it, breakage included. */
export interface OwnWork {
  readonly node: number;
  readonly segment: number;
  /** Spelled as stated; null where nobody has said whose work it is. */
  readonly grade: string | null;
  readonly minutes: number;
}

/** The work in a period, down to portions. Tables: entry node * segments + segment. */
export interface Labour {
  readonly rates: LabourRates;
  readonly handsOn: readonly OwnWork[];
  readonly plating: readonly OwnWork[];
  /** Cost of the hands-on minutes of one base unit with all that it is made of, in venue currency. */
  readonly cost: Float64Array;
  /** 1 where all of that cost is known. */
  readonly known: Uint8Array;
  /** Plating minutes of one base unit: a set menu has those of its courses. */
  readonly platingMinutes: Float64Array;
  readonly platingKnown: Uint8Array;
  readonly issues: readonly Issue[];
}

type Book = Pick<Compiled, 'lines' | 'recipes' | 'estimated'>;

/**
 * Recipe labour as a resource in the same lines as food: the minutes of a batch / what it gives / (1 - breakage), upward.
 *
 * cost = sum over everything reached of minutes * cost per hour of the grade on the day / 60. What states no minutes is unknown, never
 * free: a component without hands-on minutes, a plate with neither hands-on nor plating minutes. A set menu is its courses.
 */
export function labourOf(things: readonly Thing[], book: Book, segments: Segments, rates: LabourRates): Labour {
  const { count } = segments;
  const table = (): Float64Array => new Float64Array(things.length * count);
  const own = { cost: table(), unknown: table(), plating: table(), platingUnknown: table() };
  const handsOn: OwnWork[] = [];
  const plating: OwnWork[] = [];
  const found = issueList();

  const rateIn = (piece: RecipePiece, segment: number, thing: Thing): number | null => {
    const { grade, handsOnMinutes: minutes } = piece.version;
    const day = segments.cuts[segment] as Day;
    const rate = costPerMinute(rates, grade, day);
    if (grade === null) found.add({ code: 'no-grade', about: thing.name, facts: { minutes }, day });
    else if (rate === null) found.add({ code: 'no-labour-rate', about: grade, facts: { recipe: thing.name }, day });
    return rate;
  };

  const make = (thing: Thing, node: number, piece: RecipePiece): void => {
    const minutes = perUnit(piece, piece.version.handsOnMinutes);
    for (let segment = piece.from; minutes !== 0 && segment < piece.to; segment++) {
      const cell = node * count + segment;
      const rate = rateIn(piece, segment, thing);
      if (!Number.isNaN(minutes)) {
        handsOn.push({ node, segment, grade: piece.version.grade, minutes });
        own.cost[cell] = minutes * (rate ?? 0);
      }
      if (rate === null || Number.isNaN(minutes)) own.unknown[cell] = 1;
    }
    const isOpen = isSilent(thing, piece) || asksForUnreadable(things, piece);
    for (let cell = node * count + piece.from; cell < node * count + piece.to; cell++) {
      // of a plate on estimate nothing is known but the minutes that it states itself
      const isAlone = piece.lines.length === 0 && piece.version.handsOnMinutes !== null;
      if (isOpen || (book.estimated[cell] === WHOLE && !isAlone)) own.unknown[cell] = 1;
    }
  };

  const finish = (thing: Thing, node: number, piece: RecipePiece): void => {
    const minutes = perUnit(piece, piece.version.platingMinutes);
    for (let segment = piece.from; segment < piece.to; segment++) {
      const cell = node * count + segment;
      if (minutes > 0) {
        plating.push({ node, segment, grade: piece.version.platingGrade, minutes });
        own.plating[cell] = minutes;
      }
      const isOpen = isPlate(thing)
        ? piece.version.platingMinutes === null
        : thing.kind === 'set_menu' && own.unknown[cell];
      if (isOpen) own.platingUnknown[cell] = 1;
    }
  };

  things.forEach((thing, node) => {
    if (thing.part || thing.channel !== null) return;
    for (const piece of book.recipes[node] ?? []) {
      if (piece.byProduct) continue;
      make(thing, node, piece);
      finish(thing, node, piece);
    }
  });
  const pass = (of: Float64Array): Float64Array =>
    of.every((each) => each === 0) ? of : upward(book.lines, of, count);
  const isNone = (of: Float64Array): Uint8Array => Uint8Array.from(of, (each) => (each === 0 ? 1 : 0));
  return {
    ...{ rates, handsOn, plating, cost: pass(own.cost), known: isNone(pass(own.unknown)) },
    ...{ platingMinutes: pass(own.plating), platingKnown: isNone(pass(own.platingUnknown)) },
    issues: found.issues(),
  };
}

const isPlate = ({ kind }: Thing): boolean => kind === 'dish' || kind === 'extra';

/** Stated minutes of a batch (of a portion, for a plate) for each base unit served: minutes / what it gives / (1 - breakage). */
function perUnit({ usable, version }: RecipePiece, minutes: number | null): number {
  return minutes === null || minutes === 0 ? 0 : minutes / (usable * (1 - version.breakage));
}

/** Whether it takes an amount that is not known of something that itself takes work. */
function asksForUnreadable(things: readonly Thing[], { amounts, children }: RecipePiece): boolean {
  return amounts.some(
    (amount, index) => Number.isNaN(amount) && things[children[index] as number]?.kind !== 'ingredient',
  );
}

/** Whether a recipe says nothing of the work that it takes. */
export function isSilent(thing: Thing, { version }: RecipePiece): boolean {
  if (version.handsOnMinutes !== null) return false;
  return thing.kind === 'component' || (isPlate(thing) && version.platingMinutes === null);
}
