import { connection } from 'next/server';
import { type ReactNode, Suspense } from 'react';
import { venuesAnswer } from '@/lib/answers/venues';
import { SHELL } from '@/lib/format/words/shell';
import { currentAsker } from '@/lib/session/asker';
import styles from '../_ui/head/head.module.css';
import { RoomLinks } from '../_ui/head/room-links';
import { VenueName } from '../_ui/head/venue-name';

/** The shell of every room: the way past it, the name of the program, the rooms, whose figures these are. */
export default function Rooms({ children }: { children: ReactNode }) {
  return (
    <>
      <a className={styles.skip} href="#main">
        {SHELL.skip}
      </a>
      <header className={`wrap ${styles.head}`}>
        <span className={styles.program}>{SHELL.program}</span>
        <RoomLinks />
        <div className={styles.venue}>
          <Suspense>
            <Venues />
          </Suspense>
        </div>
      </header>
      {children}
    </>
  );
}

async function Venues() {
  await connection();
  const { venues } = await venuesAnswer(currentAsker());
  return <VenueName names={venues.map(({ name }) => name)} />;
}
