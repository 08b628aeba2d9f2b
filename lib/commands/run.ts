import { closeDatabase } from '../db/database';
import { DatabaseTrouble } from '../db/database-trouble';

/** The command was called in a way that means nothing: its sentence is all that is printed, and it ends with code 2. */
class WrongUse extends Error {
  override readonly name = 'WrongUse';
}

export function wrongUse(sentence: string): Error {
  return new WrongUse(sentence);
}

function isWrongUse(error: unknown): error is Error {
  if (error instanceof WrongUse) return true;
  return error instanceof Error && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS');
}

/** The exit code for what a command ended with, its sentence printed. Only a bug shows where it happened. */
function codeOf(error: unknown): number {
  if (isWrongUse(error)) {
    process.stderr.write(`${error.message}\nTry --help.\n`);
    return 2;
  }
  if (error instanceof DatabaseTrouble) {
    process.stderr.write(`${error.message}\n`);
    return 1;
  }
  console.error(error);
  return 1;
}

/**
 * Runs a command to its exit code. The database is left in order whatever happens: the last process to leave an embedded server stops it.
 */
export async function run(command: () => Promise<number>): Promise<void> {
  // a reader that goes away (a closed terminal, a pipe into head) ends the words, not the work
  for (const stream of [process.stdout, process.stderr]) stream.on('error', () => {});
  try {
    process.exitCode = await command();
  } catch (error) {
    process.exitCode = codeOf(error);
  }
  await closeDatabase();
}
