import { openApi } from '@/lib/answers/openapi';
import { INTAKE_DOCUMENT } from '../intake-document';

export function GET(): Response {
  return Response.json(openApi(INTAKE_DOCUMENT));
}
