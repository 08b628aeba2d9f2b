import { type ColumnKinds, type ReportFile, reportSheet } from '../format/report-file';
import { PREP } from '../format/words/prep-sheet';
import { REPORT_FILE } from '../format/words/report-file';
import type { PrepSheetAnswer } from './prep-sheet-shape';

type Item = PrepSheetAnswer['items'][number];
type Component = Omit<PrepSheetAnswer['components'][number], 'cautions'> & { readonly cautions: string };
type Ingredient = PrepSheetAnswer['ingredients'][number];
type Work = PrepSheetAnswer['work'][number];

const COMPONENTS: ColumnKinds<Component> = {
  item: 'text',
  unit: 'text',
  needed: 'number',
  held: 'number',
  countedOn: 'date',
  tooOld: 'yesNo',
  make: 'number',
  smallest: 'number',
  batch: 'number',
  batches: 'number',
  leadHours: 'number',
  earliest: 'date',
  minutes: 'minutes',
  grade: 'text',
  cautions: 'text',
};
const ITEMS: ColumnKinds<Item> = {
  item: 'text',
  channel: 'text',
  expected: 'portions',
  days: 'count',
  portions: 'portions',
};
const INGREDIENTS: ColumnKinds<Ingredient> = {
  item: 'text',
  quantity: 'number',
  unit: 'text',
  productGroup: 'text',
  wholes: 'number',
};
const WORK: ColumnKinds<Work> = { grade: 'text', handsOnMinutes: 'minutes', platingMinutes: 'minutes' };

/** The prep sheet as files of rows: what to make first, then what is served, what to take from the store, the work. */
export function prepSheetFile(answer: PrepSheetAnswer): ReportFile {
  const components = answer.components.map((each) => ({ ...each, cautions: each.cautions.join('; ') }));
  return {
    name: 'prep-sheet',
    currency: answer.currency,
    basis: [
      [REPORT_FILE.venue, answer.venue],
      [REPORT_FILE.days, answer.date],
      [PREP.expected, answer.like.join(', ')],
    ],
    issues: answer.issues.map(({ text }) => text),
    sheets: [
      reportSheet('to make', COMPONENTS, components),
      reportSheet('served', ITEMS, answer.items),
      reportSheet('to take', INGREDIENTS, answer.ingredients),
      reportSheet('work', WORK, answer.work),
    ],
  };
}
