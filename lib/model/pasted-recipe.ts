import type { LineQuestion, TypedLine } from './line-question';

/** What is not certain about a pasted recipe as a whole; its lines and its yield have questions of their own. */
export const RECIPE_QUESTIONS = [
  'nothing-pasted',
  'paste-too-long', // facts: limit (characters)
  'damaged-data', // it looks like structured data and cannot be read as such
  'no-recipe-data', // structured data without a recipe
  'several-recipes', // only the first is read. facts: names[]
  'no-title',
  'title-unmarked', // the first line is taken. facts: written
  'no-yield',
  'no-lines',
  'told-by-looks', // no heading says where ingredients or method begin
] as const;

export type RecipeQuestionCode = (typeof RECIPE_QUESTIONS)[number];

export interface RecipeQuestion {
  readonly code: RecipeQuestionCode;
  readonly facts: Readonly<Record<string, string | number | readonly string[]>>;
}

/** What one batch gives, as it was stated: "Serves 4-6", "Makes 12 tarts", "1 kg". */
export interface PastedYield {
  readonly written: string;
  /** Above zero; the lower end of a range; null where no number is stated. */
  readonly quantity: number | null;
  readonly upTo: number | null;
  /** As in TypedLine; "each" for portions and for things that are counted. */
  readonly unit: string | null;
  /** What is counted: portions, tarts; null where it is weighed or not said. */
  readonly of: string | null;
  readonly questions: readonly LineQuestion[];
}

/** A recipe as it was pasted, for a cook to confirm line by line. Nothing of the text is lost. */
export interface PastedRecipe {
  readonly title: string | null;
  readonly yield: PastedYield | null;
  readonly lines: readonly { readonly section: string | null; readonly line: TypedLine }[];
  /** The method as text, a step or a paragraph to a line; '' where there is none. */
  readonly method: string;
  /** Lines that are neither: notes, times, whatever else stood there. */
  readonly rest: readonly string[];
  readonly questions: readonly RecipeQuestion[];
}
