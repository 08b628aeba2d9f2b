import type { LoadedFile } from './one-load';

/** Ends a trial run's transaction without keeping anything; carries what the file would have come to. */
export class RolledBack extends Error {
  override readonly name = 'RolledBack';
  constructor(readonly loaded: LoadedFile) {
    super('a trial run keeps nothing');
  }
}
