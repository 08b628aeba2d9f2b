import type { PastedRecipe, PastedYield, RecipeQuestion } from '../../model/pasted-recipe';
import { withoutBrackets } from '../line/brackets';
import type { LineStyle } from '../line/plain-amount';
import { plainLine } from '../line/plain-line';
import { typedLine } from '../typed-line';
import { groupNamed, looksLikeIngredient, looksLikeMethod, markedTitle, partBegun } from './text-lines';
import { yieldSaid } from './yield-said';

/** What has been read so far; `part` is where the reading stands. */
interface Reading {
  part: 'head' | 'ingredients' | 'method' | 'notes';
  title: string | null;
  titleMarked: boolean;
  yield: PastedYield | null;
  section: { name: string; used: boolean } | null;
  byLooks: boolean;
  readonly lines: PastedRecipe['lines'][number][];
  readonly method: string[];
  readonly rest: string[];
}

function leaveSection(reading: Reading): void {
  if (reading.section && !reading.section.used) reading.rest.push(reading.section.name);
  reading.section = null;
}

function takeIngredient(reading: Reading, written: string, style: LineStyle): void {
  if (reading.section) reading.section.used = true;
  reading.lines.push({ section: reading.section?.name ?? null, line: typedLine(written, style) });
}

function takeHead(reading: Reading, written: string, style: LineStyle): void {
  const marked = markedTitle(written);
  if (marked !== null && !reading.titleMarked) {
    if (reading.title !== null) reading.rest.push(reading.title);
    reading.title = marked;
    reading.titleMarked = true;
  } else if (reading.title === null && reading.lines.length === 0 && !looksLikeIngredient(written, style)) {
    reading.title = written;
  } else if (looksLikeIngredient(written, style)) {
    reading.part = 'ingredients';
    reading.byLooks = true;
    takeIngredient(reading, written, style);
  } else if (groupNamed(written, style) !== null) {
    leaveSection(reading);
    reading.section = { name: groupNamed(written, style) ?? written, used: false };
  } else reading.rest.push(written);
}

function takeInIngredients(reading: Reading, written: string, style: LineStyle): void {
  const group = groupNamed(written, style);
  if (group !== null) {
    leaveSection(reading);
    reading.section = { name: group, used: false };
  } else if (looksLikeMethod(written) && reading.lines.length > 0 && reading.byLooks) {
    reading.part = 'method';
    reading.method.push(written);
  } else takeIngredient(reading, written, style);
}

function take(reading: Reading, written: string, style: LineStyle): void {
  const begun = partBegun(written);
  if (begun !== null) {
    leaveSection(reading);
    reading.part = begun.part;
    if (begun.part === 'ingredients') reading.byLooks = false;
    if (begun.group === null) return;
    if (begun.part === 'ingredients') reading.section = { name: begun.group, used: false };
    else (begun.part === 'method' ? reading.method : reading.rest).push(begun.group);
    return;
  }
  const stated = reading.part === 'method' || reading.yield ? null : yieldSaid(written, style);
  if (stated) reading.yield = stated;
  else if (reading.part === 'head') takeHead(reading, written, style);
  else if (reading.part === 'ingredients') takeInIngredients(reading, written, style);
  else if (reading.part === 'method') reading.method.push(written);
  else reading.rest.push(written);
}

/** "Mousse (serves 6)" states the yield in its title. */
function yieldInTitle(title: string | null, style: LineStyle): PastedYield | null {
  const [inside = ''] = withoutBrackets(title ?? '').inside;
  return yieldSaid(inside, style);
}

/** A recipe pasted as plain text or Markdown: read line by line; headings, where there are some, say where its parts begin. */
export function recipeInText(text: string, style: LineStyle): PastedRecipe {
  const reading: Reading = {
    part: 'head',
    title: null,
    titleMarked: false,
    yield: null,
    section: null,
    byLooks: false,
    lines: [],
    method: [],
    rest: [],
  };
  const written = text.split(/\r\n?|\n|\u2028|\u2029/).map((line) => line.trim());
  for (const line of written) if (line !== '') take(reading, line, style);
  leaveSection(reading);
  const { title, lines, method, rest } = reading;
  const stated = reading.yield ?? yieldInTitle(title, style);
  const questions: readonly RecipeQuestion[] = [
    ...(plainLine(text) === '' ? [{ code: 'nothing-pasted' as const, facts: {} }] : []),
    ...(title === null ? [{ code: 'no-title' as const, facts: {} }] : []),
    ...(title !== null && !reading.titleMarked ? [{ code: 'title-unmarked' as const, facts: { written: title } }] : []),
    ...(stated ? [] : [{ code: 'no-yield' as const, facts: {} }]),
    ...(lines.length === 0 ? [{ code: 'no-lines' as const, facts: {} }] : []),
    ...(reading.byLooks ? [{ code: 'told-by-looks' as const, facts: {} }] : []),
  ];
  return { title, yield: stated, lines, method: method.join('\n'), rest, questions };
}
