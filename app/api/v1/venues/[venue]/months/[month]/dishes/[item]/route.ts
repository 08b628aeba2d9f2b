import { dishAnswer } from '@/lib/answers/dish';
import { dishFile } from '@/lib/answers/dish-file';
import { currentAsker } from '@/lib/session/asker';
import { decoded } from '../../../../../../asked';
import { withOptions } from '../../../../../../known-options';
import { onlyGet, optionsOfGet } from '../../../../../../not-served';
import { respond } from '../../../../../../respond';

interface DishParams {
  readonly params: Promise<{ readonly venue: string; readonly month: string; readonly item: string }>;
}

export async function GET(request: Request, { params }: DishParams): Promise<Response> {
  const { venue, month, item } = await params;
  const asked = { venue: decoded(venue), month: decoded(month), item: decoded(item) };
  return respond(request, () => withOptions(request, ['format'], () => dishAnswer(currentAsker(), asked)), dishFile);
}

export { onlyGet as DELETE, onlyGet as PATCH, onlyGet as POST, onlyGet as PUT, optionsOfGet as OPTIONS };
