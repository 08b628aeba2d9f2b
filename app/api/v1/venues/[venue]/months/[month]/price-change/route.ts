import { priceChangeAnswer } from '@/lib/answers/price-change';
import { priceChangeFile } from '@/lib/answers/price-change-file';
import { currentAsker } from '@/lib/session/asker';
import { askedOf, type PeriodParams } from '../../../../../asked';
import { withOptions } from '../../../../../known-options';
import { onlyGetAndPost, optionsOfGetAndPost } from '../../../../../not-served';
import { respond } from '../../../../../respond';

/** Asks what other prices would have done; nothing is kept. */
export async function POST(request: Request, params: PeriodParams): Promise<Response> {
  const { venue, month, section } = await askedOf(request, params);
  return respond(
    request,
    () =>
      withOptions(request, ['section', 'format'], async () =>
        priceChangeAnswer(currentAsker(), { venue, month, section, body: await jsonIn(request) }),
      ),
    priceChangeFile,
  );
}

/** The same for changes in the address, each a `price=Double cream:+10%`, so that a page can lead to its table as a file. */
export async function GET(request: Request, params: PeriodParams): Promise<Response> {
  const { venue, month, section } = await askedOf(request, params);
  const edits = new URL(request.url).searchParams.getAll('price');
  return respond(
    request,
    () =>
      withOptions(request, ['price', 'section', 'format'], () =>
        priceChangeAnswer(currentAsker(), { venue, month, section, body: { edits } }),
      ),
    priceChangeFile,
  );
}

/** What is no JSON is nothing: the answer says what is asked for. */
async function jsonIn(request: Request): Promise<unknown> {
  try {
    return await request.json();
  } catch {
    return null;
  }
}

export { onlyGetAndPost as DELETE, onlyGetAndPost as PATCH, onlyGetAndPost as PUT, optionsOfGetAndPost as OPTIONS };
