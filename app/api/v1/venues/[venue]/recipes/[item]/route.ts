import { recipeAnswer } from '@/lib/answers/recipe';
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
  const query = new URL(request.url).searchParams;
  const question = { venue: decoded(venue), item: decoded(item), date: query.get('date'), list: query.get('list') };
  return respond(request, () => withOptions(request, ['date', 'list'], () => recipeAnswer(currentAsker(), question)));
}

export { onlyGet as DELETE, onlyGet as PATCH, onlyGet as POST, onlyGet as PUT, optionsOfGet as OPTIONS };
