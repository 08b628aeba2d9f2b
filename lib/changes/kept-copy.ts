import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { createGzip } from 'node:zlib';

const CHUNK = 1 << 20;

/** What is kept of a file that passes by: its digest (SHA-256, hex) and its bytes, compressed (gzip), in chunks. */
export interface Kept {
  readonly digest: string;
  readonly chunks: readonly Uint8Array[];
}

/** A copy of a file's bytes, made while they are read once. */
export class KeptCopy {
  private readonly hash = createHash('sha256');
  private readonly gzip = createGzip();
  private readonly pieces: Buffer[] = [];

  constructor() {
    this.gzip.on('data', (piece: Buffer) => this.pieces.push(piece));
  }

  /** The same bytes, copied as they pass. */
  async *of(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
    for await (const chunk of bytes) {
      this.hash.update(chunk);
      if (!this.gzip.write(chunk)) await once(this.gzip, 'drain');
      yield chunk;
    }
  }

  /** The copy, once all bytes have passed. */
  async whole(): Promise<Kept> {
    this.gzip.end();
    await once(this.gzip, 'end');
    const all = Buffer.concat(this.pieces);
    const chunks: Uint8Array[] = [];
    for (let from = 0; from < all.length; from += CHUNK) chunks.push(all.subarray(from, from + CHUNK));
    return { digest: this.hash.digest('hex'), chunks };
  }
}
