import { parseArgs } from 'node:util';
import { dishCostsCsv, menuMixCsv } from '../answers/answer-csv';
import { dishCostAnswer } from '../answers/dish-cost';
import { dishCostCsv } from '../answers/dish-cost-csv';
import { dishCostsAnswer } from '../answers/dish-costs';
import { menuMixAnswer } from '../answers/menu-mix';
import type { Answered } from '../answers/problem';
import { reportUsage, wrongReport } from '../format/words/commands';
import { currentAsker } from '../session/asker';
import { dishCostSheet } from './dish-cost-sheet';
import { dishCostsTable, menuMixTable } from './plain-tables';
import { run, wrongUse } from './run';

const OPTIONS = {
  item: { type: 'string' },
  date: { type: 'string' },
  channel: { type: 'string' },
  month: { type: 'string' },
  from: { type: 'string' },
  to: { type: 'string' },
  section: { type: 'string' },
  model: { type: 'string' },
  venue: { type: 'string' },
  json: { type: 'boolean' },
  csv: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

interface Asked {
  readonly venue: string | null;
  readonly item: string | null;
  readonly date: string | null;
  readonly channel: string | null;
  readonly month: string | null;
  readonly section: string | null;
  readonly model: string | null;
}

interface Written {
  readonly json: unknown;
  readonly csv: string;
  readonly plain: string;
}

function written<T>(result: Answered<T>, csv: (answer: T) => string, plain: (answer: T) => string): Answered<Written> {
  if (!result.ok) return result;
  const { answer } = result;
  return { ok: true, answer: { json: answer, csv: csv(answer), plain: plain(answer) } };
}

type InPeriod = Asked & { readonly month: string };
type OfItem = Asked & { readonly item: string };

function inPeriod(asked: Asked): InPeriod {
  if (asked.month === null) throw wrongUse('Which period? Name it with --month 2026-10, or with --from and --to.');
  return { ...asked, month: asked.month };
}

function ofItem(asked: Asked): OfItem {
  if (asked.item === null) throw wrongUse('The cost of what? Name it with --item NAME.');
  return { ...asked, item: asked.item };
}

const REPORTS: Readonly<Record<string, (asked: Asked) => Promise<Answered<Written>>>> = {
  'menu-mix': async (asked) => written(await menuMixAnswer(currentAsker(), inPeriod(asked)), menuMixCsv, menuMixTable),
  'dish-costs': async (asked) =>
    written(await dishCostsAnswer(currentAsker(), inPeriod(asked)), dishCostsCsv, dishCostsTable),
  'dish-cost': async (asked) =>
    written(await dishCostAnswer(currentAsker(), ofItem(asked)), dishCostCsv, dishCostSheet),
};

function readArguments() {
  const { values, positionals } = parseArgs({ options: OPTIONS, allowPositionals: true });
  if (values.help) return { help: true } as const;
  const [what, ...more] = positionals;
  const report = REPORTS[what ?? ''];
  if (!report || more.length > 0) throw wrongUse(wrongReport(what ?? '', Object.keys(REPORTS)));
  const month = values.month ?? (values.from && values.to ? `${values.from}..${values.to}` : null);
  if (values.json && values.csv) throw wrongUse('Either --json or --csv, not both.');
  const { venue = null, item = null, date = null, channel = null, section = null, model = null } = values;
  const asked = { venue, item, date, month, channel, section, model };
  const form = values.json ? 'json' : values.csv ? 'csv' : 'plain';
  return { help: false, report, asked, form } as const;
}

await run(async () => {
  const wanted = readArguments();
  if (wanted.help) {
    process.stdout.write(reportUsage);
    return 0;
  }
  const result = await wanted.report(wanted.asked);
  if (!result.ok) {
    process.stderr.write(`${result.problem.detail}\n`);
    return result.problem.status === 400 ? 2 : 1;
  }
  const { json, csv, plain } = result.answer;
  process.stdout.write(
    wanted.form === 'json' ? `${JSON.stringify(json, null, 2)}\n` : wanted.form === 'csv' ? csv : plain,
  );
  return 0;
});
