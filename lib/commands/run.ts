import { closeDatabase } from '../db/database';
import { DatabaseTrouble } from '../db/database-trouble';
import { terminalLines } from '../format/terminal-text';
import { wrongOption } from '../format/words/commands';

/** The command was called in a way that means nothing: its sentence is all that is printed, and it ends with code 2. */
class WrongUse extends Error {
  override readonly name = 'WrongUse';
}

export function wrongUse(sentence: string): Error {
  return new WrongUse(sentence);
}

/** What was called wrongly, in a sentence; null where that is not what happened. */
function wrongUseIn(error: unknown): string | null {
  if (error instanceof WrongUse) return error.message;
  const parsing = error instanceof Error && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS');
  return parsing ? wrongOption(error.message) : null;
}

/** A sentence on the error stream; nothing in it steers the terminal. */
export function complain(sentence: string): void {
  process.stderr.write(`${terminalLines(sentence)}\n`);
}

/** The exit code for what a command ended with, its sentence printed. Only a bug shows where it happened. */
function codeOf(error: unknown): number {
  const wrong = wrongUseIn(error);
  if (wrong !== null) {
    complain(`${wrong}\nTry --help.`);
    return 2;
  }
  if (error instanceof DatabaseTrouble) {
    complain(error.message);
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
