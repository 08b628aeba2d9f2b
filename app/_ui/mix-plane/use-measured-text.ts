import { useEffect, useMemo, useState } from 'react';
import type { MeasuredText } from './plane-words';

/**
 * Measures words as they will be drawn, once the typeface is there; null until then, since widths of another face would place labels
 * wrongly.
 */
export function useMeasuredText(px: number): MeasuredText | null {
  const [family, setFamily] = useState<string | null>(null);
  useEffect(() => {
    let gone = false;
    const own = getComputedStyle(document.body).fontFamily;
    const faces = ['400', '650'].map((weight) => document.fonts.load(`${weight} ${px}px ${own}`));
    Promise.allSettled(faces).then(() => {
      if (!gone) setFamily(own);
    });
    return () => {
      gone = true;
    };
  }, [px]);
  return useMemo(() => {
    const pen = family === null ? null : document.createElement('canvas').getContext('2d');
    if (!pen) return null;
    return (text, bold) => {
      pen.font = `${bold ? 650 : 400} ${px}px ${family}`;
      return pen.measureText(text).width;
    };
  }, [family, px]);
}
