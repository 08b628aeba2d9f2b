/** One change of one operator. A mutant is known by its words, not by its place: lines move. */
export interface Mutant {
  /** From the root of the project, such as lib/model/passes.ts. */
  readonly file: string;
  /** The line of the source on which the change begins, without its indent. */
  readonly line: string;
  readonly from: string;
  readonly to: string;
}

/** A mutant that no test can or need tell from the program, and the reason. */
export interface Accepted extends Mutant {
  readonly why: string;
}

export interface Comparison {
  /** Survived, with no reason given: a gap in the tests. */
  readonly unexplained: readonly Mutant[];
  /** Given a reason, yet killed now, or gone from the source. */
  readonly stale: readonly Accepted[];
}

const keyOf = ({ file, line, from, to }: Mutant) => JSON.stringify([file, line, from, to]);

/** What of `these` is not in `those`; what stands twice must be there twice. */
function without<M extends Mutant>(these: readonly M[], those: readonly Mutant[]): readonly M[] {
  const left = new Map<string, number>();
  for (const mutant of those) left.set(keyOf(mutant), (left.get(keyOf(mutant)) ?? 0) + 1);
  return these.filter((mutant) => {
    const count = left.get(keyOf(mutant)) ?? 0;
    left.set(keyOf(mutant), count - 1);
    return count <= 0;
  });
}

/** Holds the mutants that survived a run over `files` against those that were accepted; what was accepted in other files is not looked at. */
export function compared(
  survived: readonly Mutant[],
  accepted: readonly Accepted[],
  files: ReadonlySet<string>,
): Comparison {
  const concerned = accepted.filter(({ file }) => files.has(file));
  return { unexplained: without(survived, concerned), stale: without(concerned, survived) };
}
