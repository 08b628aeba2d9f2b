import { PLANE } from '@/lib/format/words/mix-plane';
import { Mark } from './mark';
import type { MarkShape } from './mark-shape';
import styles from './section-key.module.css';

/** Which shape stands for which section; nothing where no section has a name. */
export function SectionKey({ shapes }: { shapes: readonly (readonly [string | null, MarkShape])[] }) {
  if (shapes.every(([section]) => section === null)) return null;
  return (
    <ul className={styles.key} aria-label={PLANE.sections}>
      {shapes.map(([section, shape]) => (
        <li key={section ?? ''}>
          <Mark shape={shape} hollow={false} /> {section ?? PLANE.noSection}
        </li>
      ))}
    </ul>
  );
}
