import type { Phrase } from '@/lib/format/phrase';

/** A sentence set in type: figures never break over a line, names of things are italic. */
export function Said({ phrase }: { phrase: Phrase }) {
  return phrase.map((part, index) => {
    const key = `${index}`;
    if (typeof part === 'string') return part;
    if ('name' in part) return <i key={key}>{part.name}</i>;
    return (
      <span key={key} className="unbroken">
        {part.figure}
      </span>
    );
  });
}
