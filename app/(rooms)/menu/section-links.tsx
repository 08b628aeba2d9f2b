import type { Route } from 'next';
import Link from 'next/link';
import { byText } from '@/lib/core/grouped';
import { SHELL } from '@/lib/format/words/shell';
import { type Asked, menuHref, mixOf } from './asked';
import styles from './menu.module.css';

/** The whole menu and its sections, as a line of words; nothing where there is only one section. `hrefOf` leads to the same view of another. */
export async function SectionLinks({ asked, hrefOf = menuHref }: { asked: Asked; hrefOf?: (asked: Asked) => Route }) {
  const whole = await mixOf(asked.venue, asked.month, null);
  if (!whole.ok) return null;
  const sections = [...new Set(whole.answer.items.flatMap(({ section }) => section ?? []))].sort(byText);
  if (sections.length < 2 && asked.section === null) return <div className={styles.sections} />;
  return (
    <nav className={styles.sections} aria-label={SHELL.sections}>
      {[null, ...sections].map((section) => (
        <Link
          key={section ?? ''}
          href={hrefOf({ ...asked, section })}
          prefetch={false}
          aria-current={section === asked.section ? 'page' : undefined}
        >
          {section ?? SHELL.wholeMenu}
        </Link>
      ))}
    </nav>
  );
}
