import { QUADRANT_MEANING } from '@/lib/format/words/classes';
import { NOTES } from '@/lib/format/words/mix-notes';
import styles from './mix-notes.module.css';
import { RegionKey } from './region-key';

/**
 * The key to the picture: what the regions and curves mean, and what each class says. Without resamples there are no regions; dishes
 * that were on sale on different days have lines of their own.
 */
export function HowToRead({ hasRegions, hasOwnLines }: { hasRegions: boolean; hasOwnLines: boolean }) {
  return (
    <section className={`${styles.notes} ${styles.howTo}`}>
      <h2>{NOTES.howToRead}</h2>
      {hasRegions && <RegionKey hasOwnLines={hasOwnLines} />}
      <div className={styles.reading}>
        {hasRegions && <p>{hasOwnLines ? NOTES.regionsOwn : NOTES.regions}</p>}
        {hasOwnLines && <p>{NOTES.ownLines}</p>}
        <p>{hasRegions ? NOTES.curvesAndChance : NOTES.curves}</p>
      </div>
      <dl className={styles.classes}>
        {Object.entries(QUADRANT_MEANING).map(([name, meaning]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
