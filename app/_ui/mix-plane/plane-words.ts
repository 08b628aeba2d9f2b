import { PLANE } from '@/lib/format/words/mix-plane';
import { overlap } from './label-clashes';
import type { DrawnMark, Scales } from './plane-layout';
import type { PlaneFacts } from './plane-mark';
import type { PlaneSize } from './plane-size';
import type { Box } from './region';

/** The width of a text as it will be drawn, in px. */
export type MeasuredText = (text: string, bold: boolean) => number;

/** A word in the plot and where it stands, in px. */
export interface DrawnWord {
  readonly key: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly kind: 'class' | 'line';
}

const CLASS_PX = 17;
/** How far a class word may go from its corner, along and into the plot, to cover no mark; px. */
const CORNER_STEPS = [
  [0, 0],
  [24, 0],
  [0, 22],
  [48, 0],
  [24, 22],
  [80, 0],
] as const;

/** Between two texts in one line, px. */
const APART = 14;
const BELOW = 4;

/** Height of the line under the axis, which names it, and holds the name of the upright line where the plot has no place for it. */
export function axisNameY(size: Pick<PlaneSize, 'height'>): number {
  return size.height - BELOW;
}

/** Where the name of the share axis begins: under the axis' own beginning, or further left where another name shares its line. */
export function axisNameX(words: readonly DrawnWord[], size: PlaneSize, plot: Box, measured: MeasuredText): number {
  const beside = words.find(({ kind, y }) => kind === 'line' && y === axisNameY(size));
  if (!beside) return plot.x;
  return Math.max(0, Math.min(plot.x, wordBox(beside, measured).x - APART - measured(PLANE.shareAxis, false)));
}

/**
 * The words that stand in the plot: the classes in the corners, and the name of the upright line where it covers no mark and no class.
 * Where there is no such place, and in the narrow drawing, whose plot the names of dishes fill, it stands under the axis at the right.
 */
export function plotWords(
  { popularity, margin }: PlaneFacts,
  marks: readonly DrawnMark[],
  { x }: Scales,
  plot: Box,
  size: Pick<PlaneSize, 'width' | 'height' | 'namesMargin'>,
  measured: MeasuredText,
): readonly DrawnWord[] {
  if (!popularity || !margin) return [];
  const right = plot.x + plot.width;
  const bottom = plot.y + plot.height;
  const taken = marks.map(markBox);
  const corner = (text: string, isLeft: boolean, isTop: boolean): DrawnWord => {
    const place = (along: number, up: number): DrawnWord => ({
      key: text,
      text,
      x: isLeft ? plot.x + 4 + along : right - along,
      y: isTop ? plot.y + CLASS_PX + up : bottom - 6 - up,
      anchor: isLeft ? 'start' : 'end',
      kind: 'class',
    });
    const isFree = (word: DrawnWord) => !taken.some((box) => overlap(wordBox(word, measured), box, 0));
    return CORNER_STEPS.map(([along, up]) => place(along, up)).find(isFree) ?? place(0, 0);
  };
  const corners = [
    corner('puzzle', true, true),
    corner('star', false, true),
    corner('dog', true, false),
    corner('plowhorse', false, false),
  ];
  const heights = [bottom - 6, bottom - 28, plot.y + 14, plot.y + 36, bottom - 50, plot.y + 58];
  const places = heights.flatMap((y): DrawnWord[] => [
    { key: 'popular', text: popularity.words, x: x(popularity.high) + 6, y, anchor: 'start', kind: 'line' },
    { key: 'popular', text: popularity.words, x: x(popularity.low) - 6, y, anchor: 'end', kind: 'line' },
  ]);
  const blocked = [...corners.map((word) => wordBox(word, measured)), ...taken];
  const isFree = (word: DrawnWord) => {
    const box = wordBox(word, measured);
    return box.x >= plot.x && box.x + box.width <= right && !blocked.some((other) => overlap(box, other, 4));
  };
  const room = size.width - plot.x - measured(PLANE.shareAxis, false) - APART;
  const under: DrawnWord = {
    key: 'popular',
    text: measured(popularity.words, false) <= room ? popularity.words : popularity.short,
    x: size.width,
    y: axisNameY(size),
    anchor: 'end',
    kind: 'line',
  };
  const inPlot = size.namesMargin ? places.find(isFree) : undefined;
  return [inPlot ?? under, ...corners];
}

function markBox({ x, y }: DrawnMark): Box {
  return { x: x - 7, y: y - 7, width: 14, height: 14 };
}

/** The place that a word takes, in px. */
export function wordBox(word: DrawnWord, measured: MeasuredText): Box {
  const width = word.kind === 'class' ? word.text.length * 8.4 : measured(word.text, false);
  const x = word.anchor === 'end' ? word.x - width : word.x;
  return { x, y: word.y - 12, width, height: 15 };
}
