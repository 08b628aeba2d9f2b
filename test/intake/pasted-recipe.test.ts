import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { recipeQuestionWords } from '@/lib/format/words/recipe-questions';
import { pastedRecipe } from '@/lib/intake/pasted-recipe';
import type { PastedRecipe } from '@/lib/model/pasted-recipe';
import { openData } from '../open-data';

const STYLE = { measures: 'metric', decimalComma: false } as const;
const read = (text: string): PastedRecipe => pastedRecipe(text, STYLE);
const codes = ({ questions }: PastedRecipe): readonly string[] => questions.map(({ code }) => code);
const written = ({ lines }: PastedRecipe) => lines.map(({ section, line }) => [section, line.written]);

const TART = `# Lemon tart

Makes 12 tarts

A note from the first winter.

## Ingredients

### Pastry
- 250 g plain flour
- 125 g butter, cold

For the filling:
- zest of 4 lemons
- salt

## Method
1. Rub the butter into 250 g flour.
2. Bake.

## Notes
Keeps for two days.`;

describe('pastedRecipe: text', () => {
  test('pastedRecipe(text with headings) has each part in its place', () => {
    const recipe = read(TART);
    expect(recipe).toMatchObject({ title: 'Lemon tart', questions: [] });
    expect(recipe.yield).toMatchObject({ quantity: 12, upTo: null, unit: 'each', of: 'tarts', questions: [] });
    expect(written(recipe)).toEqual([
      ['Pastry', '- 250 g plain flour'],
      ['Pastry', '- 125 g butter, cold'],
      ['For the filling', '- zest of 4 lemons'],
      ['For the filling', '- salt'],
    ]);
    expect(recipe.lines.map(({ line }) => line.certain)).toEqual([true, true, true, false]);
    expect(recipe.method).toBe('1. Rub the butter into 250 g flour.\n2. Bake.');
    expect(recipe.rest).toEqual(['A note from the first winter.', 'Keeps for two days.']);
  });

  test('pastedRecipe(text without headings) tells lines by their looks, and says so', () => {
    const recipe = read(
      'Rice pudding\n4 servings\n100 g pudding rice\n1 l milk\nnutmeg\nSimmer the rice in the milk until it is soft, about forty minutes.\nServe warm.',
    );
    expect(recipe.title).toBe('Rice pudding');
    expect(recipe.yield).toMatchObject({ quantity: 4, of: 'portions' });
    expect(written(recipe).map(([, line]) => line)).toEqual(['100 g pudding rice', '1 l milk', 'nutmeg']);
    expect(recipe.method).toBe('Simmer the rice in the milk until it is soft, about forty minutes.\nServe warm.');
    expect(codes(recipe)).toEqual(['title-unmarked', 'told-by-looks']);
  });

  test.each([
    ['Serves 4-6', 4, 6, 'each', 'portions', ['range']],
    ['Yield: 1.2 kg', 1.2, null, 'kg', null, []],
    ['Makes about 500 ml', 500, null, 'ml', null, ['approximate']],
    ['For 8 people', 8, null, 'each', 'portions', []],
    ['Makes 20 (40 pieces)', 20, null, 'each', null, ['two-quantities']],
    ['4 portions', 4, null, 'each', 'portions', []],
  ])('pastedRecipe(... %s) reads the yield', (line, quantity, upTo, unit, of, asked) => {
    const stated = read(`Cake\n${line}\nIngredients\n3 eggs`).yield;
    expect(stated).toMatchObject({ written: line, quantity, upTo, unit, of });
    expect(stated?.questions.map(({ code }) => code)).toEqual(asked);
  });

  test('pastedRecipe(text that is no recipe) asks for all of it', () => {
    expect(codes(read(' \n '))).toEqual(['nothing-pasted', 'no-title', 'no-yield', 'no-lines']);
    expect(codes(read('Ingredients\nMethod'))).toEqual(['no-title', 'no-yield', 'no-lines']);
    expect(codes(read('x'.repeat(500_001)))).toEqual(['paste-too-long']);
    expect(read('x'.repeat(500_000)).title).toHaveLength(500_000);
  });

  test('pastedRecipe(text) knows a step without a heading by what somebody does', () => {
    const recipe = read('Curd\nFor the curd\n3 eggs\n100 g butter\nWhisk everything over a bain-marie.\nCool.');
    expect(written(recipe)).toEqual([
      ['For the curd', '3 eggs'],
      ['For the curd', '100 g butter'],
    ]);
    expect(recipe.method).toBe('Whisk everything over a bain-marie.\nCool.');
  });

  test('pastedRecipe(text) reads a second list under its own heading, and a yield in the title', () => {
    const recipe = read(
      'Mousse (serves 6)\nIngredients:\n200 g dark chocolate\nMethod:\nMelt.\nIngredients for the sauce\n100 ml cream\nMethod for the sauce\nBoil.',
    );
    expect(recipe.yield).toMatchObject({ written: 'serves 6', quantity: 6, of: 'portions' });
    expect(written(recipe)).toEqual([
      [null, '200 g dark chocolate'],
      ['for the sauce', '100 ml cream'],
    ]);
    expect(recipe.method).toBe('Melt.\nfor the sauce\nBoil.');
  });

  test('pastedRecipe(a group without lines) keeps its name', () => {
    expect(read('# Tart\nIngredients\nFor the icing:\nMethod\nStir.').rest).toEqual(['For the icing']);
  });
});

const data = (more: object): string =>
  JSON.stringify({
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    name: 'Plum &amp; almond tart',
    recipeYield: ['8', '8 servings'],
    recipeIngredient: ['500 g plums, halved', '2&frac12; tbsp ground almonds'],
    recipeInstructions: [
      {
        '@type': 'HowToSection',
        name: 'Tart',
        itemListElement: [{ '@type': 'HowToStep', text: '<p>Halve.</p><p>Bake.</p>' }],
      },
      'Cool.',
    ],
    ...more,
  });

describe('pastedRecipe: schema.org Recipe', () => {
  test('pastedRecipe(JSON-LD) reads title, yield, lines and method', () => {
    const recipe = read(data({}));
    expect(recipe).toMatchObject({ title: 'Plum & almond tart', questions: [], rest: ['8 servings'] });
    expect(recipe.yield).toMatchObject({ quantity: 8, unit: 'each' });
    expect(recipe.lines.map(({ line: { quantity, unit, name } }) => [quantity, unit, name])).toEqual([
      [500, 'g', 'plums'],
      [2.5, 'tbsp', 'ground almonds'],
    ]);
    expect(recipe.method).toBe('Tart\nHalve.\nBake.\nCool.');
  });

  test('pastedRecipe(a page) finds the recipe in its data, however deep, and asks about a second', () => {
    const graph = `{"@graph":[{"@type":"WebPage"},${data({ '@type': ['Thing', 'Recipe'], recipeYield: 6 })},${data({ name: 'Jam' })}]}`;
    const page = `<!doctype html><html><head><title>x</title><script type="application/ld+json">{"@type":"WebSite"}</script>
      <script type='application/ld+json'>${graph}</script></head><body><p>3 eggs</p></body></html>`;
    const recipe = read(page);
    expect(recipe.lines).toHaveLength(2);
    expect(recipe.yield?.quantity).toBe(6);
    expect(recipe.questions).toEqual([{ code: 'several-recipes', facts: { names: ['Jam'] } }]);
  });

  test('pastedRecipe(a page without data) reads its text', () => {
    const recipe = read(
      '<h1>Posset</h1><ul><li>600 ml&nbsp;double cream</li><li>150 g <b>caster</b> sugar</li></ul><script>3 eggs</script><h2>Method</h2><p>Boil.</p>',
    );
    expect(recipe.title).toBe('Posset');
    expect(written(recipe).map(([, line]) => line)).toEqual(['600 ml double cream', '150 g caster sugar']);
    expect(recipe.method).toBe('Boil.');
    expect(read('# Posset\nIngredients\n1 l <b>cream</b>\n2 eggs').lines).toHaveLength(2);
  });

  test('pastedRecipe(damaged or foreign data) says so and keeps what was pasted', () => {
    expect(codes(read('{"@type":"Recipe","name":'))).toEqual(['damaged-data']);
    expect(read('{"@type":"Recipe",\n"name":').rest).toEqual(['{"@type":"Recipe",', '"name":']);
    expect(codes(read('{"@type":"Person"}'))).toEqual(['no-recipe-data']);
    expect(codes(read('<script type="application/ld+json">{</script><p>Tart</p>'))).toContain('damaged-data');
    expect(codes(read('{"@type":"Recipe"}'))).toEqual(['no-title', 'no-yield', 'no-lines']);
    expect(read(`${'['.repeat(200_000)}`).questions[0]?.code).toBe('damaged-data');
    expect(read(`${'[{"a":'.repeat(20_000)}1${'}]'.repeat(20_000)}`).lines).toEqual([]);
  });

  test('pastedRecipe(data of the wrong kinds) throws nothing', () => {
    for (const wrong of [null, 3, {}, [], [[['3 eggs']]], { name: 3 }, true]) {
      const fields = { name: wrong, recipeYield: wrong, recipeIngredient: wrong, recipeInstructions: wrong };
      expect(read(data(fields)).lines.length).toBeLessThan(2);
    }
  });
});

/** All that a reading holds, as one text. */
function held(recipe: PastedRecipe): string {
  const lines = recipe.lines.flatMap(({ section, line }) => [section ?? '', line.written]);
  return [recipe.title ?? '', recipe.yield?.written ?? '', ...lines, recipe.method, ...recipe.rest].join('\n');
}

const entry = z.object({
  title: z.string(),
  servings: z.string().nullable(),
  ingredients: z.array(z.object({ section: z.string().nullable(), text: z.string() })),
});

// publicdomainrecipes.com (Unlicense), 110 sweet recipes; they stand with the open data and are not shipped.
const file = openData('recipes/public_domain_recipes_sweet.jsonl');
const recipes =
  file === null
    ? []
    : readFileSync(file, 'utf8')
        .trim()
        .split('\n')
        .map((line) => entry.parse(JSON.parse(line)));

describe('pastedRecipe: real recipes', () => {
  test.skipIf(file === null)('pastedRecipe(each of 110 recipes as text, as data, as a page) loses no line', () => {
    expect(recipes).toHaveLength(110);
    for (const { title, servings, ingredients } of recipes) {
      const said = servings === null ? '' : `Serves ${servings}`;
      const lines = ingredients.map(({ text }) => text.trim()).filter((text) => text !== '');
      const marked = read(
        `# ${title}\n${said}\n## Ingredients\n${lines.map((line) => `- ${line}`).join('\n')}\n## Directions\nBake.`,
      );
      expect([marked.title, marked.method]).toEqual([title.trim(), 'Bake.']);
      for (const line of lines) expect(held(marked)).toContain(line.replace(/:$/, ''));
      const plain = held(read([title, said, ...lines].join('\n')));
      for (const line of lines) expect(plain).toContain(line.replace(/:$/, ''));
      const json = JSON.stringify({ '@type': 'Recipe', name: title, recipeYield: servings, recipeIngredient: lines });
      for (const text of [json, `<script type="application/ld+json">${json}</script>`]) {
        expect(written(read(text)).map(([, line]) => line)).toEqual(lines);
      }
    }
  });

  test.skipIf(file === null)('pastedRecipe(recipes) leaves most lines with an amount certain', () => {
    const lines = recipes.flatMap(
      ({ ingredients }) => read(`Ingredients\n${ingredients.map(({ text }) => text).join('\n')}`).lines,
    );
    const stated = lines.filter(({ line }) => line.quantity !== null);
    expect(stated.length).toBeGreaterThan(550);
    expect(stated.filter(({ line }) => line.certain).length / stated.length).toBeGreaterThan(0.6);
  });
});

describe('pastedRecipe: any text', () => {
  const line = fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: 50 }),
    fc.constantFrom(
      '# Tart',
      '## Filling',
      'For the top:',
      'Serves 4',
      'Makes 1 kg',
      '250 g flour',
      '1. Stir.',
      'salt',
      '- 2 eggs',
      '{',
      '<p>',
      '&amp;',
    ),
  );

  test('pastedRecipe(any lines) throws nothing and loses nothing', () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 12 }), (lines) => {
        const text = lines.join('\n').trim();
        const recipe = read(text);
        for (const question of recipe.questions) expect(recipeQuestionWords(question)).toMatch(/[.?]$/);
        if (/[<&]/.test(text)) return; // a page: what a reader sees of it
        const kept = held(recipe);
        const words = (one: string): string => one.normalize('NFKC').replace(/[^\p{L}\p{N}]/gu, '');
        for (const one of text.split(/\r\n?|\n|\u2028|\u2029/)) expect(words(kept)).toContain(words(one));
      }),
      { numRuns: 600 },
    );
  });

  test('pastedRecipe(any JSON, any bytes) throws nothing', () => {
    fc.assert(
      fc.property(fc.oneof(fc.json(), fc.string({ unit: 'binary', maxLength: 200 })), (text) => {
        expect(read(text).method).toBeTypeOf('string');
        expect(read(`<p>${text}</p>`).method).toBeTypeOf('string');
      }),
      { numRuns: 400 },
    );
  });
});
