import { refused } from '@/lib/answers/problem';
import { noSuchAddress } from '@/lib/format/words/problems';
import { respond } from '../respond';

/** Any other address below /api/v1: a problem that says where to look, never a page. */
function nothingHere(request: Request): Promise<Response> {
  return respond(request, async () => refused(404, noSuchAddress));
}

export { nothingHere as DELETE, nothingHere as GET, nothingHere as PATCH, nothingHere as POST, nothingHere as PUT };
