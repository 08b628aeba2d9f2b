import { type LineStyle, plainAmount } from './plain-amount';
import { type SpokenAmount, spokenAmount } from './spoken-amount';

const NUMBER =
  /(?<![\p{L}\p{N}./-])(?:\d[\d.,/ -]*\d|\d|(?<!and )half\b|one\b|a (?=pinch|few|handful|splash|dash|knob))/giu;
const NEARLY = /(?:~ ?|\b(?:about|around|approx(?:imately)?\.?|roughly|circa|ca\.?) )$/i;

/** An amount that stands after the name, and the words before it: "butter, 100 g", "Lemon juice 1 tbsp", "Eggs: 5". */
export function laterAmount(
  text: string,
  style: LineStyle,
): { readonly before: string; readonly amount: SpokenAmount; readonly words: string } | null {
  for (const found of text.matchAll(NUMBER)) {
    const lead = NEARLY.exec(text.slice(0, found.index))?.[0].length ?? 0;
    const from = text.slice(found.index - lead);
    const amount = spokenAmount(from, style);
    if (!amount) continue;
    const before = text.slice(0, found.index - lead);
    const ends = /^(?:$|[,;.])/.test(amount.rest);
    if (plainAmount(text.slice(found.index), style) !== null || (ends && /\p{L}[,:]? $/u.test(before))) {
      return { before: before.replace(/[\s,:;|-]+$/, ''), amount, words: from };
    }
  }
  return null;
}
