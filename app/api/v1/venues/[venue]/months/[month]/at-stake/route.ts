import { atStakeAnswer } from '@/lib/answers/at-stake';
import { atStakeFile } from '@/lib/answers/at-stake-file';
import { currentAsker } from '@/lib/session/asker';
import { askedOf, type PeriodParams } from '../../../../../asked';
import { withOptions } from '../../../../../known-options';
import { onlyGet, optionsOfGet } from '../../../../../not-served';
import { respond } from '../../../../../respond';

export async function GET(request: Request, params: PeriodParams): Promise<Response> {
  const { venue, month, section } = await askedOf(request, params);
  const asked = { venue, month, section, by: new URL(request.url).searchParams.get('by') };
  return respond(
    request,
    () => withOptions(request, ['by', 'section', 'format'], () => atStakeAnswer(currentAsker(), asked)),
    atStakeFile,
  );
}

export { onlyGet as DELETE, onlyGet as PATCH, onlyGet as POST, onlyGet as PUT, optionsOfGet as OPTIONS };
