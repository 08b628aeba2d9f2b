import { type LineQuestion, lineQuestion } from '../../model/line-question';
import { partIn, trimmed, usesIn } from './spoken-name';

/** What the words in brackets and after the commas say, gathered. */
export interface Remarks {
  readonly use: readonly string[];
  readonly part: readonly string[];
  readonly preparation: readonly string[];
  readonly notes: readonly string[];
  readonly alternatives: readonly string[];
  readonly questions: readonly LineQuestion[];
}

export const NO_REMARKS: Remarks = { use: [], part: [], preparation: [], notes: [], alternatives: [], questions: [] };

export function together(remarks: readonly Remarks[]): Remarks {
  return {
    use: remarks.flatMap(({ use }) => use),
    part: remarks.flatMap(({ part }) => part),
    preparation: remarks.flatMap(({ preparation }) => preparation),
    notes: remarks.flatMap(({ notes }) => notes),
    alternatives: remarks.flatMap(({ alternatives }) => alternatives),
    questions: remarks.flatMap(({ questions }) => questions),
  };
}

const OR = /^(?:and\/or|or)\b ?/i;
const MORE = /^(?:plus\b|\+|and (?:more|extra|some)\b)/i;
const LOOSE = /\b(?:or more|or less|or so|to taste|as needed)\b/i;
const OPTIONAL = /\boptional(?:ly)?\b/i;
// A word of what is done to food, or of the state it is in. Anything else after a comma may be another thing.
const STATE =
  /\p{L}{2}ed\b|\b(?:beaten|cut|split|ground|fresh|frozen|cold|warm|hot|cool|soft|ripe|room temperature|broken|torn|drawn|halves|raw|stiff|very|dry|thin|fine|plain|whole|at|for|to)\b/iu;

function questionsOf(words: string): LineQuestion[] {
  return [
    ...(OPTIONAL.test(words) ? [lineQuestion('optional')] : []),
    ...(MORE.test(words) ? [lineQuestion('and-more', { written: words })] : []),
    ...(LOOSE.test(words) ? [lineQuestion('approximate', { word: words })] : []),
  ];
}

/** Words in brackets: a note, unless they offer something else or open a question. */
export function bracketRemark(text: string): Remarks {
  const words = trimmed(text);
  if (words === '') return NO_REMARKS;
  if (OR.test(words) && !LOOSE.test(words)) return { ...NO_REMARKS, alternatives: [words.replace(OR, '')] };
  const use = usesIn(words);
  if (use.length > 0) return { ...NO_REMARKS, use, notes: [words] };
  const part = partIn(words);
  if (part !== null) return { ...NO_REMARKS, part: [part], notes: [words] };
  const notes = /^optional$/i.test(words) ? [] : [words];
  return { ...NO_REMARKS, notes, questions: questionsOf(words) };
}

/** Words after a comma: a use (zested), what is done to the thing (softened), another choice, or something to ask about. */
export function tailRemark(text: string): Remarks {
  const words = trimmed(text);
  if (words === '') return NO_REMARKS;
  const questions = questionsOf(words);
  const use = usesIn(words);
  if (use.length > 0) return { ...NO_REMARKS, use, notes: [words], questions };
  const part = partIn(words);
  if (part !== null) return { ...NO_REMARKS, part: [part], notes: [words] };
  if (OR.test(words) && !LOOSE.test(words)) return { ...NO_REMARKS, alternatives: [words.replace(OR, '')] };
  if (/^optional$/i.test(words)) return { ...NO_REMARKS, questions };
  if (questions.length > 0) return { ...NO_REMARKS, notes: [words], questions };
  if (STATE.test(words)) return { ...NO_REMARKS, preparation: [words] };
  if (/ or /i.test(words)) return { ...NO_REMARKS, alternatives: words.split(/ or /i) };
  return { ...NO_REMARKS, notes: [words], questions: [lineQuestion('two-things', { written: words })] };
}
