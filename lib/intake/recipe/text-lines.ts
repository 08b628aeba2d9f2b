import type { LineStyle } from '../line/plain-amount';
import { plainLine } from '../line/plain-line';
import { typedLine } from '../typed-line';

const HEADINGS = {
  ingredients: /^(?:ingredients?(?: list)?|(?:what )?you(?:'ll| will)? need|shopping list)$/i,
  method:
    /^(?:the )?(?:method|directions?|instructions?|preparation|steps?|procedure|how to (?:make|prepare)(?: it| them)?|making it)$/i,
  notes:
    /^(?:(?:cook'?s |recipe )?notes?|tips?|storage|nutrition(?:al)?(?: (?:facts|values?|information))?|equipment|contributors?|source|to serve)$/i,
} as const;

/** Which part of a recipe a heading begins: "## Ingredients", "Method:". Null for any other line. */
export function partBegun(written: string): keyof typeof HEADINGS | null {
  const text = plainLine(written)
    .replace(/^#+ ?/, '')
    .replace(/ ?:$/, '')
    .replace(/ \(.*\)$/, '');
  if (HEADINGS.ingredients.test(text)) return 'ingredients';
  if (HEADINGS.method.test(text)) return 'method';
  return HEADINGS.notes.test(text) ? 'notes' : null;
}

/** The title that is marked as one: "# Lemon tart". */
export function markedTitle(written: string): string | null {
  return /^# (.+)$/.exec(written.trim())?.[1]?.trim() ?? null;
}

const STEP = /^(?:step )?\d{1,2}[.):] ?(?=\p{L})/iu;

/** The name of a group of lines: "For the pastry:", "### Filling". Null for any other line. */
export function groupNamed(written: string, style: LineStyle): string | null {
  const text = plainLine(written);
  const heading =
    /^#{2,6} (.+)$/.exec(text)?.[1] ?? /^(.{1,60}):$/.exec(text)?.[1] ?? /^(for the .{1,50})$/i.exec(text)?.[1];
  if (heading === undefined || STEP.test(heading)) return null;
  return typedLine(heading, style).quantity === null ? heading.replace(/ ?:$/, '').trim() : null;
}

const LONG = 90;
const SENTENCE = 45;

/** Whether a line looks like a step rather than a thing with its amount: numbered, long, or a sentence. */
export function looksLikeMethod(written: string): boolean {
  const text = plainLine(written);
  if (STEP.test(text)) return true;
  const sentence = text.length > SENTENCE && /[.!]$/.test(text) && !/^[\d~(]/.test(text);
  return text.length > LONG || sentence;
}

/** Whether a line looks like an ingredient with its amount: "a note" is none, "a pinch of salt" is. */
export function looksLikeIngredient(written: string, style: LineStyle): boolean {
  if (looksLikeMethod(written)) return false;
  const line = typedLine(written, style);
  return line.quantity !== null && (line.unit !== 'each' || /\d/.test(plainLine(written)));
}
