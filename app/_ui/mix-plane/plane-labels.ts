import type { Surroundings } from './label-clashes';
import type { Label, Place } from './label-places';
import { placeLabels } from './place-labels';
import type { DrawnMark, Scales } from './plane-layout';
import type { PlaneFacts } from './plane-mark';
import type { PlaneSize } from './plane-size';
import { type DrawnWord, type MeasuredText, wordBox } from './plane-words';
import type { Box } from './region';

const LINE_HEIGHT = 16;

/** A place for each mark's label, or null where there is no room for it. */
export function placedLabels(
  drawn: readonly DrawnMark[],
  facts: PlaneFacts,
  { x, y }: Scales,
  plot: Box,
  words: readonly DrawnWord[],
  size: PlaneSize,
  measured: MeasuredText,
): readonly (Place | null)[] {
  const labels = drawn.map(
    ({ mark, x: markX, y: markY, region }): Label => ({
      x: markX,
      y: markY,
      width: measured(mark.label, mark.doubtful) + 2,
      height: LINE_HEIGHT,
      first: mark.doubtful,
      clearX: mark.doubtful && region ? region.rx : 0,
      clearY: mark.doubtful && region ? region.ry : 0,
    }),
  );
  const { popularity, margin } = facts;
  const marginWords: Box[] =
    margin && size.namesMargin
      ? [{ x: plot.x + plot.width + 6, y: y(margin.value) - 15, width: size.right, height: 34 }]
      : [];
  const around: Surroundings = {
    bounds: { ...plot, width: size.width - plot.x - 2 },
    marks: drawn,
    words: [...words.map((word) => wordBox(word, measured)), ...marginWords],
    uprights: popularity ? [...new Set([popularity.low, popularity.high])].map(x) : [],
    levels: margin ? [y(margin.value)] : [],
    regions: drawn.flatMap(({ mark, region }) => (mark.doubtful && region ? [region] : [])),
  };
  return placeLabels(labels, around);
}
