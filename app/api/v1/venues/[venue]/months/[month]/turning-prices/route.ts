import { type Answered, refused } from '@/lib/answers/problem';
import { turningPricesAnswer } from '@/lib/answers/turning-prices';
import { turningPricesFile } from '@/lib/answers/turning-prices-file';
import type { TurningPricesAnswer } from '@/lib/answers/turning-prices-shape';
import { ingredientAsked } from '@/lib/format/words/price-edits';
import { currentAsker } from '@/lib/session/asker';
import { askedOf, type PeriodParams } from '../../../../../asked';
import { withOptions } from '../../../../../known-options';
import { onlyGet, optionsOfGet } from '../../../../../not-served';
import { respond } from '../../../../../respond';

export async function GET(request: Request, params: PeriodParams): Promise<Response> {
  const { venue, month, section, model } = await askedOf(request, params);
  const ingredient = new URL(request.url).searchParams.get('ingredient');
  const question = async (): Promise<Answered<TurningPricesAnswer>> => {
    if (ingredient !== null) return turningPricesAnswer(currentAsker(), { venue, month, section, model, ingredient });
    return refused(400, ingredientAsked, [{ name: 'ingredient', value: null, text: ingredientAsked.detail }]);
  };
  const options = ['ingredient', 'section', 'model', 'format'];
  return respond(request, () => withOptions(request, options, question), turningPricesFile);
}

export { onlyGet as DELETE, onlyGet as PATCH, onlyGet as POST, onlyGet as PUT, optionsOfGet as OPTIONS };
