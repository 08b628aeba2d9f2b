import type { PastedRecipe, RecipeQuestion } from '../../model/pasted-recipe';
import type { LineStyle } from '../line/plain-amount';
import { typedLine } from '../typed-line';
import { htmlText, looksLikeHtml } from './html-text';
import { yieldIn, yieldSaid } from './yield-said';

type Node = Readonly<Record<string, unknown>>;

const MOST_NODES = 20_000;
const DEEPEST = 8;

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A value as lines of text: data may hold numbers, lists, and pieces of pages. */
function textLines(value: unknown, depth = 0): readonly string[] {
  if (typeof value === 'number') return [String(value)];
  if (Array.isArray(value)) return depth < DEEPEST ? value.flatMap((one) => textLines(one, depth + 1)) : [];
  if (typeof value !== 'string') return [];
  const plain = looksLikeHtml(value) || /&[#\w]+;/.test(value) ? htmlText(value).text : value;
  return plain
    .split(/\r\n?|\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
}

/** Steps and sections of a method, each step a line (schema.org HowToStep, HowToSection, or plain text). */
function methodLines(value: unknown, depth = 0): readonly string[] {
  if (depth > DEEPEST) return [];
  if (Array.isArray(value)) return value.flatMap((one) => methodLines(one, depth + 1));
  if (!isNode(value)) return textLines(value);
  const steps = value.itemListElement ?? value.steps;
  if (steps !== undefined) return [...textLines(value.name), ...methodLines(steps, depth + 1)];
  const text = textLines(value.text ?? value.description);
  return text.length > 0 ? text : textLines(value.name);
}

const isRecipe = (type: unknown): boolean =>
  Array.isArray(type) ? type.some(isRecipe) : typeof type === 'string' && /(?:^|[/:#])Recipe$/.test(type);

/** Every recipe that stands anywhere in some structured data, in its order. */
function recipesIn(data: unknown): readonly Node[] {
  const found: Node[] = [];
  const open: unknown[] = [data];
  for (let seen = 0; open.length > 0 && seen < MOST_NODES; seen += 1) {
    const value = open.pop();
    if (isNode(value) && isRecipe(value['@type'])) found.push(value);
    else if (Array.isArray(value)) open.push(...value.slice(0, MOST_NODES).reverse());
    else if (isNode(value)) open.push(...Object.values(value).slice(0, MOST_NODES).reverse());
  }
  return found;
}

/**
 * The first recipe of some structured data (schema.org Recipe as JSON-LD), or null where there is none.
 * Throws nothing: text that is no JSON is `undefined`.
 */
export function recipeInData(json: string, style: LineStyle): PastedRecipe | null | undefined {
  let data: unknown;
  try {
    data = JSON.parse(json);
  } catch {
    return undefined;
  }
  const [recipe, ...others] = recipesIn(data);
  if (!recipe) return null;
  const [title = null, ...alsoNamed] = textLines(recipe.name);
  const [said = null, ...alsoSaid] = textLines(recipe.recipeYield ?? recipe.yield);
  const ingredients = textLines(recipe.recipeIngredient ?? recipe.ingredients);
  const stated = said === null ? null : (yieldSaid(said, style) ?? yieldIn(said, said, false, style));
  const names = others.flatMap(({ name }) => textLines(name).slice(0, 1));
  const questions: readonly RecipeQuestion[] = [
    ...(others.length > 0 ? [{ code: 'several-recipes' as const, facts: { names } }] : []),
    ...(title === null ? [{ code: 'no-title' as const, facts: {} }] : []),
    ...(stated === null ? [{ code: 'no-yield' as const, facts: {} }] : []),
    ...(ingredients.length === 0 ? [{ code: 'no-lines' as const, facts: {} }] : []),
  ];
  return {
    title,
    yield: stated,
    lines: ingredients.map((written) => ({ section: null, line: typedLine(written, style) })),
    method: methodLines(recipe.recipeInstructions).join('\n'),
    rest: [...alsoNamed, ...alsoSaid.filter((other) => other !== said)],
    questions,
  };
}
