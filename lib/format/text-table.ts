import { terminalText } from './terminal-text';

export interface TextColumn {
  readonly head: string;
  /** Figures stand at the right, words at the left. */
  readonly side: 'left' | 'right';
}

/** A table for a terminal: columns as wide as their widest cell, a rule under the head. No cell breaks out of its row. */
export function textTable(columns: readonly TextColumn[], cells: readonly (readonly string[])[]): string {
  const rows = cells.map((row) => row.map(terminalText));
  const widths = columns.map(({ head }, at) => Math.max(head.length, ...rows.map((row) => (row[at] ?? '').length)));
  const line = (row: readonly string[]) =>
    columns
      .map(({ side }, at) => {
        const cell = row[at] ?? '';
        const width = widths[at] ?? 0;
        return side === 'left' ? cell.padEnd(width) : cell.padStart(width);
      })
      .join('  ')
      .trimEnd();
  const rule = widths.map((width) => '-'.repeat(width));
  return `${[columns.map(({ head }) => head), rule, ...rows].map(line).join('\n')}\n`;
}
