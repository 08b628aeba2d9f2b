const BATCHES = 21;
const CALLS = 50;

/**
 * Milliseconds a call, the median of some batches of calls. The batches of all that is measured take turns, so that a slow moment of
 * the machine falls on all of them alike.
 */
export function medianMs<Name extends string>(
  calls: Readonly<Record<Name, () => unknown>>,
  batches = BATCHES,
  each = CALLS,
): Readonly<Record<Name, number>> {
  const names = Object.keys(calls) as Name[];
  const times = new Map(names.map((name) => [name, [] as number[]]));
  for (let batch = 0; batch < batches; batch++) {
    for (const name of names) {
      const call = calls[name];
      call();
      const start = performance.now();
      for (let count = 0; count < each; count++) call();
      times.get(name)?.push((performance.now() - start) / each);
    }
  }
  const median = (of: readonly number[]): number =>
    [...of].sort((a, b) => a - b)[Math.floor(of.length / 2)] ?? Number.NaN;
  return Object.fromEntries(names.map((name) => [name, median(times.get(name) ?? [])])) as Record<Name, number>;
}
