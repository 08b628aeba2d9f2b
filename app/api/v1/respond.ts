import { NextResponse } from 'next/server';
import { type Answered, type Problem, refused, troubled } from '@/lib/answers/problem';
import { noSuchFormat } from '@/lib/format/words/address-problems';

export function problemResponse(problem: Problem, headers: Readonly<Record<string, string>> = {}): Response {
  return NextResponse.json(problem, {
    status: problem.status,
    headers: { ...headers, 'content-type': 'application/problem+json' },
  });
}

const FORMATS = ['json', 'csv'] as const;

/** Why the format that ?format= names cannot be had; null where it can, or none is named. */
function wrongFormat(request: Request): Problem | null {
  const format = new URL(request.url).searchParams.get('format');
  if (format === null || FORMATS.some((known) => known === format)) return null;
  const words = noSuchFormat(format, FORMATS);
  return refused(400, words, [{ name: 'format', value: format, text: words.detail }]).problem;
}

/** Whether the request wants a spreadsheet's format: ?format=csv, or an Accept header that names it. */
function wantsCsv(request: Request): boolean {
  const format = new URL(request.url).searchParams.get('format');
  return format === null ? (request.headers.get('accept') ?? '').includes('text/csv') : format === 'csv';
}

/** Answers a request with JSON, or with CSV where it is asked for; a refusal becomes problem details; nothing ends bare. */
export async function respond<T>(
  request: Request,
  question: () => Promise<Answered<T>>,
  csv?: { readonly file: string; readonly text: (answer: T) => string },
): Promise<Response> {
  try {
    const wrong = csv ? wrongFormat(request) : null;
    if (wrong) return problemResponse(wrong);
    const result = await question();
    if (!result.ok) return problemResponse(result.problem);
    if (!csv || !wantsCsv(request)) return NextResponse.json(result.answer);
    const headers = {
      'content-type': 'text/csv; charset=utf-8',
      'content-disposition': `attachment; filename="${csv.file}.csv"`,
    };
    return new Response(csv.text(result.answer), { headers });
  } catch (error) {
    const reference = crypto.randomUUID();
    console.error(
      JSON.stringify({
        reference,
        path: new URL(request.url).pathname,
        error: String(error),
        stack: error instanceof Error ? error.stack : null,
      }),
    );
    return problemResponse(troubled(error, reference));
  }
}
