import { type PriceEdit, touchesGoods } from './edits';
import type { PriceModel } from './price-model';

/**
 * Walks, item by item, over the goods that a portion of it takes and the segments in which it does: what its price hangs on. Each pair is
 * visited once for an item.
 */
export function eachReached(model: PriceModel, visit: (item: number, goods: number, segment: number) => void): void {
  const { lines, segments, goods, items } = model;
  const goodsAt = new Map(goods.map(({ node }, index) => [node, index]));
  const groupsOf = new Map<number, number[]>();
  lines.rows.forEach((row, group) => {
    groupsOf.set(row, [...(groupsOf.get(row) ?? []), group]);
  });
  const seenBy = new Map<number, number>(); // cell -> the last item that came by
  items.forEach(({ takes }, item) => {
    const waiting = takes.filter(({ amount }) => amount !== 0).map(({ node, segment }) => ({ node, segment }));
    for (let next = waiting.pop(); next; next = waiting.pop()) {
      const { node, segment } = next;
      const cell = node * segments + segment;
      if (seenBy.get(cell) === item) continue;
      seenBy.set(cell, item);
      const bought = goodsAt.get(node);
      if (bought !== undefined) visit(item, bought, segment);
      for (const group of groupsOf.get(node) ?? []) {
        for (let line = lines.starts[group] as number; line < (lines.starts[group + 1] as number); line++) {
          const holds = (lines.from[line] as number) <= segment && segment < (lines.to[line] as number);
          if (holds && lines.amount[line] !== 0) waiting.push({ node: lines.child[line] as number, segment });
        }
      }
    }
  });
}

/** The items whose plate cost some edits move and is not known: what they come to there is in no figure. */
export function uncostedTouched(model: PriceModel, edits: readonly PriceEdit[]): readonly string[] {
  const items = model.items.filter(({ isCosted }) => !isCosted);
  if (items.length === 0) return [];
  const touched = new Set<number>();
  eachReached({ ...model, items }, (item, at, segment) => {
    const goods = model.goods[at];
    if (goods && edits.some((edit) => touchesGoods(edit, goods, segment))) touched.add(item);
  });
  return items.filter((_, item) => touched.has(item)).map(({ name }) => name);
}
