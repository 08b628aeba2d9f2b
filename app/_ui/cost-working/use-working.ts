import { useCallback, useEffect, useState } from 'react';
import type { DishCostAnswer } from '@/lib/answers/dish-cost-shape';
import { WORKING } from '@/lib/format/words/cost-working';

/** Where the reading of a working stands. */
export type Reading =
  | { readonly stands: 'reading' }
  | { readonly stands: 'failed'; readonly why: string }
  | { readonly stands: 'read'; readonly answer: DishCostAnswer };

/** Reads the working at an address, as soon as it is shown and again when asked to. */
export function useWorking(href: string): readonly [Reading, () => void] {
  const [reading, setReading] = useState<Reading>({ stands: 'reading' });
  const [attempt, setAttempt] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: every attempt reads anew
  useEffect(() => {
    const stop = new AbortController();
    setReading({ stands: 'reading' });
    read(href, stop.signal).then(
      (found) => setReading(found),
      () => {
        if (!stop.signal.aborted) setReading({ stands: 'failed', why: WORKING.failed });
      },
    );
    return () => stop.abort();
  }, [href, attempt]);
  return [reading, useCallback(() => setAttempt((count) => count + 1), [])];
}

async function read(href: string, signal: AbortSignal): Promise<Reading> {
  const response = await fetch(href, { signal });
  const body: unknown = await response.json();
  if (response.ok) return { stands: 'read', answer: body as DishCostAnswer };
  const { detail } = body as { readonly detail?: string };
  return { stands: 'failed', why: detail ?? WORKING.failed };
}
