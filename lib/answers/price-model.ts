import type { CostedPeriod } from '../model/costed-period';
import { amountSource } from '../model/price-model/amount-source';
import { PACKED_FORMAT, packedModel } from '../model/price-model/packed-model';
import type { PriceModel } from '../model/price-model/price-model';
import { served } from '../model/served';
import type { Asker } from '../session/asker';
import { type PricedAsked, pricedPeriod } from './priced-period';
import { type Answered, answered } from './problem';

/** A price model as it is sent, and what says whether one that was sent before still holds. */
export interface PriceModelAnswer {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Edition of the bytes and revision of the venue: the same tag, the same model. */
  readonly tag: string;
}

// Bytes belong to their model, which is made anew for each revision of the venue.
const packed = new WeakMap<PriceModel, Uint8Array<ArrayBuffer>>();

/** The price model of a period for a browser: with it prices are moved without asking again. */
export async function priceModelAnswer(asker: Asker, asked: PricedAsked): Promise<Answered<PriceModelAnswer>> {
  const period = await pricedPeriod(asker, asked);
  if (!period.ok) return period;
  const { model, costed, revision } = period.answer;
  const bytes = packed.get(model) ?? bytesOf(model, costed);
  packed.set(model, bytes);
  return answered({ bytes, tag: `${PACKED_FORMAT}-${revision}` });
}

function bytesOf(model: PriceModel, costed: CostedPeriod): Uint8Array<ArrayBuffer> {
  return packedModel(model, { amounts: amountSource(costed), served: served(costed) });
}
