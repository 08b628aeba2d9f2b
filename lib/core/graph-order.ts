/**
 * A graph of n nodes as two arrays: the children of node i are children[starts[i]] .. children[starts[i + 1] - 1].
 * starts has n + 1 entries.
 */
export interface Graph {
  readonly starts: Int32Array;
  readonly children: Int32Array;
}

export interface GraphOrder {
  /** Every node, each after all its children, except inside a knot. */
  readonly order: Int32Array;
  /** The sets of nodes that lead back to themselves; none where the graph has no cycle. */
  readonly knots: readonly (readonly number[])[];
}

/**
 * Children first. Nodes that lead back to themselves are a value, not an error.
 *
 * Tarjan (1972), "Depth-first search and linear graph algorithms": strongly connected components come out children first, so that
 * one walk gives both the order and the cycles. Written without recursion, since a chain may be thousands long.
 */
export function childrenFirst(graph: Graph): GraphOrder {
  const count = graph.starts.length - 1;
  const order = new Int32Array(count);
  const knots: number[][] = [];
  const found = new Int32Array(count).fill(-1);
  const lowest = new Int32Array(count);
  const waiting = new Uint8Array(count);
  const next = Int32Array.from(graph.starts);
  const stack: number[] = [];
  let step = 0;
  let placed = 0;

  const enter = (node: number, path: number[]): void => {
    found[node] = lowest[node] = step++;
    waiting[node] = 1;
    stack.push(node);
    path.push(node);
  };
  const lower = (node: number, to: number): void => {
    if (to < (lowest[node] as number)) lowest[node] = to;
  };
  const leave = (node: number): void => {
    if (lowest[node] !== found[node]) return;
    const members: number[] = [];
    for (let member = -1; member !== node; ) {
      member = stack.pop() as number;
      waiting[member] = 0;
      members.push(member);
      order[placed++] = member;
    }
    if (members.length > 1 || leadsTo(graph, node, node)) knots.push(members.sort((a, b) => a - b));
  };

  for (let root = 0; root < count; root++) {
    if (found[root] !== -1) continue;
    const path: number[] = [];
    enter(root, path);
    for (let node = path.at(-1); node !== undefined; node = path.at(-1)) {
      const edge = next[node] as number;
      if (edge < (graph.starts[node + 1] as number)) {
        next[node] = edge + 1;
        const child = graph.children[edge] as number;
        if (found[child] === -1) enter(child, path);
        else if (waiting[child]) lower(node, found[child] as number);
      } else {
        path.pop();
        const parent = path.at(-1);
        if (parent !== undefined) lower(parent, lowest[node] as number);
        leave(node);
      }
    }
  }
  return { order, knots };
}

function leadsTo(graph: Graph, node: number, child: number): boolean {
  return graph.children.subarray(graph.starts[node], graph.starts[node + 1]).includes(child);
}

/** A shortest loop through the first node of a knot, that node at both ends: breadth first inside the knot. */
export function loopOf(graph: Graph, knot: readonly number[]): readonly number[] {
  const first = knot[0] as number;
  const inside = new Set(knot);
  const cameFrom = new Map<number, number>();
  const queue = [first];
  for (const node of queue) {
    for (const child of graph.children.subarray(graph.starts[node], graph.starts[node + 1])) {
      if (child === first) {
        const loop = [first];
        for (let back = node; back !== first; back = cameFrom.get(back) as number) loop.unshift(back);
        return [first, ...loop];
      }
      if (inside.has(child) && !cameFrom.has(child)) {
        cameFrom.set(child, node);
        queue.push(child);
      }
    }
  }
  return [];
}
