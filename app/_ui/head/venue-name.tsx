'use client';

import Link from 'next/link';
import { usePathname, useSearchParams } from 'next/navigation';
import { SHELL } from '@/lib/format/words/shell';
import styles from './head.module.css';

/** Whose figures these are; where there are several venues, the others are links. */
export function VenueName({ names }: { names: readonly string[] }) {
  const path = usePathname();
  const asked = useSearchParams().get('venue');
  if (names.length < 2) return <b>{names[0]}</b>;
  return (
    <nav className={styles.venues} aria-label={SHELL.venues}>
      {names.map((name) =>
        name === asked ? (
          <b key={name} aria-current="true">
            {name}
          </b>
        ) : (
          <Link key={name} href={{ pathname: path, query: { venue: name } }} prefetch={false}>
            {name}
          </Link>
        ),
      )}
    </nav>
  );
}
