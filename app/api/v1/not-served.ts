import { refused } from '@/lib/answers/problem';
import { notServed } from '@/lib/format/words/address-problems';
import { problemResponse } from './respond';

const SERVED = 'GET, HEAD, OPTIONS';

/** What a route that only answers questions says to any other method (RFC 9110, 405): a problem that names those that it serves. */
export function onlyGet({ method }: Request): Response {
  return problemResponse(refused(405, notServed(method, SERVED)).problem, { allow: SERVED });
}

/** Since each method has a handler, Next would list them all as allowed. */
export function optionsOfGet(): Response {
  return new Response(null, { status: 204, headers: { allow: SERVED } });
}
