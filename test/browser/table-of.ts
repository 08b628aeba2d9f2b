import type { Page } from 'playwright-core';

/** The table as it stands on the page: cells of each row by column. */
export function tableOf(page: Page): Promise<Record<string, string>[]> {
  return page.locator('tbody tr').evaluateAll((rows) =>
    rows.map((row) =>
      Object.fromEntries(
        [...row.querySelectorAll<HTMLElement>('[data-column]')].map((cell) => [
          cell.dataset.column ?? '',
          // of the first cell the name only, without what stands under it
          (cell.dataset.column === 'item'
            ? (cell.querySelector('a') ?? [...cell.childNodes].find((node) => node.nodeType === 3))
            : cell
          )?.textContent ?? '',
        ]),
      ),
    ),
  );
}
