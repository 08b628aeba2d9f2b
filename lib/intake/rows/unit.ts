import { type BaseUnit, unitNamed } from '../../core/units';
import { CellFault, type ReadCell, text } from '../cells';

/** A unit of mass, volume or count, as it was written. */
export const unit: ReadCell<string> = (cell) => {
  const name = text()(cell);
  return name instanceof CellFault || dimensionOf(name) !== null ? name : new CellFault('unknown-unit');
};

/** The dimension of a unit's name: the same whichever cup the venue means. */
export function dimensionOf(name: string): BaseUnit | null {
  return unitNamed(name, 'metric')?.base ?? null;
}
