/**
 * The database cannot be used as it stands: not reachable, too old, its folder in use or out of reach. The message is a whole
 * sentence for the person at the keyboard, who has to mend it outside the program; commands print it alone and leave with exit code 1.
 */
export class DatabaseTrouble extends Error {
  override readonly name = 'DatabaseTrouble';
}

/** What an error of the driver or the system says, for the end of a sentence. */
export function wordsOf(error: unknown): string {
  if (error instanceof AggregateError) return wordsOf(error.errors[0]);
  return error instanceof Error ? error.message : String(error);
}

/** The code of an error of the driver (a SQLSTATE) or of the system (ECONNREFUSED), or null. */
export function codeOf(error: unknown): string | null {
  const carrier = error instanceof AggregateError ? error.errors[0] : error;
  const code = carrier instanceof Error && 'code' in carrier ? carrier.code : null;
  return typeof code === 'string' ? code : null;
}

const OUT_OF_REACH = new Set(['ECONNREFUSED', 'ECONNRESET', 'EPIPE', '57P01', '57P02', '57P03', '08006', '53300']);

/** Whether a server was not there, or not any more or not yet: it may be starting, stopping, dying or full. */
export function isOutOfReach(error: unknown): boolean {
  const code = codeOf(error);
  return code !== null ? OUT_OF_REACH.has(code) : /connection terminated|not queryable|timeout/i.test(wordsOf(error));
}
