import type { YieldTestFault } from '../../model/yield-test';

/** Why a weighing says nothing, and what to do. */
export const YIELD_TEST_FAULTS: Readonly<Record<YieldTestFault, string>> = {
  'nothing-bought': 'Weigh what was bought before anything is done to it, and write its weight, above zero.',
  'nothing-weighed': 'Weigh what is cut off, or what is left when it has drained; nothing is taken for granted.',
  'below-zero': 'A weight or a price is below zero. Write it as weighed and paid.',
  'more-than-bought': 'More is left after draining than was bought. Check both weights; water taken up is no yield.',
  'nothing-left': 'The trim weighs all of it or more. Check the weights: some of it must be left to use.',
};
