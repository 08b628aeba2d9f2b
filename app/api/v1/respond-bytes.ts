import type { Answered } from '@/lib/answers/problem';
import { problemResponse, troubleResponse } from './respond';

/** What a browser keeps of an answer in bytes: it asks each time whether it still holds, and is told so without the bytes. */
const KEPT = { 'cache-control': 'private, no-cache', vary: 'accept-encoding' } as const;

/** Answers with bytes, compressed where the browser can read that; 304 where the browser has these bytes already (RFC 9110, 13.1.2). */
export async function respondBytes(
  request: Request,
  question: () => Promise<Answered<{ readonly bytes: Uint8Array<ArrayBuffer>; readonly tag: string }>>,
): Promise<Response> {
  try {
    const result = await question();
    if (!result.ok) return problemResponse(result.problem);
    const { bytes, tag } = result.answer;
    const headers = { ...KEPT, etag: `W/"${tag}"` };
    if (isKnown(request, tag)) return new Response(null, { status: 304, headers });
    const whole = { ...headers, 'content-type': 'application/octet-stream' };
    if (!acceptsGzip(request)) return new Response(bytes, { headers: whole });
    const packed = new Blob([bytes]).stream().pipeThrough(new CompressionStream('gzip'));
    return new Response(packed, { headers: { ...whole, 'content-encoding': 'gzip' } });
  } catch (error) {
    return troubleResponse(request, error);
  }
}

function isKnown(request: Request, tag: string): boolean {
  const known = request.headers.get('if-none-match') ?? '';
  return known.split(',').some((each) => each.trim() === '*' || each.trim().replace(/^W\//, '') === `"${tag}"`);
}

/** A server may refuse no one who says nothing, but only sends gzip to who asks for it and does not rule it out with q=0. */
function acceptsGzip(request: Request): boolean {
  const accepted = (request.headers.get('accept-encoding') ?? '')
    .split(',')
    .map((each) => each.trim().split(/\s*;\s*/));
  return accepted.some(([name, quality]) => name === 'gzip' && !/^q=0(\.0*)?$/.test(quality ?? ''));
}
