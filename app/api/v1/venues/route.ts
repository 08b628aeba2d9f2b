import { connection } from 'next/server';
import { answered } from '@/lib/answers/problem';
import { venuesAnswer } from '@/lib/answers/venues';
import { currentAsker } from '@/lib/session/asker';
import { respond } from '../respond';

export async function GET(request: Request): Promise<Response> {
  await connection();
  return respond(request, async () => answered(await venuesAnswer(currentAsker())));
}
