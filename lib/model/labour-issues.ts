import { nameKey } from '../core/name-key';
import type { CostedPeriod } from './costed-period';
import type { Issue } from './issue';
import { reachedFrom } from './reached';

/** The issues of labour that touch some things: of what they reach, and of the grades that make it. */
export function labourIssues(period: CostedPeriod, nodes: Iterable<number>): readonly Issue[] {
  const names = new Set<string>();
  for (const node of reachedFrom(period, nodes)) {
    names.add(period.things[node]?.name ?? '');
    for (const { version } of period.recipes[node] ?? []) names.add(nameKey(version.grade ?? ''));
  }
  return period.labour.issues.filter(({ code, about }) =>
    names.has(code === 'no-labour-rate' ? nameKey(about) : about),
  );
}
