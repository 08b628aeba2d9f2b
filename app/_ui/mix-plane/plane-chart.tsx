'use client';

import { useMemo } from 'react';
import { ScatterChart } from 'recharts';
import { marginFigures, planeAxes } from './plane-axes';
import type { PlaneChoice } from './plane-choice';
import { planeDomain } from './plane-domain';
import { PlaneDrawing } from './plane-drawing';
import type { PlaneFacts } from './plane-mark';
import { type PlaneSize, withRoomFor } from './plane-size';
import { useMeasuredText } from './use-measured-text';

/** One drawing of the plane, for one width. The chart brings scales, axes and plot area; the rest is drawn here. */
export default function PlaneChart({
  facts,
  size: drawnFor,
  choice,
}: {
  facts: PlaneFacts;
  size: PlaneSize;
  choice: PlaneChoice | null;
}) {
  const domain = useMemo(() => planeDomain(facts), [facts]);
  const size = useMemo(() => {
    const figures = marginFigures(domain, drawnFor, facts.locale);
    const { margin } = facts;
    return withRoomFor(
      drawnFor,
      margin && !drawnFor.namesMargin ? [...figures, margin.atAxis] : figures,
      margin ? margin.words : [],
    );
  }, [domain, drawnFor, facts]);
  const measured = useMeasuredText(size.labelPx);
  return (
    <ScatterChart
      width={size.width}
      height={size.height}
      margin={{ top: size.top, right: size.right, bottom: 0, left: 0 }}
      style={{ width: '100%', height: 'auto' }}
      accessibilityLayer={false}
      tabIndex={-1}
    >
      {planeAxes(domain, size, facts.locale, size.namesMargin ? null : (facts.margin?.value ?? null))}
      <PlaneDrawing facts={facts} domain={domain} size={size} measured={measured} choice={choice} />
    </ScatterChart>
  );
}
