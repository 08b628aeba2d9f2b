import type { z } from 'zod';
import { moneyText } from '../format/money-text';
import { priceEditText } from '../format/price-edit-text';
import {
  belowZero,
  noEdit,
  noEditBody,
  noEditFields,
  otherDemand,
  touchesNothing,
  wrongEdits,
} from '../format/words/price-edits';
import { type EditTarget, editTroubles, type PriceEdit } from '../model/price-model/edits';
import type { PriceModel } from '../model/price-model/price-model';
import type { PricedMix } from '../model/price-model/priced-mix';
import { type ItemPriceChange, priceChange } from '../reports/price-change';
import type { Asker } from '../session/asker';
import { alike } from './alike';
import { periodWritten } from './period-written';
import type { PriceChangeAnswer } from './price-change-shape';
import { priceChangeBodyShape, priceEditOf, type priceEditShape } from './price-edit-shape';
import { type PricedAsked, type PricedPeriod, pricedPeriod } from './priced-period';
import { type Answered, answered, type Problem, refused } from './problem';

/** A question about other prices; the body as it came. */
export interface PriceChangeAsked extends PricedAsked {
  readonly body: unknown;
}

/** What some changes of prices would have done to a period, the same for command and HTTP. */
export async function priceChangeAnswer(asker: Asker, asked: PriceChangeAsked): Promise<Answered<PriceChangeAnswer>> {
  const edits = editsIn(asked.body);
  if (!edits.ok) return edits;
  const period = await pricedPeriod(asker, asked);
  if (!period.ok) return period;
  const { model } = period.answer;
  const troubles = editTroubles(model, edits.answer).map(({ edit, why }) => {
    const { target } = edit;
    const text = why === 'below-zero' ? belowZero(target) : touchesNothing(target, namesLike(model, target));
    return { name: `edits.${edits.answer.indexOf(edit)}`, value: priceEditText(edit), text };
  });
  return troubles.length > 0 ? wrong(troubles) : answered(written(period.answer, edits.answer));
}

function wrong(fields: Problem['fields']) {
  return refused(400, wrongEdits(fields.map(({ text }) => text).join(' ')), fields);
}

/** The edits of a body, or what is wrong with each. */
function editsIn(body: unknown): Answered<readonly PriceEdit[]> {
  const read = priceChangeBodyShape.safeParse(body);
  if (!read.success) {
    const fields = read.error.issues.map(({ path }) => fieldOf(path, body));
    return wrong([...new Map(fields.map((field) => [field.name, field])).values()]);
  }
  const edits = read.data.edits.map((each, at) => ({ at, each, edit: priceEditOf(each) }));
  const unread = edits.filter(({ edit }) => edit === null);
  if (unread.length > 0) return wrong(unread.map(({ at, each }) => unreadField(at, each)));
  return answered(edits.flatMap(({ edit }) => edit ?? []));
}

function unreadField(at: number, each: z.output<typeof priceEditShape>): Problem['fields'][number] {
  const isText = typeof each === 'string';
  return {
    name: `edits.${at}`,
    value: isText ? each : JSON.stringify(each),
    text: isText ? noEdit(each) : noEditFields,
  };
}

function fieldOf(path: readonly PropertyKey[], body: unknown): Problem['fields'][number] {
  const [first, at] = path;
  if (first === 'demand') {
    return { name: 'demand', value: JSON.stringify((body as { readonly demand: unknown }).demand), text: otherDemand };
  }
  if (first !== 'edits' || at === undefined) return { name: 'body', value: null, text: noEditBody };
  const each = (body as { readonly edits: readonly unknown[] }).edits[Number(at)];
  return { name: `edits.${String(at)}`, value: JSON.stringify(each) ?? null, text: noEditFields };
}

/** Names of its kind that are like the one that an edit is aimed at. */
function namesLike({ goods, items }: PriceModel, { of, name }: EditTarget): readonly string[] {
  if (name === null) return [];
  const names: Readonly<Record<string, readonly (string | null)[]>> = {
    ingredient: goods.map((each) => each.name),
    group: goods.map(({ productGroup }) => productGroup),
    supplier: goods.flatMap(({ suppliers }) => suppliers),
    item: items.map((each) => each.name),
    section: items.map(({ section }) => section),
  };
  return alike(name, [...new Set((names[of] ?? []).flatMap((each) => each ?? []))]);
}

function written(period: PricedPeriod, edits: readonly PriceEdit[]): PriceChangeAnswer {
  const { currency } = period.costed.venue;
  const money = (amount: number | null) => (amount === null ? null : moneyText(amount, currency));
  const change = priceChange(period.model, edits);
  const stand = (mix: PricedMix) => ({
    revenue: moneyText(mix.revenue, currency),
    plateCost: moneyText(mix.plateCost, currency),
    foodCostPct: mix.foodCost,
    contribution: money(mix.contribution),
    margin: money(mix.meanMargin),
  });
  const row = ({ item, before, after, ...each }: ItemPriceChange): PriceChangeAnswer['items'][number] => ({
    item: item.name,
    section: item.section,
    sold: item.sold,
    estimated: item.estimated,
    menuPrice: money(item.menuPrice?.price ?? null),
    netPriceBefore: money(before.netPrice),
    netPrice: money(after.netPrice),
    plateCostBefore: money(before.plateCost),
    plateCost: money(after.plateCost),
    foodCostBeforePct: before.foodCost,
    foodCostPct: after.foodCost,
    marginBefore: money(before.margin),
    margin: money(after.margin),
    contributionChange: money(each.contributionChange),
    classBefore: before.class,
    classAfter: after.class,
    holdMarginPrice: money(each.holdMarginPrice),
    holdPctPrice: money(each.holdPctPrice),
    breakEvenSalesChange: each.breakEvenSalesChange,
  });
  return {
    ...periodWritten(period),
    model: 'kasavana-smith',
    edits: edits.map(priceEditText),
    demand: 'none',
    before: stand(change.before),
    after: stand(change.after),
    contributionChange: money(change.contributionChange),
    items: change.items.map(row),
  };
}
