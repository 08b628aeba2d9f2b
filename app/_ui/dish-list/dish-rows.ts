import type { Route } from 'next';
import type { DishCostsAnswer } from '@/lib/answers/dish-costs-shape';
import { perCentFigure } from '@/lib/format/figures';
import { moneyFigure, type Purse } from '@/lib/format/money';
import { portionsFigure } from '@/lib/format/portions';
import { channelNote, DISH_LIST, type ListColumn } from '@/lib/format/words/dish-list';
import { atLeast } from '@/lib/format/words/mix-table';

export interface DishRow {
  readonly key: string;
  readonly item: string;
  readonly href: Route;
  readonly section: string | null;
  readonly note: string | null;
  readonly cells: Readonly<Record<Exclude<ListColumn, 'item'>, string>>;
  readonly sorts: Readonly<Record<ListColumn, number | string | null>>;
}

type Item = DishCostsAnswer['items'][number];
type Extra = DishCostsAnswer['extras'][number];

const number = (amount: string | null): number | null => (amount === null ? null : Number(amount));

/** Every item and channel of a period as a row, and the extras after them. `classes` are by name, in words. */
export function dishRows(
  { items, extras }: Pick<DishCostsAnswer, 'items' | 'extras'>,
  classes: ReadonlyMap<string, string>,
  hrefOf: (item: string) => Route,
  purse: Purse,
): readonly DishRow[] {
  const rowsOf = new Map<string, number>();
  for (const { item } of items) rowsOf.set(item, (rowsOf.get(item) ?? 0) + 1);
  return [
    ...items.map((item) => {
      const channel = channelNote(item.channel, (rowsOf.get(item.item) ?? 0) > 1);
      return itemRow(item, channel, classes.get(item.item) ?? null, hrefOf(item.item), purse);
    }),
    ...extras.map((extra) => extraRow(extra, hrefOf(extra.item), purse)),
  ];
}

function itemRow(row: Item, channel: string | null, mixClass: string | null, href: Route, purse: Purse): DishRow {
  const { locale } = purse;
  const money = (amount: string | null) => (amount === null ? DISH_LIST.unknown : moneyFigure(amount, purse));
  const notes = [channel, row.estimated ? DISH_LIST.estimate : null].filter((note) => note !== null);
  const cost = row.floor === null ? DISH_LIST.notCosted : atLeast(row.floor, purse);
  return {
    ...{ key: `${row.item} ${row.channel}`, item: row.item, href, section: row.section },
    note: notes.length === 0 ? null : notes.join('; '),
    cells: {
      section: row.section ?? DISH_LIST.noSection,
      sold: row.sold === 0 ? DISH_LIST.none : portionsFigure(row.sold, locale),
      price: money(row.netPrice),
      plateCost: row.plateCost === null ? cost : moneyFigure(row.plateCost, purse),
      foodCost: row.foodCostPct === null ? DISH_LIST.unknown : perCentFigure(row.foodCostPct, locale),
      leaves: money(row.margin),
      labour: Number(row.recipeLabour ?? 1) === 0 ? DISH_LIST.none : money(row.recipeLabour),
      minute:
        row.marginPerPlatingMinute === null && row.platingMinutes === 0
          ? DISH_LIST.none
          : money(row.marginPerPlatingMinute),
      class: mixClass ?? DISH_LIST.notClassed,
    },
    sorts: {
      ...{ item: row.item, section: row.section, sold: row.sold, price: number(row.netPrice) },
      ...{ plateCost: number(row.plateCost), foodCost: row.foodCostPct, leaves: number(row.margin) },
      ...{ labour: number(row.recipeLabour), minute: number(row.marginPerPlatingMinute), class: mixClass },
    },
  };
}

/** What every guest was given: it has a cost and guests, and none of the rest. */
function extraRow({ item, covers, perCover }: Extra, href: Route, purse: Purse): DishRow {
  const { none } = DISH_LIST;
  const nothing = { price: none, foodCost: none, leaves: none, labour: none, minute: none, class: none };
  const unsorted = { price: null, foodCost: null, leaves: null, labour: null, minute: null, class: null };
  return {
    ...{ key: `${item} per cover`, item, href, section: null, note: null },
    cells: {
      ...{ ...nothing, section: DISH_LIST.perGuest, sold: portionsFigure(covers, purse.locale) },
      plateCost: perCover === null ? DISH_LIST.notCosted : moneyFigure(perCover, purse),
    },
    sorts: { ...unsorted, item, section: DISH_LIST.perGuest, sold: covers, plateCost: number(perCover) },
  };
}
