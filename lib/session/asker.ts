import type { Role } from '../access/may';

/** Who is asking. Until people and roles come, the one owner of this machine's restaurant. */
export interface Asker {
  readonly person: string;
}

const OWNER: Asker = { person: 'owner' };

/** The owner, whoever asks from this machine: askedHere is what keeps everybody else out. */
export function currentAsker(): Asker {
  return OWNER;
}

/** What the asker is to a venue. Until people and roles come, the owner of them all. */
export function roleOf(_: Asker): Role {
  return 'owner';
}

/**
 * Whether a request was made to this machine by its own address, 127.0.0.1, and not by a page of another site.
 *
 * Any other Host is refused, also a name that resolves here: a foreign page can point a name of its own at 127.0.0.1 and would
 * then speak as the owner. `origin` is the Origin header, sent by browsers with every request that could change something.
 */
export function askedHere(host: string | null, origin: string | null): boolean {
  if (host === null || !/^127\.0\.0\.1(:\d{1,5})?$/.test(host)) return false;
  return origin === null || origin === `http://${host}`;
}
