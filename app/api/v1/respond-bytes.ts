import type { Answered } from '@/lib/answers/problem';
import { problemResponse, troubleResponse } from './respond';

/**
 * Answers with bytes as a gzip file (RFC 1952), since the server beneath compresses only what it takes for text and lets no route say that
 * it did so itself; 304 where the asker has these bytes already (RFC 9110, 13.1.2). The asker asks each time whether they still hold.
 */
export async function respondBytes(
  request: Request,
  question: () => Promise<Answered<{ readonly bytes: Uint8Array<ArrayBuffer>; readonly tag: string }>>,
): Promise<Response> {
  try {
    const result = await question();
    if (!result.ok) return problemResponse(result.problem);
    const { bytes, tag } = result.answer;
    const headers = { 'cache-control': 'private, no-cache', etag: `"${tag}"` };
    if (isKnown(request, tag)) return new Response(null, { status: 304, headers });
    const packed = new Blob([bytes]).stream().pipeThrough(new CompressionStream('gzip'));
    return new Response(packed, { headers: { ...headers, 'content-type': 'application/octet-stream' } });
  } catch (error) {
    return troubleResponse(request, error);
  }
}

function isKnown(request: Request, tag: string): boolean {
  const known = request.headers.get('if-none-match') ?? '';
  return known.split(',').some((each) => each.trim() === '*' || each.trim().replace(/^W\//, '') === `"${tag}"`);
}
