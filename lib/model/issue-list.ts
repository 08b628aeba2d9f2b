import type { Day } from '../core/days';
import { byText } from '../core/grouped';
import { ISSUE_CODES, type Issue } from './issue';

export interface IssueList {
  add(issue: Issue): void;
  /** Each missing fact once, in a fixed order. */
  issues(): readonly Issue[];
}

/** Facts that say where something was noticed, not what is missing: density is missing once, however many recipes wait for it. */
const NOTICED: ReadonlySet<string> = new Set(['recipe']);
const ONE_FACT: ReadonlySet<Issue['code']> = new Set(['no-density', 'no-piece-weight']);

/** Collects issues; of those that ask for the same fact the one that holds first is kept. */
export function issueList(): IssueList {
  const kept = new Map<string, Issue>();
  return {
    add(issue) {
      const key = missingFact(issue);
      const before = kept.get(key);
      if (!before || isEarlier(issue, before)) kept.set(key, issue);
    },
    issues: () => [...kept.values()].sort(inOrder),
  };
}

function missingFact({ code, about, facts }: Issue): string {
  const particulars = ONE_FACT.has(code) ? [] : Object.entries(facts).filter(([name]) => !NOTICED.has(name));
  return JSON.stringify([code, about, particulars]);
}

const dayOf = (issue: Issue): Day | number => issue.day ?? Number.NEGATIVE_INFINITY;

function isEarlier(issue: Issue, before: Issue): boolean {
  if (dayOf(issue) !== dayOf(before)) return dayOf(issue) < dayOf(before);
  return byText(JSON.stringify(issue.facts), JSON.stringify(before.facts)) < 0;
}

/** By rule, then by name, then by particulars: the same on every machine. */
export function inOrder(a: Issue, b: Issue): number {
  const rule = ISSUE_CODES.indexOf(a.code) - ISSUE_CODES.indexOf(b.code);
  return rule || byText(a.about, b.about) || byText(JSON.stringify(a.facts), JSON.stringify(b.facts));
}
