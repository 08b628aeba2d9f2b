import { priceChangeAnswer } from '@/lib/answers/price-change';
import { priceChangeFile } from '@/lib/answers/price-change-file';
import { currentAsker } from '@/lib/session/asker';
import { askedOf, type PeriodParams } from '../../../../../asked';
import { withOptions } from '../../../../../known-options';
import { onlyPost, optionsOfPost } from '../../../../../not-served';
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

/** What is no JSON is nothing: the answer says what is asked for. */
async function jsonIn(request: Request): Promise<unknown> {
  try {
    return await request.json();
  } catch {
    return null;
  }
}

export { onlyPost as DELETE, onlyPost as GET, onlyPost as PATCH, onlyPost as PUT, optionsOfPost as OPTIONS };
