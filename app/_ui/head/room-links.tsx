'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import { SHELL } from '@/lib/format/words/shell';
import styles from './head.module.css';

const ROOMS = [{ href: '/menu', name: SHELL.menu }] as const;

/** The rooms that there are, hanging from the top edge of the sheet. */
export function RoomLinks() {
  const path = usePathname();
  return (
    <nav className={styles.rooms} aria-label={SHELL.rooms}>
      {ROOMS.map(({ href, name }) => (
        <Link key={href} href={href} prefetch={false} aria-current={path.startsWith(href) ? 'page' : undefined}>
          {name}
        </Link>
      ))}
    </nav>
  );
}
