import { nameKey } from '../../core/name-key';
import { CellFault, type ReadCell, text } from '../cells';

/** How an item reaches its guest where nothing else is said. */
export const USUAL_CHANNEL = 'dine_in';

/** A channel by its key, so that the menu and the till mean the same one. */
export const channel: ReadCell<string> = (cell) => {
  const name = text()(cell);
  return name instanceof CellFault ? name : nameKey(name);
};
