import { z } from 'zod';

/** Money as an unrounded decimal string: at least the currency's digits, at most ten. */
export const moneyShape = z.string().regex(/^-?\d+(\.\d{1,10})?$/);

export const issueShape = z.strictObject({
  code: z.string(),
  /** Name of the thing to mend. */
  about: z.string(),
  /** What is missing, and how to mend it. */
  text: z.string(),
});

export type IssueAnswer = z.infer<typeof issueShape>;
