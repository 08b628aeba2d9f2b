'use client';

import { failedWords } from '@/lib/format/words/shell';
import button from '../../_ui/button.module.css';
import { State } from '../../_ui/state';

/** What failed, that nothing was changed, and a reference that the log holds too. */
export default function MenuFailed({ error, reset }: { error: Error & { digest?: string }; reset: () => void }) {
  const words = failedWords(error.digest);
  return (
    <main id="main" className="wrap" tabIndex={-1}>
      <h1 className="unseen">{words.title}</h1>
      <State kind="failed" words={words}>
        <button type="button" className={`${button.button} ${button.main}`} onClick={reset}>
          {words.action}
        </button>
      </State>
    </main>
  );
}
