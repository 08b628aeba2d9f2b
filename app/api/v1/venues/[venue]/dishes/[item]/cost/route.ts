import { dishCostAnswer } from '@/lib/answers/dish-cost';
import { dishCostFile } from '@/lib/answers/dish-cost-file';
import { currentAsker } from '@/lib/session/asker';
import { decoded } from '../../../../../asked';
import { withOptions } from '../../../../../known-options';
import { onlyGet, optionsOfGet } from '../../../../../not-served';
import { respond } from '../../../../../respond';

interface DishParams {
  readonly params: Promise<{ readonly venue: string; readonly item: string }>;
}

export async function GET(request: Request, { params }: DishParams): Promise<Response> {
  const { venue, item } = await params;
  const query = new URL(request.url).searchParams;
  const asked = {
    date: query.get('date'),
    month: query.get('month'),
    channel: query.get('channel'),
    section: query.get('section'),
  };
  const question = { venue: decoded(venue), item: decoded(item), ...asked };
  const options = ['date', 'month', 'channel', 'section', 'format'];
  return respond(
    request,
    () => withOptions(request, options, () => dishCostAnswer(currentAsker(), question)),
    dishCostFile,
  );
}

export { onlyGet as DELETE, onlyGet as PATCH, onlyGet as POST, onlyGet as PUT, optionsOfGet as OPTIONS };
