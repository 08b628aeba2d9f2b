/**
 * A sentence before it is set in type: plain text, figures (which must not break over a line) and names of things (set in italic).
 */
export type Phrase = readonly Part[];
export type Part = string | { readonly figure: string } | { readonly name: string };

export function figurePart(text: string): Part {
  return { figure: text };
}

export function namePart(text: string): Part {
  return { name: text };
}

/** The same phrase as the beginning of a sentence. */
export function capitalised([first, ...rest]: Phrase): Phrase {
  if (first === undefined) return [];
  const up = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
  return [typeof first === 'string' ? up(first) : first, ...rest];
}

/** The same sentence as bare text, for names of controls and for copying. */
export function plainText(phrase: Phrase): string {
  return phrase.map((part) => (typeof part === 'string' ? part : 'figure' in part ? part.figure : part.name)).join('');
}

/** A text with a capital letter first, as sentences begin. */
export function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
