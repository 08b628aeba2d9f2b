import { issueText } from '../format/words/issues';
import type { Issue } from '../model/issue';
import type { IssueAnswer } from './common-shape';

/** Issues as every answer carries them: the rule, the thing, and the sentence with its remedy. */
export function writtenIssues(issues: readonly Issue[]): IssueAnswer[] {
  return issues.map((issue) => ({ code: issue.code, about: issue.about, text: issueText(issue) }));
}
