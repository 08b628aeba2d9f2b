import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds wrong on a page as it stands (WCAG 2.2 A and AA, and its own best practices): rule, what it means, and where. */
export async function accessTroubles(page: Page): Promise<readonly string[]> {
  await page.evaluate(AXE);
  const results = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run(),
  );
  return results.violations.map(
    ({ id, help, nodes }) => `${id}: ${help} at ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
  );
}
