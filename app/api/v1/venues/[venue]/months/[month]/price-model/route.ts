import { priceModelAnswer } from '@/lib/answers/price-model';
import { currentAsker } from '@/lib/session/asker';
import { askedOf, type PeriodParams } from '../../../../../asked';
import { withOptions } from '../../../../../known-options';
import { onlyGet, optionsOfGet } from '../../../../../not-served';
import { respondBytes } from '../../../../../respond-bytes';

export async function GET(request: Request, params: PeriodParams): Promise<Response> {
  const asked = await askedOf(request, params);
  return respondBytes(request, () => withOptions(request, ['section'], () => priceModelAnswer(currentAsker(), asked)));
}

export { onlyGet as DELETE, onlyGet as PATCH, onlyGet as POST, onlyGet as PUT, optionsOfGet as OPTIONS };
