import { type ColumnKinds, type ReportFile, reportSheet } from '../format/report-file';
import { AT_STAKE_BASIS } from '../format/words/price-reports';
import type { AtStakeAnswer } from './at-stake-shape';
import { fileBasis } from './file-basis';

const COLUMNS: ColumnKinds<AtStakeAnswer['items'][number]> = {
  name: 'text',
  spend: 'money',
  share: 'share',
  onePercentPerYear: 'money',
  dishes: 'count',
};

const TORNADO: ColumnKinds<AtStakeAnswer['tornado'][number]> = {
  ingredient: 'text',
  unit: 'text',
  lowest: 'money',
  highest: 'money',
  atLowest: 'money',
  atHighest: 'money',
};

/** What is at stake as files of rows; a workbook has what each ingredient's spread is worth beside them. */
export function atStakeFile(answer: AtStakeAnswer): ReportFile {
  const spread = answer.tornado.length === 0 ? [] : [reportSheet('own spread', TORNADO, answer.tornado)];
  return {
    name: 'at-stake',
    currency: answer.currency,
    basis: fileBasis(answer, AT_STAKE_BASIS),
    issues: answer.issues.map(({ text }) => text),
    sheets: [reportSheet(`at stake by ${answer.by}`, COLUMNS, answer.items), ...spread],
  };
}
