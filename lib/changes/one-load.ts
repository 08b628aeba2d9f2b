import type { Day } from '../core/days';
import type { Database } from '../db/database';
import type { FileKind } from '../intake/file-kinds';
import type { VenueId } from '../model/facts';
import type { FileRefusal, RowRefusal } from '../model/refusal';

/**
 * Points of a load at which a test can stop the program: nothing that was reached before the commit may leave a trace,
 * nothing after it may be lost.
 */
export type LoadPoint = 'mid-copy' | 'mid-save' | 'before-commit' | 'after-commit';

/** One file to be loaded into a venue. */
export interface OneLoad {
  readonly db: Database;
  readonly who: { readonly venue: VenueId; readonly person: string };
  readonly kind: FileKind;
  /** Name of the file, as it is shown. */
  readonly file: string;
  /** Its bytes from the beginning; may be asked for again. */
  readonly open: () => AsyncIterable<Uint8Array>;
  readonly source: string;
  /** For sales: the days that the file speaks for, both included; null: the days that are in it. */
  readonly days: { readonly from: Day; readonly to: Day } | null;
  /** Says what would become of the file, and keeps nothing. */
  readonly dryRun: boolean;
  readonly reached: (point: LoadPoint) => Promise<void> | void;
}

/** What one file came to. */
export type LoadedFile =
  | { readonly refusedWhole: FileRefusal }
  | {
      readonly refusedWhole: null;
      readonly read: number;
      readonly taken: number;
      readonly changed: number;
      readonly unchanged: number;
      readonly withdrawn: number;
      readonly refused: number;
      /** The refused rows, of very many the first. */
      readonly refusals: readonly RowRefusal[];
      readonly unlocked: number;
      readonly unlockedWithdrawn: number;
      readonly ignored: readonly string[];
    };
