import type { BaseUnit } from '../core/units';
import type { RecipeVersion } from './facts';
import type { Issue } from './issue';
import { BASE_UNITS, type BatchOutputs, type UnitReader } from './measure';

/** What one batch gives and the dimension it is counted in, or what is missing. */
export type BatchOutput =
  | { readonly base: BaseUnit; readonly outputs: BatchOutputs; readonly issue: null }
  | { readonly base: null; readonly outputs: null; readonly issue: Issue };

/** One portion: what a recipe for the plate gives. */
export const ONE_PORTION: BatchOutputs = { g: null, ml: null, each: 1 };

/** What is known of the weight of a recipe's lines: the grams, or the names of what cannot be weighed. */
export type BatchWeight = { readonly grams: number } | { readonly missing: readonly string[] };

/**
 * The usable output of a batch: what was measured (or, where that is blank, what its lines weigh) less what every batch loses.
 *
 * usable g = g - loss; a second stated output shrinks in proportion, usable x = x * (g - loss) / g. The stated dimension is the one
 * it is counted in; grams where nothing was stated. A loss, being in grams, needs the output in grams. Where overrun is stated (air
 * beaten in, as a share of the volume), the stated volume is that of the mix: volume = mix * (1 + overrun); grams stay what they are.
 */
export function batchOutput(
  name: string,
  version: RecipeVersion,
  weight: () => BatchWeight,
  units: UnitReader,
): BatchOutput {
  const missing = (code: Issue['code'], facts: Issue['facts']): BatchOutput => ({
    base: null,
    outputs: null,
    issue: { code, about: name, facts },
  });
  const stated: Record<BaseUnit, number | null> = { g: null, ml: null, each: null };
  let base: BaseUnit = 'g';
  // The second output first, so that where both name one dimension the first one holds.
  for (const { quantity, unit: unitName, counted } of statedOutputs(version)) {
    const unit = units(unitName);
    if (unit === null) return missing('unknown-unit', { unit: unitName, where: name });
    stated[unit.base] = quantity * unit.size;
    if (counted) base = unit.base;
  }
  if (version.yieldQuantity === null && stated.g === null) {
    const weighed = weight();
    if ('missing' in weighed) return missing('no-yield', { missing: weighed.missing });
    stated.g = weighed.grams;
  }
  if (version.overrun !== null) {
    if (stated.ml === null)
      return missing('no-mix-volume', { outputs: BASE_UNITS.filter((each) => stated[each] !== null) });
    stated.ml *= 1 + version.overrun;
  }
  const loss = version.batchLossG ?? 0;
  const grams = stated.g;
  if (loss > 0 && grams === null) {
    return missing('no-output-unit', {
      recipe: name,
      unit: 'g',
      outputs: BASE_UNITS.filter((unit) => stated[unit] !== null),
    });
  }
  if (grams !== null && grams <= loss) return missing('nothing-left', { output: grams, loss });
  const left = grams === null ? 1 : (grams - loss) / grams;
  const usable = (output: number | null): number | null => (output === null ? null : output * left);
  const outputs = { g: grams === null ? null : grams - loss, ml: usable(stated.ml), each: usable(stated.each) };
  return { base, outputs, issue: null };
}

interface StatedOutput {
  readonly quantity: number;
  readonly unit: string;
  /** The first output: its dimension is the one the recipe is counted in. */
  readonly counted: boolean;
}

function statedOutputs(version: RecipeVersion): readonly StatedOutput[] {
  const { yieldQuantity, yieldUnit, alsoQuantity, alsoUnit } = version;
  const first =
    yieldQuantity === null || yieldUnit === null ? [] : [{ quantity: yieldQuantity, unit: yieldUnit, counted: true }];
  const second =
    alsoQuantity === null || alsoUnit === null ? [] : [{ quantity: alsoQuantity, unit: alsoUnit, counted: false }];
  return [...second, ...first];
}
