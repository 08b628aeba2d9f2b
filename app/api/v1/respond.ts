import { NextResponse } from 'next/server';
import { type Answered, type Problem, refused, troubled } from '@/lib/answers/problem';
import { reportCsv } from '@/lib/format/report-csv';
import type { ReportFile } from '@/lib/format/report-file';
import { reportXlsx } from '@/lib/format/report-xlsx';
import { noSuchFormat } from '@/lib/format/words/address-problems';

export function problemResponse(problem: Problem, headers: Readonly<Record<string, string>> = {}): Response {
  return NextResponse.json(problem, {
    status: problem.status,
    headers: { ...headers, 'content-type': 'application/problem+json' },
  });
}

const FORMATS = ['json', 'csv', 'xlsx'] as const;
type Format = (typeof FORMATS)[number];

const TYPES: Readonly<Record<Exclude<Format, 'json'>, string>> = {
  csv: 'text/csv',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};

/** Why the format that ?format= names cannot be had; null where it can, or none is named. */
function wrongFormat(request: Request): Problem | null {
  const format = new URL(request.url).searchParams.get('format');
  if (format === null || FORMATS.some((known) => known === format)) return null;
  const words = noSuchFormat(format, FORMATS);
  return refused(400, words, [{ name: 'format', value: format, text: words.detail }]).problem;
}

/** What the answer is wanted as: what ?format= names, else what the Accept header does, else JSON. */
function formatOf(request: Request): Format {
  const named = new URL(request.url).searchParams.get('format');
  const accept = request.headers.get('accept') ?? '';
  const wanted = (format: Exclude<Format, 'json'>) =>
    named === null ? accept.includes(TYPES[format]) : named === format;
  return wanted('xlsx') ? 'xlsx' : wanted('csv') ? 'csv' : 'json';
}

async function fileResponse(file: ReportFile, format: Exclude<Format, 'json'>): Promise<Response> {
  const body = format === 'csv' ? reportCsv(file) : Buffer.from(await reportXlsx(file));
  const headers = {
    'content-type': format === 'csv' ? `${TYPES.csv}; charset=utf-8` : TYPES.xlsx,
    'content-disposition': `attachment; filename="${file.name}.${format}"`,
  };
  return new Response(body, { headers });
}

/**
 * Answers a request with JSON, or with CSV or a workbook where that is asked for and `file` says what its rows are; a refusal becomes
 * problem details; nothing ends bare.
 */
export async function respond<T>(
  request: Request,
  question: () => Promise<Answered<T>>,
  file?: (answer: T) => ReportFile,
): Promise<Response> {
  try {
    const wrong = file ? wrongFormat(request) : null;
    if (wrong) return problemResponse(wrong);
    const result = await question();
    if (!result.ok) return problemResponse(result.problem);
    const format = file ? formatOf(request) : 'json';
    return file && format !== 'json'
      ? await fileResponse(file(result.answer), format)
      : NextResponse.json(result.answer);
  } catch (error) {
    return troubleResponse(request, error);
  }
}

/** What is answered where answering failed: a reference, under which the log has the whole story. */
export function troubleResponse(request: Request, error: unknown): Response {
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
