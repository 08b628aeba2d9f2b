import { menuModelsAnswer } from '@/lib/answers/menu-models';
import { menuModelsFile } from '@/lib/answers/menu-models-file';
import { currentAsker } from '@/lib/session/asker';
import { askedOf, type PeriodParams } from '../../../../../asked';
import { withOptions } from '../../../../../known-options';
import { onlyGet, optionsOfGet } from '../../../../../not-served';
import { respond } from '../../../../../respond';

export async function GET(request: Request, params: PeriodParams): Promise<Response> {
  const asked = await askedOf(request, params);
  return respond(
    request,
    () => withOptions(request, ['section', 'format'], () => menuModelsAnswer(currentAsker(), asked)),
    menuModelsFile,
  );
}

export { onlyGet as DELETE, onlyGet as PATCH, onlyGet as POST, onlyGet as PUT, optionsOfGet as OPTIONS };
