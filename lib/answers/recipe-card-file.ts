import { type ColumnKinds, type ReportFile, reportSheet } from '../format/report-file';
import { cardHead } from '../format/words/recipe-card';
import { REPORT_FILE } from '../format/words/report-file';
import type { RecipeCardAnswer } from './recipe-card-shape';

type Line = RecipeCardAnswer['lines'][number];

const LINES: ColumnKinds<Line> = {
  position: 'count',
  item: 'text',
  kind: 'text',
  quantity: 'number',
  unit: 'text',
  as: 'text',
  use: 'text',
  part: 'text',
  choice: 'text',
  sharePct: 'share',
  channel: 'text',
  byProduct: 'yesNo',
  usableYieldPct: 'share',
  taken: 'number',
  takenUnit: 'text',
  note: 'text',
};

/** A recipe card as a file of rows: one a line. */
export function recipeCardFile(answer: RecipeCardAnswer): ReportFile {
  return {
    name: 'recipe-card',
    currency: answer.currency,
    basis: [
      [REPORT_FILE.venue, answer.venue],
      [REPORT_FILE.days, answer.date],
      [REPORT_FILE.costOf, cardHead(answer, answer.locale)[0] ?? answer.item],
    ],
    issues: answer.issues.map(({ text }) => text),
    sheets: [reportSheet('recipe card', LINES, answer.lines)],
  };
}
