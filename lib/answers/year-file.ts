import { type ColumnKinds, type ReportFile, reportSheet } from '../format/report-file';
import { yearBasis } from '../format/words/year';
import { fileBasis } from './file-basis';
import type { YearAnswer, YearPeriodAnswer } from './year-shape';

type Own = Omit<YearPeriodAnswer, 'yearBefore' | 'menuChanges'>;

/** A period with the same one of the year before beside it. */
type Row = Own & {
  readonly yearBefore: string | null;
  readonly yearBeforeSold: number | null;
  readonly yearBeforeContribution: string | null;
  readonly yearBeforeFoodCostPct: number | null;
  readonly yearBeforeMargin: string | null;
};

const COLUMNS: ColumnKinds<Row> = {
  period: 'text',
  from: 'date',
  to: 'date',
  tradingDays: 'count',
  sold: 'portions',
  comps: 'portions',
  revenue: 'money',
  contribution: 'money',
  foodCostPct: 'share',
  margin: 'money',
  coverage: 'share',
  provisional: 'yesNo',
  closed: 'yesNo',
  running: 'yesNo',
  yearBefore: 'text',
  yearBeforeSold: 'portions',
  yearBeforeContribution: 'money',
  yearBeforeFoodCostPct: 'share',
  yearBeforeMargin: 'money',
};

type Change = Omit<YearPeriodAnswer['menuChanges'][number], 'channels'> & { readonly channel: string };

const CHANGES: ColumnKinds<Change> = {
  day: 'date',
  item: 'text',
  kind: 'text',
  price: 'money',
  priceBefore: 'money',
  channel: 'text',
};

/** The year as files of rows: one a period; a workbook has the changes of the menu beside them. */
export function yearFile(answer: YearAnswer): ReportFile {
  const changes = answer.periods.flatMap(({ menuChanges }) =>
    menuChanges.flatMap(({ channels, ...same }) => channels.map((channel) => ({ ...same, channel }))),
  );
  const changed = changes.length === 0 ? [] : [reportSheet('menu changes', CHANGES, changes)];
  return {
    name: 'year',
    currency: answer.currency,
    basis: fileBasis(answer, yearBasis(answer)),
    issues: answer.issues.map(({ text }) => text),
    sheets: [reportSheet('year', COLUMNS, answer.periods.map(row)), ...changed],
  };
}

function row({ yearBefore, menuChanges: _, ...own }: YearPeriodAnswer): Row {
  return {
    ...own,
    yearBefore: yearBefore?.period ?? null,
    yearBeforeSold: yearBefore?.sold ?? null,
    yearBeforeContribution: yearBefore?.contribution ?? null,
    yearBeforeFoodCostPct: yearBefore?.foodCostPct ?? null,
    yearBeforeMargin: yearBefore?.margin ?? null,
  };
}
