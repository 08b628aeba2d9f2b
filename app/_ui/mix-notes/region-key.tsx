import { NOTES } from '@/lib/format/words/mix-notes';
import { markPath } from '../mark-shape';
import styles from './mix-notes.module.css';

/** The key to the regions: one that lies clear, one that crosses a line, which may be its own between the two dashed ones. */
export function RegionKey({ hasOwnLines }: { hasOwnLines: boolean }) {
  const doubtful = hasOwnLines ? NOTES.doubtfulOwn : NOTES.doubtful;
  return (
    <svg
      className={styles.key}
      width="288"
      height="74"
      viewBox="0 0 288 74"
      role="img"
      aria-label={`${NOTES.settled}, ${doubtful}`}
    >
      <defs>
        <pattern id="key-hatch" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line className={styles.hatch} x1="0" y1="0" x2="0" y2="4" />
        </pattern>
        <clipPath id="key-beyond">
          <rect x="206" y="0" width="82" height="60" />
        </clipPath>
      </defs>
      <ellipse className={styles.settled} cx="62" cy="26" rx="42" ry="14" />
      <path className={styles.mark} transform="translate(62 26)" d={markPath('square')} />
      <ellipse className={styles.region} cx="206" cy="26" rx="56" ry="17" />
      <ellipse cx="206" cy="26" rx="56" ry="17" fill="url(#key-hatch)" clipPath="url(#key-beyond)" />
      {hasOwnLines ? (
        <>
          <path className={styles.bandLine} d="M140 2V52M272 2V52" />
          <line className={styles.line} x1="206" x2="206" y1="5" y2="47" />
        </>
      ) : (
        <line className={styles.line} x1="206" x2="206" y1="2" y2="52" />
      )}
      <path className={styles.hollow} transform="translate(188 26)" d={markPath('square')} />
      <text x="62" y="68" textAnchor="middle">
        {NOTES.settled}
      </text>
      <text x="206" y="68" textAnchor="middle">
        {doubtful}
      </text>
    </svg>
  );
}
