import type { CostedPeriod } from './costed-period';
import type { Issue } from './issue';

/** Some things and all that their recipes of the period reach, in whichever channel they are sold, as nodes. */
export function reachedFrom(
  period: Pick<CostedPeriod, 'recipes' | 'packings'>,
  nodes: Iterable<number>,
): ReadonlySet<number> {
  const reached = new Set(nodes);
  for (const node of reached) {
    for (const packing of period.packings.get(node)?.values() ?? []) reached.add(packing);
    for (const piece of period.recipes[node] ?? []) for (const child of piece.children) reached.add(child);
  }
  return reached;
}

/** The period's issues that touch some of its things: of what they reach, and of the venue's settings. */
export function issuesOf(period: CostedPeriod, nodes: Iterable<number>): readonly Issue[] {
  const names = new Set([...reachedFrom(period, nodes)].map((node) => period.things[node]?.name));
  return period.issues.filter((issue) => issue.code === 'setting-defaulted' || names.has(issue.about));
}
