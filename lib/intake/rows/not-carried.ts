import { CellFault, optional } from '../cells';
import { type NumberStyle, signed } from '../numbers';

/** A column that would change a figure and that nothing works out yet: a row that uses it is refused, never costed wrong. */
export const notCarried = optional<never>(() => new CellFault('not-carried'));

/** As notCarried, for numbers that change nothing where they are zero. */
export function notCarriedUnlessZero(style: NumberStyle) {
  const number = signed(style);
  return optional((cell) => {
    const read = number(cell);
    return read instanceof CellFault || read === '0' ? read : new CellFault('not-carried');
  });
}
