import { CLASS_MEANING } from '@/lib/format/words/classes';
import { NOTES } from '@/lib/format/words/mix-notes';
import styles from './mix-notes.module.css';
import { RegionKey } from './region-key';

/** The key to the picture: what the regions and curves mean, and what each class says. Without resamples there are no regions. */
export function HowToRead({ hasRegions }: { hasRegions: boolean }) {
  return (
    <section className={`${styles.notes} ${styles.howTo}`}>
      <h2>{NOTES.howToRead}</h2>
      {hasRegions && <RegionKey />}
      <div className={styles.reading}>
        {hasRegions && <p>{NOTES.regions}</p>}
        <p>{hasRegions ? NOTES.curvesAndChance : NOTES.curves}</p>
      </div>
      <dl className={styles.classes}>
        {Object.entries(CLASS_MEANING).map(([name, meaning]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
