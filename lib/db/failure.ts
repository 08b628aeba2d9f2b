/** What matters of an error that a transaction ended with, whether it came through Prisma or from the driver. */
export interface FailureDetails {
  /** Another transaction was in the way: the same work may go through when it is run again. */
  readonly conflict: boolean;
  /** The last closed business day as ISO text, where a closed day was touched; else null. */
  readonly closedThrough: string | null;
}

const CONFLICTS = new Set(['P2034', '40001', '40P01']);
const CLOSED = /closed through (\d{4}-\d{2}-\d{2})/;

/** Reads an error: SQLSTATE 40001 and 40P01 (P2034 and TransactionWriteConflict in Prisma's words) and our own PW001. */
export function detailsOf(error: unknown): FailureDetails {
  if (!(error instanceof Error)) return { conflict: false, closedThrough: null };
  const code = 'code' in error ? error.code : null;
  const words = `${error.name} ${error.message}`;
  return {
    conflict: (typeof code === 'string' && CONFLICTS.has(code)) || words.includes('TransactionWriteConflict'),
    closedThrough: code === 'PW001' || words.includes('PW001') ? (CLOSED.exec(words)?.[1] ?? null) : null,
  };
}
