import { refused } from '@/lib/answers/problem';
import { notServed } from '@/lib/format/words/address-problems';
import { problemResponse } from './respond';

const GET_SERVED = 'GET, HEAD, OPTIONS';
const POST_SERVED = 'POST, OPTIONS';
const BOTH_SERVED = 'GET, HEAD, POST, OPTIONS';

/** RFC 9110, 405: a problem that names the methods that are served. */
function refuses(served: string): (request: Request) => Response {
  return ({ method }) => problemResponse(refused(405, notServed(method, served)).problem, { allow: served });
}

/** Since each method has a handler, Next would list them all as allowed. */
function lists(served: string): () => Response {
  return () => new Response(null, { status: 204, headers: { allow: served } });
}

/** What a route that only answers questions says to any other method. */
export const onlyGet = refuses(GET_SERVED);
export const optionsOfGet = lists(GET_SERVED);

/** The same of a route that only takes in what is posted. */
export const onlyPost = refuses(POST_SERVED);
export const optionsOfPost = lists(POST_SERVED);

/** The same of a route that can be asked either way. */
export const onlyGetAndPost = refuses(BOTH_SERVED);
export const optionsOfGetAndPost = lists(BOTH_SERVED);
