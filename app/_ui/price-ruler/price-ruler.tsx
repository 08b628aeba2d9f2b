'use client';

import { FlagLayer } from './flag-layer';
import styles from './price-ruler.module.css';
import type { RulerFacts } from './ruler-facts';
import { placeOn, type RulerScale } from './ruler-scale';

/** A place along the axis, which begins half a thumb inside the drawing. */
function along(scale: RulerScale, value: number): string {
  return `calc(12px + (100% - 24px) * ${placeOn(scale, value).toFixed(5)})`;
}

const percent = (place: number): string => `${(place * 100).toFixed(3)}%`;

/** So near that the words under the two would touch. */
const NEAR = 0.22;

/**
 * The axis of a price as a slider. Flags above it are turning prices, the grey band is what was paid, the tick is the price now and the
 * thumb the new one. The control is the browser's own: arrows, Page Up and Down, Home and End, pointer and touch.
 */
export function PriceRuler({
  facts,
  value,
  valueText,
  spoken,
  onMove,
}: {
  facts: RulerFacts;
  value: number;
  valueText: string;
  spoken: string;
  onMove: (value: number) => void;
}) {
  const { scale, now, paid, dearAbove } = facts;
  const from = placeOn(scale, now);
  const to = placeOn(scale, value);
  const side = to >= from ? 1 : -1;
  const isNear = Math.abs(to - from) < NEAR;
  const tone = to === from ? '' : to > from === dearAbove ? styles.dear : styles.spare;
  return (
    <div className={styles.ruler}>
      {(['wide', 'middle', 'narrow'] as const).map((width) => (
        <FlagLayer key={width} flags={facts.flags} scale={scale} value={value} now={now} width={width} />
      ))}
      <div className={styles.axis}>
        {paid && (
          <span
            className={styles.paid}
            style={{
              left: along(scale, paid[0]),
              right: `calc(12px + (100% - 24px) * ${(1 - placeOn(scale, paid[1])).toFixed(5)})`,
            }}
          />
        )}
        <span
          className={`${styles.along} ${styles.moved} ${tone}`}
          style={{ transform: `translateX(${percent(Math.min(from, to))}) scaleX(${Math.abs(to - from).toFixed(5)})` }}
        />
        <span className={styles.line} />
        {scale.ticks.map((tick, index) => (
          <span key={tick} className={styles.tick} style={{ left: along(scale, tick) }}>
            <span aria-hidden="true">{facts.tickTexts[index]}</span>
          </span>
        ))}
        <span className={styles.now} style={{ left: along(scale, now) }} />
        <span className={styles.along} style={{ transform: `translateX(${percent(to)})` }}>
          <span className={styles.thumb} />
        </span>
        <input
          type="range"
          className={styles.input}
          aria-label={facts.label}
          aria-valuetext={spoken}
          min={scale.low}
          max={scale.high}
          step={scale.step}
          value={value}
          onChange={(event) => onMove(event.currentTarget.valueAsNumber)}
        />
      </div>
      <div className={styles.under} aria-hidden="true">
        <span
          className={isNear ? (side > 0 ? styles.toLeft : styles.toRight) : undefined}
          style={{ left: along(scale, now) }}
        >
          {facts.nowText}
        </span>
        {to !== from && (
          <span className={styles.along} style={{ transform: `translateX(${percent(to)})` }}>
            <span className={`${styles.new} ${tone} ${isNear ? (side > 0 ? styles.toRight : styles.toLeft) : ''}`}>
              {valueText}
            </span>
          </span>
        )}
      </div>
    </div>
  );
}
