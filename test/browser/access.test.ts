import { describe, expect, test } from 'vitest';
import { accessTroubles } from './axe';
import { visitor } from './visit';

const visit = visitor();

/** Every page of the Menu room, in the latest month of the small book. A new page adds its path. */
const PAGES = [
  '/menu',
  '/menu/models',
  '/menu/prices',
  '/menu/dishes',
  '/menu/year',
  '/menu/week',
  '/menu/prices?month=2026-10&price=Dark+couverture+64+%25:%2B25%25',
];

describe.each(PAGES)('%s', (path) => {
  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [1440, 390]) {
      test(`axe finds nothing wrong, ${colorScheme}, ${width} px`, async () => {
        const page = await visit(path, { colorScheme, viewport: { width, height: 900 } });
        expect(await accessTroubles(page)).toEqual([]);
      });
    }
  }
});
