import type { ItemUse } from '../../db/item-uses';
import type { WrittenItem } from '../../db/written-item';
import type { ProblemWords } from '../../format/words/problems';
import type { Effects } from './effects';

/** One field that cannot be kept as it is: where it stands (version.usable_yield_pct, lines.3.quantity), what was written, what to do. */
export interface WrongField {
  readonly name: string;
  readonly value: string | null;
  readonly text: string;
}

/** What somebody else did to an item in one write. */
export interface OthersWrite {
  readonly person: string;
  /** ISO time stamp. */
  readonly at: string;
  /** The number by which it can be undone. */
  readonly write: number;
  /** changed a line (double cream), added a version (2026-11-01) ... */
  readonly did: readonly string[];
}

/** Both sides where an item was changed after an editor had read it; theirs is null where it was deleted. */
export interface Conflict {
  readonly writes: readonly OthersWrite[];
  readonly theirs: WrittenItem | null;
  readonly yours: unknown;
}

/** Why nothing was kept. */
export interface Refusal extends ProblemWords {
  readonly why: 'not-allowed' | 'no-venue' | 'no-item' | 'wrong' | 'conflict' | 'closed' | 'in-use' | 'no-undo';
  readonly fields: readonly WrongField[];
  readonly conflict: Conflict | null;
  readonly uses: readonly ItemUse[];
}

/** What an edit came to. */
export type Kept =
  | {
      readonly ok: true;
      readonly id: number;
      /** The name that it has now, or had until it was deleted. */
      readonly item: string;
      /** The revision that the next edit of it carries, and the number by which this one is undone; null where nothing changed or was to be kept. */
      readonly write: number | null;
      readonly revision: number;
      readonly effects: Effects;
      /** Rows of files that had waited for it and were taken now. */
      readonly unlocked: number;
    }
  | { readonly ok: false; readonly refusal: Refusal };

export function refusal(
  why: Refusal['why'],
  words: ProblemWords,
  more: Partial<Pick<Refusal, 'fields' | 'conflict' | 'uses'>> = {},
): Refusal {
  return { why, ...words, fields: [], conflict: null, uses: [], ...more };
}

/** Ends an edit's transaction so that nothing of it is kept; carries what it comes to. */
export class NotKept extends Error {
  override readonly name = 'NotKept';
  constructor(readonly result: Kept) {
    super('nothing of this edit is kept');
  }
}

export function notKept(...given: Parameters<typeof refusal>): NotKept {
  return new NotKept({ ok: false, refusal: refusal(...given) });
}
