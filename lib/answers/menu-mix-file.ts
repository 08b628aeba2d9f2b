import { type ColumnKinds, type ReportFile, reportSheet } from '../format/report-file';
import { mixBasis } from '../format/words/menu-mix';
import { fileBasis } from './file-basis';
import type { MenuMixAnswer } from './menu-mix-shape';

const COLUMNS: ColumnKinds<MenuMixAnswer['items'][number]> = {
  item: 'text',
  section: 'text',
  sold: 'portions',
  comps: 'portions',
  share: 'share',
  expected: 'portions',
  daysOnSale: 'count',
  netPrice: 'money',
  revenue: 'money',
  plateCost: 'money',
  floor: 'money',
  linesMissing: 'count',
  linesTotal: 'count',
  estimated: 'yesNo',
  foodCostPct: 'share',
  margin: 'money',
  contribution: 'money',
  class: 'text',
  settled: 'yesNo',
};

/** The mix as files of rows, one an item; how the resamples split stands in the JSON only. */
export function menuMixFile(answer: MenuMixAnswer): ReportFile {
  const { currency, locale } = answer;
  return {
    name: 'menu-mix',
    currency,
    basis: fileBasis(answer, mixBasis(answer, { locale, running: false })),
    issues: answer.issues.map(({ text }) => text),
    sheets: [reportSheet('menu mix', COLUMNS, answer.items)],
  };
}
