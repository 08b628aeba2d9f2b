/** Rows by key, each group in the order of the rows. */
export function grouped<Row, Key>(rows: Iterable<Row>, keyOf: (row: Row) => Key): Map<Key, Row[]> {
  const groups = new Map<Key, Row[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const group = groups.get(key);
    if (group) group.push(row);
    else groups.set(key, [row]);
  }
  return groups;
}

/** The rows in ascending order; the same array where they are so already. */
export function ascending<Row>(rows: readonly Row[], compare: (a: Row, b: Row) => number): readonly Row[] {
  const inOrder = rows.every((row, index) => {
    const before = rows[index - 1];
    return before === undefined || compare(before, row) <= 0;
  });
  return inOrder ? rows : [...rows].sort(compare);
}

/** Text by UTF-16 code units: the same on every machine, whatever its locale. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
