import { allocated } from '../core/allocation';
import { currencyDigits } from './currency-digits';
import { figure } from './figures';
import { money, type Purse } from './money';
import type { Phrase } from './phrase';
import {
  floorWords,
  lineMark,
  lineName,
  offerWords,
  recipeWords,
  sumPhrase,
  sumWords,
  WORKING,
  type WorkedLine,
  type WorkedRecipeWords,
} from './words/cost-working';

/** A line with those below it; a line of a DishCostAnswer is one. */
export interface SheetLine extends WorkedLine {
  readonly position: number | null;
  readonly cost: string | null;
  readonly floor: string | null;
  readonly issues: readonly { readonly text: string }[];
  readonly closed: boolean;
  readonly lines: readonly SheetLine[];
}

export interface Sheet {
  readonly plateCost: string | null;
  readonly floor: string | null;
  readonly recipe: WorkedRecipeWords | null;
  readonly lines: readonly SheetLine[];
}

/** A line as it is printed. */
export interface SheetRow {
  /** Its place among its neighbours. */
  readonly key: string;
  readonly name: string;
  /** The sum in one line. */
  readonly sum: string;
  readonly cost: string;
  /** The same as a whole number of the last printed decimal; null where the cost is not known. */
  readonly steps: number | null;
  /** Then version and yield, then supplier, code, pack, price. */
  readonly notes: readonly string[];
  /** What is missing, and how to mend it. */
  readonly missing: readonly string[];
  readonly rows: readonly SheetRow[];
}

export interface PrintedSheet {
  readonly rows: readonly SheetRow[];
  readonly total: string;
  /** The whole as the sum of its largest parts; null where a part is not known, or where there is only one. */
  readonly inOneLine: Phrase | null;
}

/**
 * A working as it is printed, with one decimal more than the currency has. The costs under each other sum to what is printed above
 * them, line by line and to the total: what rounding leaves goes to the lines that it took most from.
 */
export function printedSheet(sheet: Sheet, purse: Purse): PrintedSheet {
  const digits = (currencyDigits(purse.currency) ?? 2) + 1;
  const steps = (cost: string): number => Number(cost) * 10 ** digits;
  const print = (count: number): string => figure(count / 10 ** digits, purse.locale, digits);

  const rowsOf = (lines: readonly SheetLine[], whole: number | null, breakage: number): readonly SheetRow[] => {
    const costs = lines.flatMap(({ cost }) => cost ?? []);
    const isKnown = whole !== null && costs.length === lines.length;
    const printed = isKnown ? allocated(whole, costs.map(steps)) : null;
    return lines.map((line, index) => {
      const own = printed?.[index] ?? (line.cost === null ? null : Math.round(steps(line.cost)));
      return {
        key: `${index} ${line.item}`,
        name: lineName(line),
        sum: sumWords(line, breakage, purse),
        cost: own === null ? floorWords(line.floor, purse) : print(own),
        steps: own,
        notes: notesOf(line, purse),
        missing: line.issues.map(({ text }) => text),
        rows: rowsOf(line.lines, own, line.recipe?.breakagePct ?? 0),
      };
    });
  };

  const total = sheet.plateCost === null ? null : Math.round(steps(sheet.plateCost));
  const rows = rowsOf(sheet.lines, total, sheet.recipe?.breakagePct ?? 0);
  return {
    rows,
    total: total === null ? floorWords(sheet.floor, purse) : print(total),
    inOneLine:
      total === null || rows.length < 2 ? null : largestParts(rows, money(total / 10 ** digits, purse, digits), print),
  };
}

/** So many parts are named in the sum; where one more is left, it is named too. */
const NAMED = 3;

function largestParts(rows: readonly SheetRow[], total: string, print: (steps: number) => string): Phrase {
  const largest = [...rows].sort((a, b) => (b.steps ?? 0) - (a.steps ?? 0));
  const named = largest.slice(0, rows.length === NAMED + 1 ? NAMED + 1 : NAMED);
  const rest = largest.slice(named.length);
  const restCost = print(rest.reduce((sum, { steps }) => sum + (steps ?? 0), 0));
  return sumPhrase(total, named, rest.length === 0 ? null : { cost: restCost, count: rest.length });
}

function notesOf(line: SheetLine, purse: Purse): readonly string[] {
  const mark = lineMark(line);
  const isBatch = line.kind === 'component';
  return [
    ...(line.recipe === null ? [] : [recipeWords(line.recipe, isBatch, purse.locale)]),
    ...(line.offer === null ? [] : [offerWords(line.offer, purse)]),
    ...(mark === null ? [] : [mark]),
    ...(line.closed ? [WORKING.closed] : []),
  ];
}
