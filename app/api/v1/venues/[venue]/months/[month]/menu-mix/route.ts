import { menuMixCsv } from '@/lib/answers/answer-csv';
import { menuMixAnswer } from '@/lib/answers/menu-mix';
import { currentAsker } from '@/lib/session/asker';
import { askedOf, type PeriodParams } from '../../../../../asked';
import { respond } from '../../../../../respond';

export async function GET(request: Request, params: PeriodParams): Promise<Response> {
  const asked = await askedOf(request, params);
  return respond(request, () => menuMixAnswer(currentAsker(), asked), { file: 'menu-mix', text: menuMixCsv });
}
