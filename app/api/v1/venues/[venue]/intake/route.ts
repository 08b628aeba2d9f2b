import { type Answered, answered, refused } from '@/lib/answers/problem';
import type { LoadReport } from '@/lib/changes/load-report-shape';
import { loadUpload } from '@/lib/changes/load-upload';
import { badUpload, noSuchVenue, noVenueYet, uploadTooLarge } from '@/lib/format/words/problems';
import { currentAsker } from '@/lib/session/asker';
import { decoded } from '../../../asked';
import { withOptions } from '../../../known-options';
import { onlyPost, optionsOfPost } from '../../../not-served';
import { respond } from '../../../respond';

const OPTIONS_TAKEN = ['file', 'source', 'days', 'dryRun'];

/** Takes in a file: CSV, a ZIP of the data folder, or a workbook. What became of its rows is the answer, refused ones among them. */
export async function POST(
  request: Request,
  { params }: { readonly params: Promise<{ readonly venue: string }> },
): Promise<Response> {
  const venue = decoded((await params).venue);
  return respond<LoadReport>(request, () => withOptions(request, OPTIONS_TAKEN, () => takenIn(request, venue)));
}

async function takenIn(request: Request, venue: string): Promise<Answered<LoadReport>> {
  const query = new URL(request.url).searchParams;
  const uploaded = await loadUpload(currentAsker(), {
    body: bytesOf(request),
    type: request.headers.get('content-type') ?? '',
    venue,
    file: query.get('file'),
    source: query.get('source'),
    days: query.get('days'),
    dryRun: ['1', 'true', 'yes'].includes(query.get('dryRun') ?? ''),
  });
  if ('report' in uploaded) return answered(uploaded.report);
  if ('noVenue' in uploaded) {
    return refused(404, uploaded.noVenue.length === 0 ? noVenueYet : noSuchVenue(venue, uploaded.noVenue));
  }
  if ('tooLarge' in uploaded) return refused(413, uploadTooLarge(uploaded.tooLarge));
  const { field, value, wrong } = uploaded;
  return refused(400, badUpload(wrong), [{ name: field, value, text: wrong }]);
}

export { onlyPost as DELETE, onlyPost as GET, onlyPost as PATCH, onlyPost as PUT, optionsOfPost as OPTIONS };

async function* bytesOf(request: Request): AsyncGenerator<Uint8Array> {
  const reader = request.body?.getReader();
  if (!reader) return;
  for (let next = await reader.read(); !next.done; next = await reader.read()) yield next.value;
}
