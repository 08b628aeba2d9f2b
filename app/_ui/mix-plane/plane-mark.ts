import type { Phrase } from '@/lib/format/phrase';
import type { ClassName } from '@/lib/format/words/classes';
import type { MarkShape } from '../mark-shape';

/** One dish in the plane. Shares are fractions, margins in the venue's currency per portion. */
export interface PlaneMark {
  readonly item: string;
  /** The short name beside the mark. */
  readonly label: string;
  readonly section: string | null;
  readonly shape: MarkShape;
  readonly share: number;
  readonly margin: number;
  /** The share from which this dish is popular. */
  readonly popularFrom: number | null;
  readonly class: ClassName | null;
  /** On the line: hollow, outlined, its label bold. */
  readonly doubtful: boolean;
  /** Standard deviations over the resamples; null where certainty is not known. */
  readonly spread: { readonly share: number; readonly margin: number } | null;
  /** What the line under the picture says of it, after its name. */
  readonly reading: Phrase;
}

/** Whether the dishes have lines of popularity of their own, between the two that are drawn. */
export function hasOwnLines({ popularity }: Pick<PlaneFacts, 'popularity'>): boolean {
  return popularity !== null && popularity.high - popularity.low > 1e-9;
}

/** All that the picture is drawn from. */
export interface PlaneFacts {
  readonly marks: readonly PlaneMark[];
  /** Portions of everything in the mix: share x this x margin is what a dish left. */
  readonly sold: number;
  /** The upright line, or the span of the dishes' own where they were on sale on different days; `short` for little room. */
  readonly popularity: {
    readonly low: number;
    readonly high: number;
    readonly words: string;
    readonly short: string;
  } | null;
  /** The level line: its name at the end in two lines, or its bare value at the axis where there is no room. */
  readonly margin: {
    readonly value: number;
    readonly words: readonly [string, string];
    readonly atAxis: string;
  } | null;
  readonly currencySign: string;
  readonly locale: string;
}
