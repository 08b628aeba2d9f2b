'use client';

import { useEffect, useState } from 'react';
import { type Phrase, plainText } from '@/lib/format/phrase';

const REST_MS = 700;

/** The sentence for ears, when it has come to rest: a slider would else talk without end. */
export function SpokenSentence({ phrase }: { phrase: Phrase }) {
  const text = plainText(phrase);
  const [said, say] = useState('');
  const [first] = useState(text);
  useEffect(() => {
    const timer = setTimeout(() => say(text), REST_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <p className="unseen" role="status">
      {said === first ? '' : said}
    </p>
  );
}
