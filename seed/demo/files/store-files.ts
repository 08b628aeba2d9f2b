import { dayText } from '../../../lib/core/days';
import { COUNTS } from '../kitchen/counts';
import { MOVES } from '../kitchen/moves';
import { TRIALS } from '../kitchen/trials';
import { money } from '../rounding';
import { PURCHASES } from '../trade/purchases';
import type { Table } from './csv-table';

export const STORE_FILES: readonly Table[] = [
  {
    file: 'purchases.csv',
    columns: ['date', 'supplier', 'invoice', 'kind', 'code', 'packs', 'quantity', 'unit', 'amount', 'delivered_on'],
    rows: PURCHASES.map((line) => [
      dayText(line.day),
      line.supplier,
      line.invoice,
      line.kind,
      line.code,
      line.packs,
      line.quantity,
      line.unit,
      line.amount === undefined ? undefined : money(line.amount),
      line.deliveredOn === undefined ? undefined : dayText(line.deliveredOn),
    ]),
  },
  {
    file: 'counts.csv',
    columns: ['date', 'item', 'part', 'quantity', 'unit', 'place'],
    rows: COUNTS.map((count) => [dayText(count.day), count.item, count.part, count.quantity, count.unit, count.place]),
  },
  {
    file: 'moves.csv',
    columns: ['date', 'item', 'quantity', 'unit', 'reason', 'value', 'other_venue'],
    rows: MOVES.map((move) => [
      dayText(move.day),
      move.item,
      move.quantity,
      move.unit,
      move.reason,
      undefined,
      undefined,
    ]),
  },
  {
    file: 'trials.csv',
    columns: ['recipe', 'date', 'hours', 'grade', 'outcome'],
    rows: TRIALS.map((trial) => [trial.recipe, trial.day, trial.hours, trial.grade, trial.outcome]),
  },
  {
    file: 'trial_lines.csv',
    columns: ['recipe', 'date', 'item', 'quantity', 'unit'],
    rows: TRIALS.flatMap((trial) => trial.lines.map((line) => [trial.recipe, trial.day, ...line])),
  },
];
