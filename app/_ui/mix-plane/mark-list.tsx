import { type KeyboardEvent, type PointerEvent, useId } from 'react';
import { PLANE } from '@/lib/format/words/mix-plane';
import styles from './mix-plane.module.css';
import { type Direction, markAt, nearestMark } from './nearest-mark';
import type { PlaneChoice } from './plane-choice';
import type { DrawnMark } from './plane-layout';
import type { PlaneSize } from './plane-size';

const ARROWS: Readonly<Record<string, Direction>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};

const REACH = 40;

/** Which mark a key leads to, from the chosen one: arrows by place, Home, End and the page keys by the order of the table. */
function keyedTo(key: string, marks: readonly DrawnMark[], chosen: number | null): number | null {
  const last = marks.length - 1;
  if (key === 'Home') return 0;
  if (key === 'End') return last;
  if (key === 'PageDown') return Math.min(last, (chosen ?? -1) + 1);
  if (key === 'PageUp') return Math.max(0, (chosen ?? 1) - 1);
  const direction = ARROWS[key];
  if (!direction) return null;
  return chosen === null ? 0 : (nearestMark(marks, chosen, direction) ?? chosen);
}

/**
 * The marks as a list to choose from, lying over the picture: one tab stop, arrows go to the nearest mark that way, Enter opens its page, Escape lets go,
 * pointing chooses what is nearest.
 */
export function MarkList({
  marks,
  size,
  choice,
}: {
  marks: readonly DrawnMark[];
  size: PlaneSize;
  choice: PlaneChoice;
}) {
  const id = useId();
  const { chosen, choose, open } = choice;

  function onKeyDown(event: KeyboardEvent) {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'Escape') return choose(null);
    if (event.key === 'Enter' && chosen !== null) return open(chosen);
    const next = keyedTo(event.key, marks, chosen);
    if (next === null) return;
    event.preventDefault();
    choose(next);
  }

  function onPoint(event: PointerEvent<HTMLElement>) {
    const place = event.currentTarget.getBoundingClientRect();
    const shrunk = size.width / (place.width || size.width);
    const at = { x: (event.clientX - place.left) * shrunk, y: (event.clientY - place.top) * shrunk };
    const near = markAt(marks, at, REACH);
    if (near !== null) choose(near);
  }

  return (
    <div
      className={styles.list}
      role="listbox"
      tabIndex={0}
      aria-label={PLANE.name}
      aria-activedescendant={chosen === null ? undefined : `${id}-${chosen}`}
      onKeyDown={onKeyDown}
      onFocus={() => chosen === null && choose(0)}
      onPointerMove={onPoint}
      onPointerDown={onPoint}
    >
      {marks.map(({ mark, x, y }, index) => (
        <div
          key={mark.item}
          id={`${id}-${index}`}
          className={styles.option}
          role="option"
          tabIndex={-1}
          aria-selected={index === chosen}
          style={{ left: `${(x / size.width) * 100}%`, top: `${(y / size.height) * 100}%` }}
        >
          {mark.item}
        </div>
      ))}
    </div>
  );
}
