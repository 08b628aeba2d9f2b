'use client';

import { useState } from 'react';
import type { Purse } from '@/lib/format/money';
import { MODELS } from '@/lib/format/words/menu-models';
import widths from '../three-widths.module.css';
import styles from './model-strips.module.css';
import type { Strip } from './strip-facts';
import { type StripSize, StripsDrawing } from './strips-drawing';

const SIZES: readonly StripSize[] = [
  { name: 'wide', width: 972, ticks: 8 },
  { name: 'middle', width: 690, ticks: 6 },
  { name: 'narrow', width: 358, ticks: 4 },
];

/** What stands of each dish under the picture when it is followed. */
export interface FollowedDish {
  readonly item: string;
  readonly words: string;
}

/** The axes of all models, one under the other; one dish may be followed through all of them. */
export function ModelStrips({
  strips,
  dishes,
  first,
  purse,
}: {
  strips: readonly Strip[];
  dishes: readonly FollowedDish[];
  /** Which dish is followed when the page opens. */
  first: string | null;
  purse: Purse;
}) {
  const [followed, follow] = useState<string | null>(first);
  const words = dishes.find(({ item }) => item === followed)?.words ?? '';
  return (
    <>
      <label className={styles.follow}>
        {MODELS.follow}
        <select value={followed ?? ''} onChange={(event) => follow(event.target.value || null)}>
          <option value="">{MODELS.nobody}</option>
          {dishes.map(({ item }) => (
            <option key={item}>{item}</option>
          ))}
        </select>
      </label>
      <div className={widths.place} role="img" aria-label={MODELS.picture}>
        {SIZES.map((size) => (
          <div key={size.name} className={widths[size.name]}>
            <StripsDrawing strips={strips} size={size} followed={followed} purse={purse} />
          </div>
        ))}
      </div>
      <p className={styles.readOut} aria-live="polite">
        {words}
      </p>
    </>
  );
}
