import { PanelDrawing } from './panel-drawing';
import { BAR_SHARE, EVENT_ROW, type PanelSize, SLOT_NAMES, WIDEST_BAR } from './panel-size';
import { lastSlots, type SlotFacts } from './slot-facts';
import styles from './slot-panels.module.css';

/** So few slots are all named. */
const FEW = 7;

/** The panels for one width, one under the other on one axis, with what happened and the names of the slots beneath. */
export function PanelsDrawing({ facts: all, size }: { facts: SlotFacts; size: PanelSize }) {
  const facts = lastSlots(all, size.slots);
  const { slots, panels, events } = facts;
  const slotWidth = (size.width - size.left) / Math.max(1, slots.length);
  const slotX = (at: number) => size.left + slotWidth * (at + 0.5);
  const barWidth = Math.min(WIDEST_BAR, slotWidth * BAR_SHARE);
  const step = size.head + size.panel;
  const floor = panels.length * step;
  const eventsTop = floor + 10;
  const namesTop = eventsTop + events.length * EVENT_ROW;
  const height = namesTop + SLOT_NAMES;
  const isNamed = (at: number) => (slots.length - 1 - at) % size.named === 0 || slots.length <= FEW;
  /** A word for below a slot that is not named stands under the next one that is. */
  const belowAt = (at: number) => slots[at]?.below ?? (isNamed(at - 1) ? null : (slots[at - 1]?.below ?? null));
  const happened = slots.flatMap((_, at) => (events.some(({ words }) => words[at] !== '') ? [slotX(at)] : []));
  return (
    <svg
      className={styles.drawing}
      viewBox={`0 0 ${size.width} ${height}`}
      width={size.width}
      height={height}
      aria-hidden="true"
    >
      <path className={styles.happened} d={happened.map((x) => `M${x} ${size.head}V${floor}`).join('')} />
      {panels.map((panel, at) => (
        <g key={panel.key} transform={`translate(0 ${at * step + size.head})`}>
          <PanelDrawing
            panel={panel}
            width={size.width}
            height={size.panel}
            slotX={slotX}
            slotWidth={slotWidth}
            barWidth={barWidth}
          />
        </g>
      ))}
      {events.map(({ key, name, words }, row) => (
        <g key={key}>
          <text className={styles.tick} x="0" y={eventsTop + EVENT_ROW * (row + 0.75)}>
            {name}
          </text>
          {words.map((word, at) => (
            <text
              key={slots[at]?.key ?? at}
              className={styles.event}
              x={slotX(at)}
              y={eventsTop + EVENT_ROW * (row + 0.75)}
              textAnchor="middle"
            >
              {word}
            </text>
          ))}
        </g>
      ))}
      {slots.map(({ key, label }, at) => (
        <g key={key}>
          {isNamed(at) && (
            <text className={styles.slotName} x={slotX(at)} y={namesTop + 16} textAnchor="middle">
              {label}
            </text>
          )}
          {isNamed(at) && (
            <text className={styles.tick} x={slotX(at)} y={namesTop + 32} textAnchor="middle">
              {belowAt(at)}
            </text>
          )}
        </g>
      ))}
    </svg>
  );
}
