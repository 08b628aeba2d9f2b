/**
 * R, the linear map from what is bought to what is sold, as one list of lines, children first: when a line is reached, everything
 * below its child stands before it, and the lines of one parent stand together.
 *
 * Line k says: in segments from[k] to to[k] - 1, one base unit of parent[k] takes amount[k] base units of child[k], with yields,
 * batch outputs and breakage inside the amount.
 */
export interface FlatLines {
  readonly parent: Int32Array;
  readonly child: Int32Array;
  readonly amount: Float64Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
}

export interface LineList {
  add(parent: number, child: number, amount: number, from: number, to: number): void;
  lines(): FlatLines;
}

export function lineList(): LineList {
  const parents: number[] = [];
  const children: number[] = [];
  const amounts: number[] = [];
  const froms: number[] = [];
  const tos: number[] = [];
  return {
    add(parent, child, amount, from, to) {
      parents.push(parent);
      children.push(child);
      amounts.push(amount);
      froms.push(from);
      tos.push(to);
    },
    lines: () => ({
      parent: Int32Array.from(parents),
      child: Int32Array.from(children),
      amount: Float64Array.from(amounts),
      from: Int32Array.from(froms),
      to: Int32Array.from(tos),
    }),
  };
}
