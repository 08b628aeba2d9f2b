import type { CostedPeriod } from '../costed-period';
import { inSegment } from '../segments';
import type { AmountSource } from './packed-amounts';

/**
 * What the amounts of a period's lines were made from: what each recipe gives and the usable yield of what each line asks for. It says
 * nothing that a figure hangs on: a source that is wrong costs bytes.
 */
export function amountSource({ lines, recipes, measures }: CostedPeriod): AmountSource {
  const at = (line: number): number => lines.from[line] ?? 0;
  return {
    made(line) {
      const piece = inSegment(recipes[lines.parent[line] ?? -1] ?? [], at(line));
      return piece ? piece.usable * (1 - piece.version.breakage) : 1;
    },
    usableYield: (line) => inSegment(measures[lines.child[line] ?? -1] ?? [], at(line))?.measure?.usableYield ?? 1,
  };
}
