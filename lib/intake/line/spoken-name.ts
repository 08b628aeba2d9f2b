/** What is said of the thing itself, in one stretch of words without commas. */
export interface SpokenName {
  readonly name: string;
  readonly use: readonly string[];
  readonly part: string | null;
  readonly preparation: string | null;
  readonly note: string | null;
  readonly alternatives: readonly string[];
  readonly optional: boolean;
  readonly more: string | null;
  readonly several: boolean;
  readonly perPortion: string | null;
}

const PREPARED =
  'beaten|chopped|crumbled|crushed|cubed|cut|diced|drained|grated|halved|juiced|mashed|melted|minced|peeled|pitted|quartered|rinsed|scraped|shredded|sieved|sifted|sliced|softened|split|squeezed|strained|toasted|washed|zested';
const MANNER = 'finely|roughly|thinly|coarsely|freshly|very|lightly';
const BEFORE = new RegExp(`^((?:(?:${MANNER}) )*(?:${PREPARED})(?:,? (?:and )?(?:${PREPARED}))*) (?=\\p{L})`, 'iu');
const AFTER = new RegExp(`(?<=\\p{L}.*) ((?:(?:${MANNER}) )*(?:${PREPARED})\\b.*)$`, 'iu');
const PURPOSE =
  /(?<=\p{L}.*) ((?:for|to (?:taste|serve|garnish|finish|decorate|dust|roll)|as (?:needed|required)|if (?:needed|desired))\b.*)$/iu;
const MORE = /(?:^|,? )((?:plus|\+|and) ?(?:more|extra|some|a little)\b.*|\+ .*|plus .*)$/i;
const OPTIONAL = /,? ?\b(?:optional(?:ly)?)\b/i;
const ALTERNATIVE = / (?:or|and\/or) | ?\/ ?(?=\p{L})/iu;
const USES: Readonly<Record<string, string>> = {
  zest: 'zest',
  zested: 'zest',
  juice: 'juice',
  juiced: 'juice',
  rind: 'zest',
  peel: 'peel',
  flesh: 'flesh',
  pulp: 'pulp',
};
const USE_WORD = /\b(zested|zest|juiced|juice|rind|peel|flesh|pulp)\b/gi;
const USE_ALONE =
  /^(?:(?:zested|zest|juiced|juice|rind|peel|flesh|pulp|finely|coarsely|freshly|grated|pared|squeezed|strained|only|and|&),? ?)+$/i;
const USE_OF =
  /^(?:(?:finely|freshly|coarsely) )?(?:(?:grated|squeezed|pared|strained) )?((?:zest|juice|rind|peel|flesh|pulp)(?:(?:,? (?:and|&) |, ?)(?:zest|juice|rind|peel|flesh|pulp))*)(?: (?:of|from)| (?=\d)) ?(.+)$/i;
const PARTS: Readonly<Record<string, string>> = { yolk: 'yolk', white: 'white', seed: 'seeds', husk: 'husk' };
const PART_OF = /^(yolk|white|seed|husk)s? (?:of|from) (.+)$/i;
const EGG_PART = /^(?:(.*\b)?eggs?[ -])(yolk|white)s?$|^(yolk)s?$|^(white)s$/i;
const PER = / ((?:per|for each) \S.*|a (?:person|serving|portion|guest|head|cover|plate))$/i;

/** The uses that words speak of which say nothing else: "zested and juiced", not "juice reserved". Rind is taken as zest is. */
export function usesIn(words: string): readonly string[] {
  if (!USE_ALONE.test(words)) return [];
  return [...new Set([...words.matchAll(USE_WORD)].flatMap(([word]) => USES[word.toLowerCase()] ?? []))];
}

/** The part that words speak of which say nothing else: "seeds only", "yolks". */
export function partIn(words: string): string | null {
  const part = /^(yolk|white|seed|husk)s?(?: only)?$/i.exec(words)?.[1];
  return part === undefined ? null : (PARTS[part.toLowerCase()] ?? null);
}

/** "zest of 4 lemons": the uses or the part, and what it is taken from; null where it is not said so. */
export function takenFrom(
  text: string,
): { readonly use: readonly string[]; readonly part: string | null; readonly from: string } | null {
  const use = USE_OF.exec(text);
  if (use) return { use: usesIn(use[1] ?? ''), part: null, from: use[2] ?? '' };
  const part = PART_OF.exec(text);
  return part ? { use: [], part: PARTS[(part[1] ?? '').toLowerCase()] ?? null, from: part[2] ?? '' } : null;
}

/** Takes what a pattern finds out of a text. */
function taken(text: string, pattern: RegExp): { readonly text: string; readonly found: string | null } {
  const found = pattern.exec(text);
  if (!found) return { text, found: null };
  return { text: text.replace(found[0], ' ').replace(/\s+/g, ' ').trim(), found: (found[1] ?? found[0]).trim() };
}

const joined = (words: readonly (string | null)[]): string | null =>
  words.filter((word) => word !== null).join(', ') || null;

/** The name with its part or use told apart: "egg yolks" is the yolk of an egg, "lemon zest" the zest of a lemon. */
function partOrUse(name: string): Pick<SpokenName, 'name' | 'use' | 'part'> {
  const egg = EGG_PART.exec(name);
  if (egg)
    return {
      name: `${egg[1] ?? ''}egg`,
      use: [],
      part: PARTS[(egg[2] ?? egg[3] ?? egg[4] ?? '').toLowerCase()] ?? null,
    };
  const zest = /^(.+) zest$/i.exec(name);
  return zest ? { name: zest[1] ?? name, use: ['zest'], part: null } : { name, use: [], part: null };
}

/** Reads what a thing is called, after its amount and up to the first comma. */
export function spokenName(text: string): SpokenName {
  const optional = taken(text, OPTIONAL);
  const more = taken(optional.text, MORE);
  const per = taken(more.text, PER);
  const purpose = taken(per.text, PURPOSE);
  const before = taken(purpose.text, BEFORE);
  const after = taken(before.text, AFTER);
  const from = takenFrom(after.text);
  const [first = '', ...alternatives] = (from?.from ?? after.text).split(ALTERNATIVE).map(trimmed);
  const told = from ? { name: first, use: from.use, part: from.part } : partOrUse(first);
  return {
    ...told,
    preparation: joined([before.found, after.found]),
    note: purpose.found,
    alternatives: alternatives.filter((other) => other !== ''),
    optional: optional.found !== null,
    more: more.found,
    perPortion: per.found,
    several: / (?:and|&) /i.test(told.name) && !/^half and half$/i.test(told.name),
  };
}

/** A name without the marks and the "of" around it. */
export function trimmed(name: string): string {
  return name
    .replace(/^(?:of\b|[\s.,;:*"“”!?|=-])+/i, '')
    .replace(/[\s.,;:*"“”!?|=-]+$/, '')
    .trim();
}
