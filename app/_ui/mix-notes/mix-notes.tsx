import type { MenuMixAnswer } from '@/lib/answers/menu-mix-shape';
import { onTheLine } from '@/lib/format/words/menu-mix';
import { costNextPhrase, more, NOTES, resamplesNote, shareWords } from '@/lib/format/words/mix-notes';
import { shortNames } from '@/lib/format/words/short-names';
import { Said } from '../said';
import styles from './mix-notes.module.css';

export const MISSING_ID = 'missing';

const COST_NEXT = 3;
const ISSUES_SHOWN = 4;

/** The margin beside the picture: what is in doubt, what to cost next, what is missing. */
export function MixNotes({ mix, locale }: { mix: MenuMixAnswer; locale: string }) {
  const names = shortNames(mix.items.map(({ item }) => item));
  const doubtful = onTheLine(mix.items.map((item, index) => ({ ...item, short: names[index] ?? item.item })));
  const next = mix.costNext.slice(0, COST_NEXT);
  return (
    <aside className={styles.notes}>
      {doubtful.length > 0 && mix.resamples !== null && (
        <section>
          <h2>{NOTES.onTheLine}</h2>
          <ul className={styles.doubtful}>
            {doubtful.map((item) => (
              <li key={item.item}>
                <span className={styles.dish}>{item.short}</span>
                <span className={styles.shares}>
                  <Said phrase={shareWords(item, locale)} />
                </span>
              </li>
            ))}
          </ul>
          <p>{resamplesNote(mix.resamples, locale)}</p>
        </section>
      )}
      {next.length > 0 && (
        <section>
          <h2>{NOTES.costNext}</h2>
          <p>
            <Said phrase={costNextPhrase(next, locale)} />
          </p>
        </section>
      )}
      {mix.issues.length > 0 && <Missing issues={mix.issues} locale={locale} />}
    </aside>
  );
}

function Missing({ issues, locale }: { issues: MenuMixAnswer['issues']; locale: string }) {
  const rest = issues.slice(ISSUES_SHOWN);
  return (
    <section id={MISSING_ID} tabIndex={-1}>
      <h2>{NOTES.missing}</h2>
      <IssueList issues={issues.slice(0, ISSUES_SHOWN)} />
      {rest.length > 0 && (
        <details className={styles.more}>
          <summary>{more(rest.length, locale)}</summary>
          <IssueList issues={rest} />
        </details>
      )}
    </section>
  );
}

function IssueList({ issues }: { issues: MenuMixAnswer['issues'] }) {
  return (
    <ul className={styles.issues}>
      {issues.map((issue) => (
        <li key={`${issue.code} ${issue.about} ${issue.text}`}>{issue.text}</li>
      ))}
    </ul>
  );
}
