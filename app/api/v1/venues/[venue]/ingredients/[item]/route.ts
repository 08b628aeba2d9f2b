import { ingredientAnswer } from '@/lib/answers/ingredient';
import { currentAsker } from '@/lib/session/asker';
import { decoded } from '../../../../asked';
import { withOptions } from '../../../../known-options';
import { onlyGet, optionsOfGet } from '../../../../not-served';
import { respond } from '../../../../respond';

interface ItemParams {
  readonly params: Promise<{ readonly venue: string; readonly item: string }>;
}

export async function GET(request: Request, { params }: ItemParams): Promise<Response> {
  const { venue, item } = await params;
  const date = new URL(request.url).searchParams.get('date');
  const question = { venue: decoded(venue), item: decoded(item), date };
  return respond(request, () => withOptions(request, ['date'], () => ingredientAnswer(currentAsker(), question)));
}

export { onlyGet as DELETE, onlyGet as PATCH, onlyGet as POST, onlyGet as PUT, optionsOfGet as OPTIONS };
