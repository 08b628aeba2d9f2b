import { parseArgs } from 'node:util';
import { atStakeAnswer } from '../answers/at-stake';
import { atStakeFile } from '../answers/at-stake-file';
import { dishAnswer } from '../answers/dish';
import { dishCostAnswer } from '../answers/dish-cost';
import { dishCostFile } from '../answers/dish-cost-file';
import { dishCostsAnswer } from '../answers/dish-costs';
import { dishCostsFile } from '../answers/dish-costs-file';
import { dishFile } from '../answers/dish-file';
import { menuMixAnswer } from '../answers/menu-mix';
import { menuMixFile } from '../answers/menu-mix-file';
import { menuModelsAnswer } from '../answers/menu-models';
import { menuModelsFile } from '../answers/menu-models-file';
import { prepSheetAnswer } from '../answers/prep-sheet';
import { prepSheetFile } from '../answers/prep-sheet-file';
import { priceChangeAnswer } from '../answers/price-change';
import { priceChangeFile } from '../answers/price-change-file';
import type { Answered } from '../answers/problem';
import { recipeCardAnswer } from '../answers/recipe-card';
import { recipeCardFile } from '../answers/recipe-card-file';
import { turningPricesAnswer } from '../answers/turning-prices';
import { turningPricesFile } from '../answers/turning-prices-file';
import { weekAnswer } from '../answers/week';
import { weekFile } from '../answers/week-file';
import { yearAnswer } from '../answers/year';
import { yearFile } from '../answers/year-file';
import { reportCsv } from '../format/report-csv';
import type { ReportFile } from '../format/report-file';
import { terminalJson, terminalLines } from '../format/terminal-text';
import {
  dayTwice,
  fromAndTo,
  monthOrDays,
  noExpectation,
  noNumber,
  oneFormat,
  reportUsage,
  whichItem,
  whichPeriod,
  wrongReport,
} from '../format/words/commands';
import { whichIngredient } from '../format/words/price-edits';
import { currentAsker } from '../session/asker';
import { dishCostSheet } from './dish-cost-sheet';
import { dishSheet } from './dish-sheet';
import { editsOption } from './edits-option';
import { menuModelsTable } from './menu-models-table';
import { dishCostsTable, menuMixTable } from './plain-tables';
import { prepSheetTable } from './prep-sheet-table';
import { atStakeTable, priceChangeTable, turningPricesTable } from './price-tables';
import { recipeCardSheet } from './recipe-card-sheet';
import { complain, run, wrongUse } from './run';
import { weekTable } from './week-table';
import { writeReport } from './write-report';
import { yearTable } from './year-table';

const OPTIONS = {
  item: { type: 'string' },
  date: { type: 'string' },
  day: { type: 'string' },
  portions: { type: 'string' },
  batches: { type: 'string' },
  covers: { type: 'string' },
  expect: { type: 'string', multiple: true },
  channel: { type: 'string' },
  month: { type: 'string' },
  from: { type: 'string' },
  to: { type: 'string' },
  section: { type: 'string' },
  model: { type: 'string' },
  'set-menus': { type: 'string' },
  by: { type: 'string' },
  ingredient: { type: 'string' },
  price: { type: 'string', multiple: true },
  edits: { type: 'string' },
  venue: { type: 'string' },
  json: { type: 'boolean' },
  csv: { type: 'boolean' },
  xlsx: { type: 'string' },
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
  readonly setMenus: string | null;
  readonly portions: number | null;
  readonly batches: number | null;
  readonly covers: number | null;
  /** NAME=20: portions that somebody expects instead of the mean. */
  readonly expect: readonly { readonly item: string; readonly portions: number }[];
  readonly by: string | null;
  readonly ingredient: string | null;
  /** The changes of price-change, as they were written. */
  readonly edits: unknown;
}

interface Written {
  readonly json: unknown;
  readonly file: () => ReportFile;
  readonly plain: string;
}

function written<T>(
  result: Answered<T>,
  file: (answer: T) => ReportFile,
  plain: (answer: T) => string,
): Answered<Written> {
  if (!result.ok) return result;
  const { answer } = result;
  return { ok: true, answer: { json: answer, file: () => file(answer), plain: plain(answer) } };
}

type InPeriod = Asked & { readonly month: string };
type OfItem = Asked & { readonly item: string };

function inPeriod(asked: Asked): InPeriod {
  if (asked.month === null) throw wrongUse(whichPeriod);
  return { ...asked, month: asked.month };
}

function ofItem<Named extends Asked>(asked: Named): Named & OfItem {
  if (asked.item === null) throw wrongUse(whichItem);
  return { ...asked, item: asked.item };
}

const REPORTS: Readonly<Record<string, (asked: Asked) => Promise<Answered<Written>>>> = {
  'menu-mix': async (asked) => written(await menuMixAnswer(currentAsker(), inPeriod(asked)), menuMixFile, menuMixTable),
  models: async (asked) =>
    written(await menuModelsAnswer(currentAsker(), inPeriod(asked)), menuModelsFile, menuModelsTable),
  'dish-costs': async (asked) =>
    written(await dishCostsAnswer(currentAsker(), inPeriod(asked)), dishCostsFile, dishCostsTable),
  dish: async (asked) => written(await dishAnswer(currentAsker(), ofItem(inPeriod(asked))), dishFile, dishSheet),
  'dish-cost': async (asked) =>
    written(await dishCostAnswer(currentAsker(), ofItem(asked)), dishCostFile, dishCostSheet),
  'prep-sheet': async (asked) =>
    written(await prepSheetAnswer(currentAsker(), { ...asked, portions: asked.expect }), prepSheetFile, prepSheetTable),
  'recipe-card': async (asked) =>
    written(await recipeCardAnswer(currentAsker(), { ...ofItem(asked), list: null }), recipeCardFile, recipeCardSheet),
  year: async (asked) => written(await yearAnswer(currentAsker(), asked), yearFile, yearTable),
  week: async (asked) => written(await weekAnswer(currentAsker(), asked), weekFile, weekTable),
  'at-stake': async (asked) => written(await atStakeAnswer(currentAsker(), inPeriod(asked)), atStakeFile, atStakeTable),
  'price-change': async (asked) => {
    const body = { edits: asked.edits };
    return written(
      await priceChangeAnswer(currentAsker(), { ...inPeriod(asked), body }),
      priceChangeFile,
      priceChangeTable,
    );
  },
  'turning-prices': async (asked) => {
    const { ingredient } = asked;
    if (ingredient === null) throw wrongUse(whichIngredient);
    return written(
      await turningPricesAnswer(currentAsker(), { ...inPeriod(asked), ingredient }),
      turningPricesFile,
      turningPricesTable,
    );
  },
};

/** The period by its name; null where none is named. */
function periodIn({ month, from, to }: { readonly month?: string; readonly from?: string; readonly to?: string }) {
  if (from === undefined && to === undefined) return month ?? null;
  if (month !== undefined) throw wrongUse(monthOrDays);
  if (from === undefined || to === undefined) throw wrongUse(fromAndTo);
  return `${from}..${to}`;
}

/** A number that stands after an option; null where the option is not there. */
function numberAfter(option: string, text: string | undefined): number | null {
  if (text === undefined) return null;
  const number = Number(text);
  if (text.trim() === '' || !Number.isFinite(number)) throw wrongUse(noNumber(option, text));
  return number;
}

function expectation(text: string): { readonly item: string; readonly portions: number } {
  const at = text.lastIndexOf('=');
  if (at < 1) throw wrongUse(noExpectation(text));
  return { item: text.slice(0, at), portions: numberAfter('expect', text.slice(at + 1)) ?? 0 };
}

function readArguments() {
  const { values, positionals } = parseArgs({ options: OPTIONS, allowPositionals: true });
  if (values.help) return { help: true } as const;
  const [what, ...more] = positionals;
  const report = REPORTS[what ?? ''];
  if (!report || more.length > 0) throw wrongUse(wrongReport(what ?? '', Object.keys(REPORTS)));
  const month = periodIn(values);
  if ([values.json, values.csv, values.xlsx].filter((form) => form !== undefined).length > 1) throw wrongUse(oneFormat);
  const { venue = null, item = null, channel = null, section = null, model = null } = values;
  const { by = null, ingredient = null } = values;
  if (values.date !== undefined && values.day !== undefined) throw wrongUse(dayTwice);
  const asked = {
    ...{ venue, item, date: values.date ?? values.day ?? null, month, channel, section, model },
    ...{ setMenus: values['set-menus'] ?? null },
    portions: numberAfter('portions', values.portions),
    batches: numberAfter('batches', values.batches),
    covers: numberAfter('covers', values.covers),
    expect: (values.expect ?? []).map(expectation),
    ...{ by, ingredient, edits: editsOption(values.price, values.edits) },
  };
  const form = values.json ? 'json' : values.csv ? 'csv' : 'plain';
  return { help: false, report, asked, form, xlsx: values.xlsx ?? null } as const;
}

await run(async () => {
  const wanted = readArguments();
  if (wanted.help) {
    process.stdout.write(reportUsage);
    return 0;
  }
  const result = await wanted.report(wanted.asked);
  if (!result.ok) {
    complain(result.problem.detail);
    return result.problem.status === 400 ? 2 : 1;
  }
  const { json, file, plain } = result.answer;
  if (wanted.xlsx !== null) return writeReport(file(), wanted.xlsx);
  process.stdout.write(
    wanted.form === 'json' ? terminalJson(json) : wanted.form === 'csv' ? reportCsv(file()) : terminalLines(plain),
  );
  return 0;
});
