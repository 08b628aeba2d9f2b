import { dishCostAnswer } from '@/lib/answers/dish-cost';
import { dishCostCsv } from '@/lib/answers/dish-cost-csv';
import { currentAsker } from '@/lib/session/asker';
import { decoded } from '../../../../../asked';
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
  return respond(request, () => dishCostAnswer(currentAsker(), question), { file: 'dish-cost', text: dishCostCsv });
}
