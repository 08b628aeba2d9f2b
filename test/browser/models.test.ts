import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { expect, inject, test } from 'vitest';
import { type MenuModelsAnswer, menuModelsShape } from '@/lib/answers/menu-models-shape';
import { surroundings } from './start-program';
import { tableOf } from './table-of';
import { visitor } from './visit';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const visit = visitor();
const address = (): string => inject('program').address;

async function fetched(page: { url(): string }): Promise<MenuModelsAnswer> {
  const month = new URL(page.url()).searchParams.get('month');
  const venues = (await (await fetch(`${address()}/api/v1/venues`)).json()) as { venues: { name: string }[] };
  const venue = encodeURIComponent(venues.venues[0]?.name ?? '');
  return menuModelsShape.parse(
    await (await fetch(`${address()}/api/v1/venues/${venue}/months/${month}/models`)).json(),
  );
}

test('/menu/models leads to the latest month, and its table holds the classes that command and HTTP give', async () => {
  const page = await visit('/menu/models');
  const answer = await fetched(page);
  const words = ['--import', 'tsx', 'lib/commands/report.ts', 'models', '--month', answer.month, '--json'];
  const options = { cwd: ROOT, env: surroundings(inject('program').dataDir), maxBuffer: 64_000_000 };
  const { stdout } = await promisify(execFile)(process.execPath, words, options);
  expect(menuModelsShape.parse(JSON.parse(stdout))).toEqual(answer);

  const rows = await tableOf(page);
  expect(rows).toHaveLength(answer.items.length);
  for (const [at, item] of answer.items.entries()) {
    for (const { model, class: mixClass } of item.classes) {
      expect(rows[at]?.[model]?.startsWith(mixClass ?? 'not said'), `${item.item} by ${model}`).toBe(true);
    }
  }
});

test('/menu/models opens with the dish over which the models part; another may be followed, and is read out', async () => {
  const page = await visit('/menu/models');
  const answer = await fetched(page);
  const last = answer.items.at(-1)?.item ?? '';
  await page.getByLabel('Follow a dish').selectOption(last);
  await page.locator('[aria-live="polite"]', { hasText: `${last}: ` }).waitFor();
});

for (const width of [1440, 390]) {
  test(`/menu/models at ${width} px: nothing runs over the sheet`, async () => {
    const page = await visit('/menu/models', { viewport: { width, height: 900 } });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(over).toBeLessThanOrEqual(0);
  });
}
