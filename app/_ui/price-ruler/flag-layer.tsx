import { flagPlaces } from './flag-places';
import styles from './price-ruler.module.css';
import type { RulerFlag } from './ruler-facts';
import { placeOn, type RulerScale } from './ruler-scale';

/** The widths that flags are placed for, as narrow as each drawing gets, and how many rows of them there may be. */
const WIDTHS = { wide: [1078, 3], middle: [668, 4], narrow: [288, 5] } as const;
const ROW_PX = 36;
/** From the lowest row to the axis. */
const TO_AXIS_PX = 18;

/** The flags of one width, those nearest to the price now first; a flag without room is named in the list below the ruler instead. */
export function FlagLayer({
  flags,
  scale,
  value,
  now,
  width,
}: {
  flags: readonly RulerFlag[];
  scale: RulerScale;
  value: number;
  now: number;
  width: keyof typeof WIDTHS;
}) {
  const [px, rows] = WIDTHS[width];
  const places = flagPlaces(
    flags.map((flag) => ({ at: placeOn(scale, flag.value), letters: Math.max(flag.head.length, flag.text.length) })),
    px,
    rows,
  );
  const used = places.reduce((most, place) => (place ? Math.max(most, place.row + 1) : most), 0);
  return (
    <div className={`${styles.flags} ${styles[width]}`} style={{ height: used * ROW_PX + 6 }} aria-hidden="true">
      {flags.map((flag, index) => {
        const place = places[index];
        if (!place) return null;
        const isPassed = flag.value > now ? value >= flag.value : value <= flag.value;
        return (
          <span
            key={flag.item}
            className={`${styles.flag} ${styles[place.side]} ${isPassed ? styles.passed : ''}`}
            style={{
              left: `calc(12px + (100% - 24px) * ${placeOn(scale, flag.value).toFixed(5)})`,
              height: (place.row + 1) * ROW_PX + TO_AXIS_PX,
            }}
          >
            <b>{flag.head}</b>
            <span>{flag.text}</span>
          </span>
        );
      })}
    </div>
  );
}
