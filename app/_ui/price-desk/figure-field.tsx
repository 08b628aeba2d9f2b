'use client';

import { useId, useState } from 'react';
import field from '../field.module.css';

/** What somebody typed as a number; a comma may stand for the point, and the typographer's minus for the hyphen. */
export function typedNumber(text: string): number | null {
  const plain = text
    .replaceAll(/\s/g, '')
    .replace('\u2212', '-')
    .replace(/,(?=\d{1,4}$)/, '.')
    .replaceAll(',', '');
  return /^[+-]?\d{1,9}(\.\d{1,9})?$/.test(plain) ? Number(plain) : null;
}

/** A figure that is typed: it counts as soon as it can be read, and says how it is written where it cannot. */
export function FigureField({
  label,
  unit,
  text,
  wrong,
  onFigure,
}: {
  label: string;
  unit: string;
  /** The figure as it stands. */
  text: string;
  /** What is said of what cannot be read. */
  wrong: string;
  onFigure: (value: number) => void;
}) {
  const [draft, setDraft] = useState<string | null>(null);
  const id = useId();
  const isWrong = draft !== null && draft.trim() !== '' && typedNumber(draft) === null;
  return (
    <label className={`${field.field} ${isWrong ? field.bad : ''}`}>
      {label}
      <span className={field.box}>
        <input
          className={field.number}
          inputMode="decimal"
          autoComplete="off"
          value={draft ?? text}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? id : undefined}
          onChange={(event) => {
            setDraft(event.currentTarget.value);
            const value = typedNumber(event.currentTarget.value);
            if (value !== null) onFigure(value);
          }}
          onBlur={() => setDraft(null)}
        />
        <span className={field.unit}>{unit}</span>
      </span>
      {isWrong && (
        <span className={field.why} id={id}>
          {wrong}
        </span>
      )}
    </label>
  );
}
