import type { PastedRecipe, RecipeQuestion } from '../model/pasted-recipe';
import type { LineStyle } from './line/plain-amount';
import { htmlText, looksLikeHtml } from './recipe/html-text';
import { recipeInData } from './recipe/recipe-data';
import { recipeInText } from './recipe/recipe-text';

/** Far above any recipe: a pasted book is refused whole. */
const PASTE_LIMIT = 500_000;

const nothing = (...questions: readonly RecipeQuestion[]): PastedRecipe => ({
  title: null,
  yield: null,
  lines: [],
  method: '',
  rest: [],
  questions,
});

const withQuestion = (recipe: PastedRecipe, question: RecipeQuestion): PastedRecipe => ({
  ...recipe,
  questions: [question, ...recipe.questions],
});

/**
 * A recipe as it was pasted, for a cook to confirm: structured data (schema.org Recipe as JSON-LD) by itself or inside a page, else plain
 * text with or without headings. Title, yield and every ingredient line are read with their questions; what is neither line nor method is
 * kept in `rest`. Any text gives a recipe and nothing throws.
 */
export function pastedRecipe(pasted: string, style: LineStyle): PastedRecipe {
  const text = pasted.replace(/^\uFEFF/, '').trim();
  if (text.length > PASTE_LIMIT) return nothing({ code: 'paste-too-long', facts: { limit: PASTE_LIMIT } });
  if (/^[[{]\s*["{[\]}]/.test(text)) return inData(text, style);
  if (!looksLikeHtml(text)) return recipeInText(text, style);
  const page = htmlText(text);
  const read = page.data.map((json) => recipeInData(json, style));
  const recipe = read.find((one) => one !== null && one !== undefined);
  if (recipe) return recipe;
  const seen = recipeInText(page.text, style);
  return read.includes(undefined) ? withQuestion(seen, { code: 'damaged-data', facts: {} }) : seen;
}

function inData(text: string, style: LineStyle): PastedRecipe {
  const recipe = recipeInData(text, style);
  if (recipe) return recipe;
  const code = recipe === null ? 'no-recipe-data' : 'damaged-data';
  return withQuestion({ ...nothing(), rest: text.split('\n') }, { code, facts: {} });
}
