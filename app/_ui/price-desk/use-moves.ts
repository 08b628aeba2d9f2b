'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import { type Moves, movesOf, movesQuery, readableQuery } from './moves';

/** While a slider moves the address is written once in so many milliseconds: browsers refuse more. */
const ADDRESS_MS = 200;

const OURS = ['price', 'at'];

/** The address as it stands, with other moved prices in it. */
function addressOf(moves: Moves): string {
  const kept = [...new URLSearchParams(window.location.search)].filter(([name]) => !OURS.includes(name));
  return `${window.location.pathname}?${readableQuery([...kept, ...movesQuery(moves)])}`;
}

/**
 * The moved prices, kept in the address, so that it opens the same figures again. What is dragged replaces the address; what is chosen,
 * added or taken back is a step that the browser's back undoes.
 */
export function useMoves(first: Moves): {
  readonly moves: Moves;
  readonly slide: (moves: Moves) => void;
  readonly go: (moves: Moves) => void;
} {
  const [moves, setMoves] = useState(first);
  const waiting = useRef<{ readonly moves: Moves; readonly timer: ReturnType<typeof setTimeout> } | null>(null);

  const write = useCallback(() => {
    if (!waiting.current) return;
    clearTimeout(waiting.current.timer);
    window.history.replaceState(null, '', addressOf(waiting.current.moves));
    waiting.current = null;
  }, []);

  const slide = useCallback(
    (next: Moves) => {
      setMoves(next);
      if (waiting.current) clearTimeout(waiting.current.timer);
      waiting.current = { moves: next, timer: setTimeout(write, ADDRESS_MS) };
    },
    [write],
  );

  const go = useCallback(
    (next: Moves) => {
      write();
      setMoves(next);
      window.history.pushState(null, '', addressOf(next));
    },
    [write],
  );

  useEffect(() => {
    const [target] = first.list;
    const back = (): void => {
      const query = new URLSearchParams(window.location.search);
      if (target) setMoves(movesOf(query.getAll('price'), query.get('at'), target.target).moves);
    };
    window.addEventListener('popstate', back);
    return () => {
      window.removeEventListener('popstate', back);
      write();
    };
  }, [first, write]);

  return { moves, slide, go };
}
