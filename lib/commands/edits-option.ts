import { editsTwice, noEditsJson } from '../format/words/price-edits';
import { wrongUse } from './run';

/** The changes of price-change that --price names one by one, or --edits as JSON: as they were written. */
export function editsOption(price: readonly string[] | undefined, edits: string | undefined): unknown {
  if (edits === undefined) return price ?? [];
  if (price !== undefined) throw wrongUse(editsTwice);
  try {
    return JSON.parse(edits);
  } catch {
    throw wrongUse(noEditsJson);
  }
}
