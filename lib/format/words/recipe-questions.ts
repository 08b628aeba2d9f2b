import type { RecipeQuestion, RecipeQuestionCode } from '../../model/pasted-recipe';

type Facts = RecipeQuestion['facts'];

/** What is asked about a pasted recipe as a whole. */
const SENTENCES: Readonly<Record<RecipeQuestionCode, (facts: Facts) => string>> = {
  'nothing-pasted': () => 'There is nothing here yet. Paste a recipe: its name, what goes in, and how it is made.',
  'paste-too-long': ({ limit }) =>
    `This is longer than ${limit} characters. Paste one recipe at a time; nothing was read of it.`,
  'damaged-data': () =>
    'The recipe’s data cannot be read, a part of it is missing or out of place. Paste the recipe as text instead.',
  'no-recipe-data': () => 'There is data here, but no recipe in it. Paste the recipe as text instead.',
  'several-recipes': ({ names }) => {
    const others = typeof names === 'object' && names.length > 0 ? ` The others are ${names.join(', ')}.` : '';
    return `There is more than one recipe here, and the first was read.${others} Paste each by itself.`;
  },
  'no-title': () => 'What is it called?',
  'title-unmarked': ({ written }) => `“${written}” is taken for its name. Is it?`,
  'no-yield': () => 'How much does it make? Weigh or count what one batch gives.',
  'no-lines': () => 'No ingredients were found. Put each on a line of its own, below the word Ingredients.',
  'told-by-looks': () =>
    'Nothing says where the ingredients end and the method begins, so they were told apart by their looks. Check both.',
};

/** The question in words. */
export function recipeQuestionWords({ code, facts }: RecipeQuestion): string {
  return SENTENCES[code](facts);
}
