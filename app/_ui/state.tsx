import type { ReactNode } from 'react';
import type { StateWords } from '@/lib/format/words/shell';
import styles from './state.module.css';

/** What kind of state it is decides the rule above it: nothing there yet, failed, or not for the asker. */
export type StateKind = 'empty' | 'failed' | 'denied';

/** A state of a page in words: what is missing or failed, and the one thing to do. */
export function State({ kind, words, children }: { kind: StateKind; words: StateWords; children?: ReactNode }) {
  return (
    <section className={`${styles.state} ${styles[kind]}`} role={kind === 'failed' ? 'alert' : undefined}>
      <h2>{words.title}</h2>
      <p>{words.text}</p>
      {words.command && (
        <p>
          <code className={styles.command}>{words.command}</code>
        </p>
      )}
      {children && <div className={styles.actions}>{children}</div>}
    </section>
  );
}
