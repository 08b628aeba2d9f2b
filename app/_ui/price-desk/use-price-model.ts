'use client';

import { useEffect, useState } from 'react';
import { unpackedModel } from '@/lib/model/price-model/packed-model';
import type { PriceModel } from '@/lib/model/price-model/price-model';

/** The prices of the period, once they are read; or that they could not be. */
export type ReadModel = { readonly model: PriceModel | null; readonly failed: boolean };

/** Reads the price model that stands at an address, so that prices can be moved here. */
export function usePriceModel(href: string): ReadModel {
  const [read, setRead] = useState<ReadModel>({ model: null, failed: false });
  useEffect(() => {
    const stop = new AbortController();
    const reading = async (): Promise<void> => {
      try {
        const response = await fetch(href, { signal: stop.signal });
        const model = response.ok && response.body ? unpackedModel(await unzipped(response.body)) : null;
        setRead({ model, failed: model === null });
      } catch {
        if (!stop.signal.aborted) setRead({ model: null, failed: true });
      }
    };
    void reading();
    return () => stop.abort();
  }, [href]);
  return read;
}

async function unzipped(body: ReadableStream<Uint8Array<ArrayBuffer>>): Promise<Uint8Array> {
  return new Uint8Array(await new Response(body.pipeThrough(new DecompressionStream('gzip'))).arrayBuffer());
}
