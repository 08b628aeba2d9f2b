import { z } from 'zod';
import { DatabaseTrouble } from '../db/database-trouble';
import { broke, databaseTrouble } from '../format/words/problems';

/** RFC 9457 problem details, with the fields that were wrong. */
export const problemShape = z.strictObject({
  type: z.string(),
  title: z.string(),
  status: z.number(),
  detail: z.string(),
  fields: z.array(z.strictObject({ name: z.string(), value: z.string().nullable(), text: z.string() })),
});

export type Problem = z.infer<typeof problemShape>;

/** What a question comes to: an answer, or why there is none and what to do about it. */
export type Answered<T> = { readonly ok: true; readonly answer: T } | { readonly ok: false; readonly problem: Problem };

export function answered<T>(answer: T): Answered<T> {
  return { ok: true, answer };
}

export function refused(
  status: number,
  words: { readonly title: string; readonly detail: string },
  fields: Problem['fields'] = [],
): { readonly ok: false; readonly problem: Problem } {
  return { ok: false, problem: { type: 'about:blank', title: words.title, status, detail: words.detail, fields } };
}

/** What is said when answering failed: the database's own sentence where it cannot be used, else only a reference to the log. */
export function troubled(error: unknown, reference: string): Problem {
  const problem =
    error instanceof DatabaseTrouble ? refused(503, databaseTrouble(error.message)) : refused(500, broke(reference));
  return problem.problem;
}
