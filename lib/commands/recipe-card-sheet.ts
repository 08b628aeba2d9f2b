import type { RecipeCardAnswer } from '../answers/recipe-card-shape';
import { benchAmount } from '../format/bench-amount';
import { textTable } from '../format/text-table';
import { BENCH_CAUTION } from '../format/words/prep-sheet';
import { CARD, cardHead, cardLineName, inItWords } from '../format/words/recipe-card';
import { issueLines } from './plain-tables';

/** A recipe card for a terminal or a printer. */
export function recipeCardSheet(answer: RecipeCardAnswer): string {
  const { locale } = answer;
  const rows = answer.lines.map((line) => [
    benchAmount(line.quantity, line.unit, locale),
    cardLineName(line, locale),
    line.kind !== 'ingredient' || line.taken === null ? '' : benchAmount(line.taken, line.takenUnit, locale),
    line.note ?? '',
  ]);
  const columns = [
    { head: CARD.quantity, side: 'right' as const },
    { head: CARD.item, side: 'left' as const },
    { head: CARD.take, side: 'right' as const },
    { head: CARD.note, side: 'left' as const },
  ];
  const foot = [...inItWords(answer.whatsInIt), BENCH_CAUTION];
  return `${cardHead(answer, locale).join('\n')}\n\n${textTable(columns, rows)}\n${foot.join('\n')}\n${issueLines(answer.issues)}`;
}
