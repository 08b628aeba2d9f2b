'use client';

import { useRef, useState } from 'react';
import { PICTURE_OUT } from '@/lib/format/words/picture-out';
import out from '../table-out/table-out.module.css';
import { type DrawingSize, drawingOf, drawingText, sizeOf } from './drawing-file';
import { pageFonts } from './page-fonts';
import styles from './picture-out.module.css';

/** A PNG is drawn at twice the size of the page, so that it stays sharp on paper. */
const SHARPER = 2;

/** Stands inside a figure and saves the picture that is seen of it. `file` is the name without its ending. */
export function PictureOut({ file }: { file: string }) {
  const place = useRef<HTMLParagraphElement>(null);
  const [said, say] = useState('');
  async function save(format: 'png' | 'svg') {
    const svg = drawingOf(place.current?.closest('figure') ?? document.body);
    if (!svg) return;
    try {
      const text = drawingText(svg, format === 'png' ? await pageFonts() : null);
      const drawing = new Blob([text], { type: 'image/svg+xml' });
      hand(format === 'svg' ? drawing : await pngOf(drawing, sizeOf(svg)), `${file}.${format}`);
      say('');
    } catch {
      say(PICTURE_OUT.failed);
    }
  }
  return (
    <p className={`${out.out} ${styles.place}`} ref={place}>
      <span className={out.said} role="status">
        {said}
      </span>
      <span className="unseen">{PICTURE_OUT.name}</span>
      {(['png', 'svg'] as const).map((format) => (
        <button key={format} type="button" onClick={() => save(format)}>
          {PICTURE_OUT[format]}
        </button>
      ))}
    </p>
  );
}

async function pngOf(drawing: Blob, { width, height }: DrawingSize): Promise<Blob> {
  const image = new Image();
  const address = URL.createObjectURL(drawing);
  try {
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = width * SHARPER;
    canvas.height = height * SHARPER;
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) =>
      canvas.toBlob((png) => (png ? resolve(png) : reject(new Error('no picture'))), 'image/png'),
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** Gives a file to whoever looks at the page. */
function hand(blob: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href));
}
