import { dishCostsCsv } from '@/lib/answers/answer-csv';
import { dishCostsAnswer } from '@/lib/answers/dish-costs';
import { currentAsker } from '@/lib/session/asker';
import { askedOf, type PeriodParams } from '../../../../../asked';
import { respond } from '../../../../../respond';

export async function GET(request: Request, params: PeriodParams): Promise<Response> {
  const asked = await askedOf(request, params);
  return respond(request, () => dishCostsAnswer(currentAsker(), asked), { file: 'dish-costs', text: dishCostsCsv });
}
