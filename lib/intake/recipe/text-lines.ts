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

/** What a heading begins: a part of the recipe and, where it is said, of which group: "Ingredients for the sauce". */
export interface PartBegun {
  readonly part: keyof typeof HEADINGS;
  readonly group: string | null;
}

/** Which part of a recipe a heading begins: "## Ingredients", "Method:". Null for any other line. */
export function partBegun(written: string): PartBegun | null {
  const text = plainLine(written)
    .replace(/^#+ ?/, '')
    .replace(/ ?:$/, '')
    .replace(/ \([^)]*\)$/, '');
  const [head = '', group = null] = /^(ingredients|method|directions|instructions) (for .{1,50})$/i
    .exec(text)
    ?.slice(1) ?? [text];
  for (const part of ['ingredients', 'method', 'notes'] as const) if (HEADINGS[part].test(head)) return { part, group };
  return null;
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

const DOES =
  /^(?:add|arrange|bake|beat|blend|boil|bring|chill|churn|combine|cook|cool|cover|cut|dissolve|divide|drain|fold|freeze|garnish|grease|heat|knead|leave|let|make|melt|mix|place|pour|preheat|put|reduce|remove|roll|rub|separate|serve|sift|simmer|soak|spoon|spread|sprinkle|stir|strain|take|temper|transfer|turn|warm|whip|whisk)\b(?: \S+){2}/i;

const LONG = 90;
const SENTENCE = 45;

/** Whether a line looks like a step rather than a thing with its amount: numbered, long, a sentence, or what somebody does. */
export function looksLikeMethod(written: string): boolean {
  const text = plainLine(written);
  if (STEP.test(text) || DOES.test(text)) return true;
  const sentence = text.length > SENTENCE && /[.!]$/.test(text) && !/^[\d~(]/.test(text);
  return text.length > LONG || sentence;
}

/** Whether a line looks like an ingredient with its amount: "a note" is none, "a pinch of salt" is. */
export function looksLikeIngredient(written: string, style: LineStyle): boolean {
  if (looksLikeMethod(written)) return false;
  const line = typedLine(written, style);
  return line.quantity !== null && (line.unit !== 'each' || /\d/.test(plainLine(written)));
}
