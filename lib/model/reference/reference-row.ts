/**
 * One food of the reference: our name; number and description in the source; per cent that is thrown away of what is bought (null: not
 * stated) and what that is; a US measure with the grams that fill it and the source's words for it (null: none is stated); other names.
 */
export type ReferenceRow = readonly [
  name: string,
  ndb: string,
  description: string,
  wastePct: number | null,
  waste: string | null,
  weighed: readonly [unit: 'us cup' | 'us fl oz' | 'us tbsp' | 'us tsp', grams: number, said: string] | null,
  also: readonly string[],
];
