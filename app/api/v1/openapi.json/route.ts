import { openApi } from '@/lib/answers/openapi';
import { INTAKE_DOCUMENT } from '../intake-document';
import { onlyGet, optionsOfGet } from '../not-served';

export function GET(): Response {
  return Response.json(openApi(INTAKE_DOCUMENT));
}

export { onlyGet as DELETE, onlyGet as PATCH, onlyGet as POST, onlyGet as PUT, optionsOfGet as OPTIONS };
