import type { IncomingMessage, ServerResponse } from 'node:http';
import { refused } from '../answers/problem';
import { noSuchPath } from '../format/words/address-problems';

/** Refuses a request whose path cannot be read as UTF-8 (RFC 3986, %ff), and says whether it did: no page or route could name it. */
export function refusesPath({ url = '/' }: IncomingMessage, response: ServerResponse): boolean {
  const [path = '/'] = url.split('?');
  if (isDecodable(path)) return false;
  const inApi = path.startsWith('/api/');
  response.writeHead(400, { 'content-type': inApi ? 'application/problem+json' : 'text/plain; charset=utf-8' });
  response.end(
    inApi ? JSON.stringify(refused(400, noSuchPath).problem) : `${noSuchPath.title}\n${noSuchPath.detail}\n`,
  );
  return true;
}

function isDecodable(path: string): boolean {
  try {
    decodeURIComponent(path);
    return true;
  } catch {
    return false;
  }
}
