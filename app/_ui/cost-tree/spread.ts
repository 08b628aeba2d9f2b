/**
 * Places for labels in a column: each as near to where it is wanted as the others let it, none over another, all between low and high.
 * `wanted` are middles in ascending order, `heights` what each takes; the answer is middles. Labels that push each other stand together
 * around the mean of what they want (pooled adjacent violators). Where they do not fit at all they start at low.
 */
export function spread(
  wanted: readonly number[],
  heights: readonly number[],
  low: number,
  high: number,
): readonly number[] {
  interface Block {
    readonly from: number;
    readonly count: number;
    readonly height: number;
    /** Sum over its labels of where the block's top is wanted. */
    readonly top: number;
  }
  const blocks: Block[] = [];
  const topOf = ({ top, count, height }: Block): number => Math.max(low, Math.min(top / count, high - height));
  wanted.forEach((middle, index) => {
    const height = heights[index] ?? 0;
    let block: Block = { from: index, count: 1, height, top: middle - height / 2 };
    for (;;) {
      const before = blocks.at(-1);
      if (!before || topOf(before) + before.height <= topOf(block)) break;
      blocks.pop();
      block = {
        from: before.from,
        count: before.count + block.count,
        height: before.height + block.height,
        top: before.top + block.top - block.count * before.height,
      };
    }
    blocks.push(block);
  });
  return blocks.flatMap((block) => {
    let at = topOf(block);
    return heights.slice(block.from, block.from + block.count).map((height) => {
      const middle = at + height / 2;
      at += height;
      return middle;
    });
  });
}
