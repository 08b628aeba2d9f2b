import type { Day } from '../core/days';
import { nameKey } from '../core/name-key';
import type { Compiled } from './compile';
import type { Issue } from './issue';
import { issueList } from './issue-list';
import { WHOLE } from './known';
import { costPerMinute, type LabourRates } from './labour-rates';
import { upward } from './passes';
import { reachedFrom } from './reached';
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

  const work = (thing: Thing, node: number, piece: RecipePiece, segment: number): void => {
    const { version } = piece;
    const cell = node * count + segment;
    const day = segments.cuts[segment] as Day;
    const made = piece.usable * (1 - version.breakage);
    const minutes = (version.handsOnMinutes ?? 0) / made;
    const rate = costPerMinute(rates, version.grade, day);
    if (version.handsOnMinutes !== null && version.handsOnMinutes > 0) {
      if (!Number.isNaN(minutes)) handsOn.push({ node, segment, grade: version.grade, minutes });
      if (version.grade === null) {
        found.add({ code: 'no-grade', about: thing.name, facts: { minutes: version.handsOnMinutes }, day });
      } else if (rate === null) {
        found.add({ code: 'no-labour-rate', about: version.grade, facts: { recipe: thing.name }, day });
      }
      own.cost[cell] = Number.isNaN(minutes) ? 0 : minutes * (rate ?? 0);
      if (rate === null || Number.isNaN(minutes)) own.unknown[cell] = 1;
    }
    if (isSilent(thing, piece) || (book.estimated[cell] === WHOLE && piece.lines.length > 0)) own.unknown[cell] = 1;
    if (
      piece.children.some((child, index) => Number.isNaN(piece.amounts[index]) && things[child]?.kind !== 'ingredient')
    )
      own.unknown[cell] = 1;
    const platingMinutes = (version.platingMinutes ?? 0) / made;
    own.plating[cell] = Number.isNaN(platingMinutes) ? 0 : platingMinutes;
    if (platingMinutes > 0) plating.push({ node, segment, grade: version.platingGrade, minutes: platingMinutes });
    if (isPlate(thing) && version.platingMinutes === null) own.platingUnknown[cell] = 1;
    if (thing.kind === 'set_menu' && own.unknown[cell]) own.platingUnknown[cell] = 1;
  };

  things.forEach((thing, node) => {
    if (thing.part || thing.channel !== null) return;
    for (const piece of book.recipes[node] ?? []) {
      if (piece.byProduct) continue;
      for (let segment = piece.from; segment < piece.to; segment++) work(thing, node, piece, segment);
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

/** Whether a recipe says nothing of the work that it takes. */
export function isSilent(thing: Thing, { version }: RecipePiece): boolean {
  if (version.handsOnMinutes !== null) return false;
  return thing.kind === 'component' || (isPlate(thing) && version.platingMinutes === null);
}

/** The issues of labour that touch some things: of what they reach, and of the grades that make it. */
export function labourIssues(
  period: Pick<Compiled, 'recipes' | 'packings'> & { readonly things: readonly Thing[]; readonly labour: Labour },
  nodes: Iterable<number>,
): readonly Issue[] {
  const names = new Set<string>();
  for (const node of reachedFrom(period, nodes)) {
    names.add(period.things[node]?.name ?? '');
    for (const { version } of period.recipes[node] ?? []) names.add(nameKey(version.grade ?? ''));
  }
  return period.labour.issues.filter(({ code, about }) =>
    names.has(code === 'no-labour-rate' ? nameKey(about) : about),
  );
}
