import { expect } from 'vitest';
import { isNear } from '@/lib/core/near';
import type { CostLine } from '@/lib/model/cost-line';
import type { CostWorking } from '@/lib/reports/cost-working';

/** Every line of a tree with those under it. */
export function everyLine(lines: readonly CostLine[]): readonly CostLine[] {
  return lines.flatMap((line) => [line, ...everyLine(line.lines)]);
}

const knownOf = (line: CostLine): number => line.cost ?? line.floor ?? 0;
const sum = (lines: readonly CostLine[]): number => lines.reduce((total, line) => total + knownOf(line), 0);

/** The sum of the parts is the whole, at the top and at every line that is opened. */
export function expectParts(working: CostWorking): void {
  const whole = working.plateCost ?? working.halfKnown?.floor ?? 0;
  expect([sum(working.lines), whole]).toSatisfy(([parts = 0, all = 0]) => isNear(parts, all));
  for (const line of everyLine(working.lines)) {
    if (line.lines.length === 0) continue;
    expect([sum(line.lines), knownOf(line)]).toSatisfy(([parts = 0, all = 0]) => isNear(parts, all));
    if (line.cost !== null) expect(line.lines.every(({ cost }) => cost !== null)).toBe(true);
  }
}
