import { type Answered, refused } from '@/lib/answers/problem';
import { unknownOption, unknownOptions } from '@/lib/format/words/address-problems';

/** Asks the question where the address has no option but these; an option that nobody reads would else be thought to count. */
export async function withOptions<T>(
  request: Request,
  known: readonly string[],
  question: () => Promise<Answered<T>>,
): Promise<Answered<T>> {
  const given = new URL(request.url).searchParams;
  const unknown = [...new Set(given.keys())].filter((name) => !known.includes(name));
  if (unknown.length === 0) return question();
  const fields = unknown.map((name) => ({ name, value: given.get(name), text: `“${name}” ${unknownOption}.` }));
  return refused(400, unknownOptions(unknown, known), fields);
}
