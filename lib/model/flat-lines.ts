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
  /** Lines of one parent in a row: group g is of parent rows[g] and has the lines starts[g] to starts[g + 1] - 1. */
  readonly rows: Int32Array;
  readonly starts: Int32Array;
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
      ...grouped(parents),
      parent: Int32Array.from(parents),
      child: Int32Array.from(children),
      amount: Float64Array.from(amounts),
      from: Int32Array.from(froms),
      to: Int32Array.from(tos),
    }),
  };
}

function grouped(parents: readonly number[]): Pick<FlatLines, 'rows' | 'starts'> {
  const starts = [...parents.keys()].filter((line) => parents[line] !== parents[line - 1]);
  return {
    rows: Int32Array.from(starts, (line) => parents[line] as number),
    starts: Int32Array.from([...starts, parents.length]),
  };
}
