/** A bar of the ribbon: where it begins and how tall it is, in px from the top of the bars. */
export interface Bar {
  readonly y: number;
  readonly height: number;
}

export interface RibbonBars {
  /** Height of the line the bars stand on, in px from the top. */
  readonly lineY: number;
  /** One a month; null where food cost is not known. */
  readonly bars: readonly (Bar | null)[];
}

const TALLEST = 34;
/** The bars never show less than this span, so that a tenth of a point does not look like much. Fraction of revenue. */
const LEAST_SPAN = 0.03;
const LEAST_BAR = 1;

/**
 * Departures of food cost from a line: above it costs more, below less. All months share one scale, and the line moves up or down to
 * use the height. Food cost and line are fractions.
 */
export function ribbonBars(foodCosts: readonly (number | null)[], line: number, height: number): RibbonBars {
  const departures = foodCosts.map((cost) => (cost === null ? null : cost - line));
  const known = departures.filter((departure) => departure !== null);
  const above = Math.max(0, ...known);
  const below = Math.max(0, ...known.map((departure) => -departure));
  const span = Math.max(above + below, LEAST_SPAN);
  const pxPerUnit = TALLEST / span;
  const free = (span - above - below) / 2;
  const lineY = (height - TALLEST) / 2 + (above + free) * pxPerUnit;
  const bars = departures.map((departure): Bar | null => {
    if (departure === null) return null;
    const tall = Math.max(LEAST_BAR, Math.abs(departure) * pxPerUnit);
    return departure >= 0 ? { y: lineY - tall, height: tall } : { y: lineY, height: tall };
  });
  return { lineY, bars };
}

/** The first of `size` months to show, out of `count`, so that the chosen one is among them and as many later ones as fit. */
export function ribbonStart(count: number, chosen: number | null, size: number): number {
  const latest = Math.max(0, count - size);
  return chosen === null ? latest : Math.min(latest, chosen);
}
