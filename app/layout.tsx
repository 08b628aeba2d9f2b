import type { Metadata, Viewport } from 'next';
import type { ReactNode } from 'react';
import { SHELL } from '@/lib/format/words/shell';
import { typefaces } from './fonts';
import './stand-ins.css';
import './tokens.css';
import './base.css';

export const metadata: Metadata = { title: SHELL.program, description: SHELL.description };

export const viewport: Viewport = { colorScheme: 'light dark' };

export default function Sheet({ children }: { children: ReactNode }) {
  return (
    <html lang="en" className={typefaces}>
      <body>{children}</body>
    </html>
  );
}
