'use client';

import { useId, useMemo } from 'react';
import { createPortal } from 'react-dom';
import { usePlotArea, useXAxisScale, useYAxisScale } from 'recharts';
import { figure } from '@/lib/format/figures';
import { contributionAxis, marginAxis, PLANE } from '@/lib/format/words/mix-plane';
import { MarkList } from './mark-list';
import styles from './mix-plane.module.css';
import type { PlaneChoice } from './plane-choice';
import type { PlaneDomain } from './plane-domain';
import { PlaneFrame } from './plane-frame';
import { placedLabels } from './plane-labels';
import { drawnCurves, drawnMarks, namedCurves } from './plane-layout';
import type { PlaneFacts } from './plane-mark';
import { PlaneMarks } from './plane-marks';
import type { PlaneSize } from './plane-size';
import { axisNameX, axisNameY, type MeasuredText, plotWords } from './plane-words';

/** Everything in the plot: curves, regions, lines, words, labels, marks. Stands inside the chart and takes its scales from it. */
export function PlaneDrawing({
  facts,
  domain,
  size,
  measured,
  choice,
}: {
  facts: PlaneFacts;
  domain: PlaneDomain;
  size: PlaneSize;
  measured: MeasuredText | null;
  choice: PlaneChoice | null;
}) {
  const plot = usePlotArea();
  const xScale = useXAxisScale();
  const yScale = useYAxisScale();
  const id = useId();
  const drawn = useMemo(() => {
    if (!plot || !xScale || !yScale) return null;
    const scales = { x: (share: number) => xScale(share) ?? 0, y: (margin: number) => yScale(margin) ?? 0 };
    const marks = drawnMarks(facts, scales, plot);
    const words = measured ? plotWords(facts, marks, scales, plot, size, measured) : [];
    const labels = measured ? placedLabels(marks, facts, scales, plot, words, size, measured) : [];
    const curves = drawnCurves(domain, facts.sold, scales, size.namesMargin ? 6 : 4);
    const names = namedCurves(curves, (level) => figure(level, facts.locale, { least: 0, most: 2 }), plot);
    const nameX = measured ? axisNameX(words, size, plot, measured) : plot.x;
    return { scales, marks, words, labels, curves, names, nameX };
  }, [plot, xScale, yScale, facts, domain, size, measured]);
  if (!plot || !drawn) return null;
  const chosen = choice?.chosen === null || choice?.chosen === undefined ? undefined : drawn.marks[choice.chosen];
  const clip = `url(#${id}-plot)`;
  return (
    <g className={styles.drawing}>
      <defs>
        <pattern id={`${id}-hatch`} width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line className={styles.hatch} x1="0" y1="0" x2="0" y2="4" />
        </pattern>
        <clipPath id={`${id}-plot`}>
          <rect x={plot.x} y={plot.y} width={plot.width} height={plot.height} />
        </clipPath>
      </defs>
      <g clipPath={clip}>
        {drawn.curves.map((curve) => (
          <path key={curve.level} className={styles.curve} d={curve.path} />
        ))}
      </g>
      <text className={styles.tick} x="0" y="12">
        {marginAxis(facts.currencySign)}
      </text>
      <text className={styles.tick} x={drawn.nameX} y={axisNameY(size)}>
        {PLANE.shareAxis}
      </text>
      <text
        className={styles.faint}
        x={size.namesMargin ? plot.x + plot.width + 8 : size.width}
        y={size.namesMargin ? plot.y - 8 : 12}
        textAnchor={size.namesMargin ? 'start' : 'end'}
      >
        {contributionAxis(facts.currencySign, !size.namesMargin)}
      </text>
      {drawn.names.map(({ level, x, name }) => (
        <text key={level} className={styles.faint} x={x} y={plot.y - 8} textAnchor="middle">
          {name}
        </text>
      ))}
      <PlaneMarks marks={drawn.marks} labels={drawn.labels} id={id} clip={clip} size={size}>
        <PlaneFrame
          facts={facts}
          marks={drawn.marks}
          scales={drawn.scales}
          plot={plot}
          size={size}
          words={drawn.words}
        />
        {chosen && (
          <g className={styles.chosen}>
            <path
              d={`M${plot.x - 6} ${chosen.y}H${chosen.x - 10}M${chosen.x} ${chosen.y + 10}V${plot.y + plot.height + 8}`}
            />
            <circle cx={chosen.x} cy={chosen.y} r="10" />
            {chosen.ownLine && (
              <path
                className={styles.chosenLine}
                d={`M${chosen.ownLine.x} ${chosen.ownLine.top}V${chosen.ownLine.bottom}`}
              />
            )}
          </g>
        )}
      </PlaneMarks>
      {choice?.over && createPortal(<MarkList marks={drawn.marks} size={size} choice={choice} />, choice.over)}
    </g>
  );
}
