import type { AtStakeAnswer } from '../answers/at-stake-shape';
import type { PriceChangeAnswer } from '../answers/price-change-shape';
import type { TurningPricesAnswer } from '../answers/turning-prices-shape';
import { perCent, perCentFigure, signedFigure } from '../format/figures';
import { currencySign, money, moneyFigure, type Purse } from '../format/money';
import { portionsFigure } from '../format/portions';
import { type TextColumn, textTable } from '../format/text-table';
import { TABLE } from '../format/words/mix-table';
import {
  AT_STAKE_BASIS,
  atStakeHeads,
  changeHeads,
  concentrationSentence,
  periodChangeSentence,
  priceChangeBasis,
  spreadHeads,
  turningBasis,
  turningHeads,
  UNNAMED_GROUP,
  unmovedSentence,
} from '../format/words/price-reports';
import { issueLines } from './plain-tables';

/** The first columns hold words, the others figures. */
function columns(heads: readonly string[], words: number): readonly TextColumn[] {
  return heads.map((head, at) => ({ head, side: at < words ? 'left' : 'right' }));
}

function cells({ currency, locale }: Purse) {
  const purse = { currency, locale };
  return {
    amount: (value: string | null) => (value === null ? TABLE.unknown : moneyFigure(value, purse)),
    share: (value: number | null) => (value === null ? TABLE.unknown : perCentFigure(value, locale)),
    change: (value: number | null) => (value === null ? TABLE.unknown : signedFigure(value * 100, locale, 1)),
  };
}

/** A change of prices for a terminal: what it does to the period, then each dish. */
export function priceChangeTable(answer: PriceChangeAnswer): string {
  const { locale, before, after, contributionChange, edits, section } = answer;
  const { amount, share, change } = cells(answer);
  const whole = (value: string | null) => (value === null ? TABLE.unknown : money(value, answer));
  const rows = answer.items.map((row) => [
    row.item,
    row.classBefore === row.classAfter
      ? (row.classAfter ?? TABLE.notClassed)
      : `${row.classBefore ?? TABLE.notClassed} > ${row.classAfter ?? TABLE.notClassed}`,
    portionsFigure(row.sold, locale),
    amount(row.plateCostBefore),
    amount(row.plateCost),
    share(row.foodCostPct),
    amount(row.marginBefore),
    amount(row.margin),
    amount(row.contributionChange),
    amount(row.holdMarginPrice),
    amount(row.holdPctPrice),
    change(row.breakEvenSalesChange),
  ]);
  const sentence = periodChangeSentence({
    contribution: [whole(before.contribution), whole(after.contribution), whole(contributionChange)],
    foodCost: [before.foodCostPct, after.foodCostPct].map((each) =>
      each === null ? TABLE.unknown : perCent(each, locale),
    ),
  });
  const basis = priceChangeBasis(edits, section).join(' · ');
  const table = textTable(columns(changeHeads(currencySign(answer)), 2), rows);
  return `${sentence}\n${basis}\n\n${table}${issueLines(answer.issues)}`;
}

/** Turning prices for a terminal. */
export function turningPricesTable(answer: TurningPricesAnswer): string {
  const { ingredient, unit, section, model } = answer;
  const { amount } = cells(answer);
  const rows = answer.items.map((row) => [
    row.item,
    row.classNow ?? TABLE.notClassed,
    row.classBeyond ?? TABLE.unknown,
    amount(row.priceNow),
    amount(row.turningPrice),
  ]);
  const basis = turningBasis(ingredient, unit, section, model).join(' · ');
  const heads = turningHeads(currencySign(answer), unit);
  return `${basis}\n\n${textTable(columns(heads, 3), rows)}${issueLines(answer.issues)}`;
}

/** What is at stake for a terminal, and what each ingredient's own spread is worth. */
export function atStakeTable(answer: AtStakeAnswer): string {
  const { by, concentration, locale, tornado, unmoved } = answer;
  const { amount, share } = cells(answer);
  const sign = currencySign(answer);
  const rows = answer.items.map((row) => [
    row.name ?? UNNAMED_GROUP,
    amount(row.spend),
    share(row.share),
    amount(row.onePercentPerYear),
    String(row.dishes),
  ]);
  const spread = tornado.map((row) => [
    row.ingredient,
    row.unit,
    amount(row.lowest),
    amount(row.highest),
    amount(row.atLowest),
    amount(row.atHighest),
  ]);
  const sentence =
    concentration === null ? '' : `${concentrationSentence(concentration, perCent(concentration.share, locale))}\n`;
  const spreadTable = spread.length === 0 ? '' : `\n${textTable(columns(spreadHeads(sign), 2), spread)}`;
  const still = unmoved.length === 0 ? '' : `${unmovedSentence(unmoved.length)}\n`;
  const table = textTable(columns(atStakeHeads(by, sign), 1), rows);
  return `${sentence}${AT_STAKE_BASIS.join(' · ')}\n\n${table}${spreadTable}${still}${issueLines(answer.issues)}`;
}
