import { ingredientsAnswer } from '@/lib/answers/ingredients';
import { currentAsker } from '@/lib/session/asker';
import { decoded } from '../../../asked';
import { withOptions } from '../../../known-options';
import { onlyGet, optionsOfGet } from '../../../not-served';
import { respond } from '../../../respond';

interface VenueParams {
  readonly params: Promise<{ readonly venue: string }>;
}

export async function GET(request: Request, { params }: VenueParams): Promise<Response> {
  const { venue } = await params;
  const date = new URL(request.url).searchParams.get('date');
  const question = { venue: decoded(venue), date };
  return respond(request, () => withOptions(request, ['date'], () => ingredientsAnswer(currentAsker(), question)));
}

export { onlyGet as DELETE, onlyGet as PATCH, onlyGet as POST, onlyGet as PUT, optionsOfGet as OPTIONS };
