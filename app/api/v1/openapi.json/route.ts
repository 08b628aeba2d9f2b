import { openApi } from '@/lib/answers/openapi';

export function GET(): Response {
  return Response.json(openApi());
}
