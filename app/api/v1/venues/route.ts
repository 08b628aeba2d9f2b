import { connection } from 'next/server';
import { answered } from '@/lib/answers/problem';
import { venuesAnswer } from '@/lib/answers/venues';
import { currentAsker } from '@/lib/session/asker';
import { withOptions } from '../known-options';
import { onlyGet, optionsOfGet } from '../not-served';
import { respond } from '../respond';

export async function GET(request: Request): Promise<Response> {
  await connection();
  return respond(request, () => withOptions(request, [], async () => answered(await venuesAnswer(currentAsker()))));
}

export { onlyGet as DELETE, onlyGet as PATCH, onlyGet as POST, onlyGet as PUT, optionsOfGet as OPTIONS };
