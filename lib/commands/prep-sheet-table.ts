import type { PrepSheetAnswer } from '../answers/prep-sheet-shape';
import { benchAmount, benchMinutes } from '../format/bench-amount';
import { figure } from '../format/figures';
import { type TextColumn, textTable } from '../format/text-table';
import {
  aheadWords,
  BENCH_CAUTION,
  heldWords,
  PREP,
  prepHead,
  wholesWords,
  withoutMinutesWords,
} from '../format/words/prep-sheet';
import { issueLines } from './plain-tables';

const left = (head: string): TextColumn => ({ head, side: 'left' });
const right = (head: string): TextColumn => ({ head, side: 'right' });

/** The prep sheet for a terminal or a printer: what is served, what to make, what to take from the store, whose work. */
export function prepSheetTable(answer: PrepSheetAnswer): string {
  const { locale } = answer;
  const few = (count: number) => figure(count, locale, { least: 0, most: 1 });
  const served = answer.items.map(({ item, channel, expected, portions }) => [
    item,
    channel,
    few(expected),
    few(portions),
  ]);
  const made = answer.components.map((each) => {
    const amount = (quantity: number | null) => (quantity === null ? null : benchAmount(quantity, each.unit, locale));
    const isEnough = each.make === 0;
    return [
      each.item,
      amount(each.needed) ?? PREP.unknown,
      heldWords(amount(each.held), each.tooOld),
      isEnough ? PREP.enough : (amount(each.make) ?? PREP.unknown),
      isEnough || each.batches === null ? PREP.none : figure(each.batches, locale, { least: 0, most: 2 }),
      isEnough ? PREP.none : aheadWords(each.leadHours, locale),
      isEnough ? PREP.none : each.minutes === null ? PREP.unknown : benchMinutes(each.minutes, locale),
      isEnough ? PREP.none : (each.grade ?? PREP.none),
    ];
  });
  const taken = answer.ingredients.map(({ item, quantity, unit, productGroup, wholes }) => [
    item,
    benchAmount(quantity, unit, locale),
    wholes === null ? (productGroup ?? PREP.none) : wholesWords(few(wholes)),
  ]);
  const work = answer.work.map(({ grade, handsOnMinutes, platingMinutes }) => [
    grade ?? PREP.nobody,
    benchMinutes(handsOnMinutes, locale),
    benchMinutes(platingMinutes, locale),
  ]);
  const tables: readonly (readonly [string, readonly TextColumn[], readonly (readonly string[])[]])[] = [
    [PREP.dishes, [left(PREP.item), left(PREP.channel), right(PREP.expected), right(PREP.portions)], served],
    [
      PREP.make,
      [
        ...[left(PREP.component), right(PREP.needed), right(PREP.held), right(PREP.toMake), right(PREP.batches)],
        ...[left(PREP.ahead), right(PREP.minutes), left(PREP.grade)],
      ],
      made,
    ],
    [PREP.take, [left(PREP.ingredient), right(PREP.quantity), left(PREP.group)], taken],
    [PREP.work, [left(PREP.grade), right(PREP.minutes), right(PREP.plating)], work],
  ];
  const shown = tables.filter(([, , rows]) => rows.length > 0);
  const body = shown.map(([name, columns, rows]) => `${name}\n${textTable(columns, rows)}`);
  const silent = answer.withoutMinutes.length === 0 ? [] : [`${withoutMinutesWords(answer.withoutMinutes)}\n`];
  const parts = [
    `${prepHead(answer, locale).join('\n')}\n`,
    ...(body.length === 0 ? [`${PREP.nothing}\n`] : body),
    ...silent,
    `${BENCH_CAUTION}\n`,
  ];
  return `${parts.join('\n')}${issueLines(answer.issues)}`;
}
