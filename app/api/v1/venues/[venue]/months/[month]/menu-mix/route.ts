import { menuMixAnswer } from '@/lib/answers/menu-mix';
import { menuMixFile } from '@/lib/answers/menu-mix-file';
import { currentAsker } from '@/lib/session/asker';
import { askedOf, type PeriodParams } from '../../../../../asked';
import { withOptions } from '../../../../../known-options';
import { onlyGet, optionsOfGet } from '../../../../../not-served';
import { respond } from '../../../../../respond';

export async function GET(request: Request, params: PeriodParams): Promise<Response> {
  const setMenus = new URL(request.url).searchParams.get('setMenus');
  const asked = { ...(await askedOf(request, params)), setMenus };
  return respond(
    request,
    () => withOptions(request, ['section', 'model', 'setMenus', 'format'], () => menuMixAnswer(currentAsker(), asked)),
    menuMixFile,
  );
}

export { onlyGet as DELETE, onlyGet as PATCH, onlyGet as POST, onlyGet as PUT, optionsOfGet as OPTIONS };
