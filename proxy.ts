import { type NextRequest, NextResponse } from 'next/server';
import { refusedHost } from '@/lib/format/words/problems';
import { askedHere } from '@/lib/session/asker';

/** Every page and every route passes here first: a request made to another address than this machine's own is refused. */
export function proxy(request: NextRequest): NextResponse {
  if (askedHere(request.headers.get('host'), request.headers.get('origin'))) return NextResponse.next();
  if (request.nextUrl.pathname.startsWith('/api/')) {
    const problem = {
      type: 'about:blank',
      title: refusedHost.title,
      status: 403,
      detail: refusedHost.detail,
      fields: [],
    };
    return NextResponse.json(problem, { status: 403, headers: { 'content-type': 'application/problem+json' } });
  }
  return new NextResponse(`${refusedHost.title}\n${refusedHost.detail}\n`, {
    status: 403,
    headers: { 'content-type': 'text/plain; charset=utf-8' },
  });
}
