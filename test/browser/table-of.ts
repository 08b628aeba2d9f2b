import type { Locator, Page } from 'playwright-core';

/** The table as it stands on the page, or in a part of it: cells of each row by column. */
export function tableOf(place: Page | Locator): Promise<Record<string, string>[]> {
  return place.locator('tbody tr').evaluateAll((rows) =>
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
