import type { Day, DayRange } from '../core/days';

/** A period cut where anything that a cost hangs on changes: between two cuts every day costs the same. */
export interface Segments {
  /** First day of each segment, and the day after the last one: count + 1 days. */
  readonly cuts: readonly Day[];
  readonly count: number;
  /** The segment of each day of the period, by days since its first. */
  readonly ofDay: Int32Array;
}

/** The range cut at those of the days that lie inside it. */
export function segmentsOf(range: DayRange, changes: Iterable<Day>): Segments {
  const inside = new Set([...changes].filter((day) => day > range.from && day < range.to));
  const empty = range.to <= range.from;
  const starts = empty ? [] : [range.from, ...inside].sort((a, b) => a - b);
  const cuts = [...starts, range.to];
  const ofDay = new Int32Array(empty ? 0 : range.to - range.from);
  starts.forEach((from, segment) => {
    ofDay.fill(segment, from - range.from, (cuts[segment + 1] as Day) - range.from);
  });
  return { cuts, count: starts.length, ofDay };
}

/** The segment of a day of the period. A day outside it is a bug. */
export function segmentOf(segments: Segments, day: Day): number {
  const segment = segments.ofDay[day - (segments.cuts[0] as Day)];
  if (segment === undefined) throw new RangeError(`day ${day} is outside the period`);
  return segment;
}

/** Some segments in a row: from, up to but without to. */
export interface SegmentRange {
  readonly from: number;
  readonly to: number;
}

/** The one of some spans that holds in a segment, or null. */
export function inSegment<Span extends SegmentRange>(spans: readonly Span[], segment: number): Span | null {
  for (const span of spans) if (segment >= span.from && segment < span.to) return span;
  return null;
}

/** The segments that some days of the period make up, where those days start and end at cuts. */
export function segmentsWithin(segments: Segments, days: DayRange): SegmentRange {
  const last = segments.cuts[segments.count] as Day;
  return { from: segmentOf(segments, days.from), to: days.to >= last ? segments.count : segmentOf(segments, days.to) };
}
