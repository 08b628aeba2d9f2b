import { type Packer, packer, type Unpacker, unpacker } from '../../core/byte-pack';
import { downward } from '../passes';
import { type AmountSource, packAmounts, unpackAmounts } from './packed-amounts';
import { packLines, unpackLines } from './packed-lines';
import { packTable, unpackTable } from './packed-table';
import type { Goods, PricedItem, PriceModel, Take } from './price-model';

/** Changes whenever the bytes mean something else, so that nothing old is read as new. */
export const PACKED_FORMAT = 2;

/** Where a price model comes from: what the amounts of its lines were made of, and what was served (node * segments + segment). */
export interface ModelSource {
  readonly amounts: AmountSource;
  readonly served: Float64Array;
}

/**
 * A price model as bytes, equal to the last bit when it is read: what is many as columns of numbers, the rest as text. What everything
 * served takes of the goods is not written: it follows from what was served by the same pass that made it.
 */
export function packedModel(model: PriceModel, source: ModelSource): Uint8Array<ArrayBuffer> {
  const to = packer();
  const { venue, segments, prices, goods, items } = model;
  to.ints([PACKED_FORMAT, segments, prices.food.length]);
  to.text(JSON.stringify(venue));
  packLines(to, model.lines, source.amounts);
  for (const table of [prices.food, prices.packaging, prices.estimate, source.served]) packTable(to, table, segments);
  to.text(JSON.stringify(goods.map(({ need: _, suppliers, ...rest }) => ({ ...rest, suppliers: inRuns(suppliers) }))));
  to.text(JSON.stringify(items.map(({ takes: _, ...rest }) => rest)));
  packTakes(to, items);
  return to.bytes();
}

/** Reads what packedModel wrote; null where another edition of the program wrote it. */
export function unpackedModel(bytes: Uint8Array): PriceModel | null {
  const from = unpacker(bytes);
  const [format, segments = 0, size = 0] = from.ints();
  if (format !== PACKED_FORMAT) return null;
  const venue = JSON.parse(from.text()) as PriceModel['venue'];
  const lines = unpackLines(from);
  const table = (): Float64Array => unpackTable(from, segments, size);
  const prices = { food: table(), packaging: table(), estimate: table() };
  const need = downward(lines, table(), segments);
  const goods = (JSON.parse(from.text()) as PackedGoods[]).map(({ suppliers, ...rest }) => ({
    ...rest,
    suppliers: suppliers.flatMap(([supplier, times]) => Array<string | null>(times).fill(supplier)),
    need: [...need.subarray(rest.node * segments, (rest.node + 1) * segments)],
  }));
  const items = JSON.parse(from.text()) as Omit<PricedItem, 'takes'>[];
  const takes = unpackTakes(from, items);
  return {
    venue,
    segments,
    lines,
    prices,
    goods,
    items: items.map((item, at) => ({ ...item, takes: takes[at] ?? [] })),
  };
}

type Runs = readonly (readonly [value: string | null, times: number])[];
type PackedGoods = Omit<Goods, 'need' | 'suppliers'> & { readonly suppliers: Runs };

function inRuns(values: readonly (string | null)[]): Runs {
  const runs: [string | null, number][] = [];
  for (const value of values) {
    const last = runs.at(-1);
    if (last && last[0] === value) last[1]++;
    else runs.push([value, 1]);
  }
  return runs;
}

/** A take is a share of the item's portions: a whole number of them over all. */
function packTakes(to: Packer, items: readonly PricedItem[]): void {
  const takes = items.flatMap((item) => item.takes.map((take) => ({ ...take, item })));
  to.ints(items.map((item) => item.takes.length));
  to.ints(takes.map(({ node, item }) => node - item.node));
  to.ints(takes.map(({ segment }) => segment));
  packAmounts(
    to,
    Float64Array.from(takes, ({ amount }) => amount),
    new Int32Array(takes.length),
    {
      made: (take) => takes[take]?.item.sold || 1,
      usableYield: () => 1,
    },
  );
}

function unpackTakes(from: Unpacker, items: readonly Omit<PricedItem, 'takes'>[]): readonly (readonly Take[])[] {
  const counts = from.ints();
  const nodes = from.ints();
  const segments = from.ints();
  const amounts = unpackAmounts(from, new Int32Array(nodes.length));
  let take = 0;
  return items.map(({ node }, item) =>
    Array.from({ length: counts[item] ?? 0 }, () => {
      const at = take++;
      return { node: node + (nodes[at] ?? 0), segment: segments[at] ?? 0, amount: amounts[at] ?? 0 };
    }),
  );
}
