import { type ColumnKinds, type ReportFile, reportSheet } from '../format/report-file';
import { WEEK_BASIS } from '../format/words/week';
import { fileBasis } from './file-basis';
import type { WeekAnswer } from './week-shape';

type Day = WeekAnswer['days'][number];

interface Row {
  readonly day: string;
  readonly covers: number | null;
  readonly spendPerCover: string | null;
  readonly sold: number;
  readonly contribution: string | null;
  readonly usualCovers: number | null;
  readonly usualSpendPerCover: string | null;
  readonly usualSold: number | null;
  readonly usualContribution: string | null;
  readonly yearBeforeCovers: number | null;
  readonly yearBeforeSpendPerCover: string | null;
  readonly yearBeforeSold: number | null;
  readonly yearBeforeContribution: string | null;
}

const COLUMNS: ColumnKinds<Row> = {
  day: 'date',
  covers: 'count',
  spendPerCover: 'money',
  sold: 'portions',
  contribution: 'money',
  usualCovers: 'count',
  usualSpendPerCover: 'money',
  usualSold: 'portions',
  usualContribution: 'money',
  yearBeforeCovers: 'count',
  yearBeforeSpendPerCover: 'money',
  yearBeforeSold: 'portions',
  yearBeforeContribution: 'money',
};

const WEEKS: ColumnKinds<{ readonly which: string } & WeekAnswer['week']> = {
  which: 'text',
  tradingDays: 'count',
  covers: 'count',
  spendPerCover: 'money',
  sold: 'portions',
  revenue: 'money',
  contribution: 'money',
  foodCostPct: 'share',
  coverage: 'share',
  provisional: 'yesNo',
};

const UNSOLD: ColumnKinds<WeekAnswer['unsold'][number]> = {
  item: 'text',
  section: 'text',
  sold: 'portions',
  daysOnSale: 'count',
  daysWithoutSale: 'count',
};

/** The week as files of rows: one a day; a workbook has the weeks it is held against and what did not sell beside them. */
export function weekFile(answer: WeekAnswer): ReportFile {
  const { before, yearBefore, unsold } = answer;
  const weeks = [
    { which: answer.month, ...answer.week },
    ...(before === null ? [] : [meanOf(before)]),
    ...(yearBefore === null ? [] : [weekBefore(yearBefore)]),
  ];
  return {
    name: 'week',
    currency: answer.currency,
    basis: fileBasis(answer, WEEK_BASIS),
    issues: answer.issues.map(({ text }) => text),
    sheets: [
      reportSheet('week', COLUMNS, answer.days.map(row)),
      reportSheet('weeks', WEEKS, weeks),
      ...(unsold.length === 0 ? [] : [reportSheet('on sale without selling', UNSOLD, unsold)]),
    ],
  };
}

function meanOf({ weeks, ...figures }: NonNullable<WeekAnswer['before']>) {
  return { which: `mean of the ${weeks} before`, ...figures };
}

function weekBefore({ month, ...figures }: NonNullable<WeekAnswer['yearBefore']>) {
  return { which: month, ...figures };
}

function row({ day, covers, spendPerCover, sold, contribution, usual, yearBefore }: Day): Row {
  return {
    ...{ day, covers, spendPerCover, sold, contribution },
    usualCovers: usual?.covers ?? null,
    usualSpendPerCover: usual?.spendPerCover ?? null,
    usualSold: usual?.sold ?? null,
    usualContribution: usual?.contribution ?? null,
    yearBeforeCovers: yearBefore?.covers ?? null,
    yearBeforeSpendPerCover: yearBefore?.spendPerCover ?? null,
    yearBeforeSold: yearBefore?.sold ?? null,
    yearBeforeContribution: yearBefore?.contribution ?? null,
  };
}
