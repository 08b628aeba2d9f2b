import { type DayRange, dateOfDay } from '../core/days';
import { byText } from '../core/grouped';
import type { ItemId, Offer, OfferChoice, OfferId, PricePoint } from '../model/facts';
import { byStart, dayIn, numberIn, statedBefore } from './columns';
import type { VenueTx } from './in-venue';

type ByNumber = (a: number, b: number) => number;

/** All offers, by item, supplier and code. */
export async function loadOffers(tx: VenueTx, byItem: ByNumber): Promise<Offer[]> {
  const rows = await tx.prisma.offer.findMany({
    where: { venueId: tx.venue },
    select: {
      id: true,
      itemId: true,
      code: true,
      codeKey: true,
      packCount: true,
      packSize: true,
      packUnit: true,
      supplier: { select: { name: true, nameKey: true } },
    },
  });
  rows.sort(
    (a, b) =>
      byItem(a.itemId, b.itemId) || byText(a.supplier.nameKey, b.supplier.nameKey) || byText(a.codeKey, b.codeKey),
  );
  return rows.map(({ id, itemId, supplier, code, packCount, packSize, packUnit }) => ({
    id: id as OfferId,
    item: itemId as ItemId,
    supplier: supplier.name,
    code,
    packCount: numberIn(packCount),
    packSize: numberIn(packSize),
    packUnit,
  }));
}

/** Which offer was chosen from when on, up to the end of a range, by item and start. */
export async function loadOfferChoices(tx: VenueTx, range: DayRange, byItem: ByNumber): Promise<OfferChoice[]> {
  const rows = await tx.prisma.offerChoice.findMany({
    where: { venueId: tx.venue, OR: statedBefore(range) },
    select: { itemId: true, offerId: true, validFrom: true },
  });
  rows.sort((a, b) => byItem(a.itemId, b.itemId) || byStart(a, b));
  return rows.map(({ itemId, offerId, validFrom }) => ({
    item: itemId as ItemId,
    offer: offerId as OfferId,
    validFrom: dayIn(validFrom),
  }));
}

/** The prices of packs dated before the end of a range, by offer, start, kind and least quantity. */
export async function loadPricePoints(tx: VenueTx, range: DayRange, byOffer: ByNumber): Promise<PricePoint[]> {
  const rows = await tx.prisma.pricePoint.findMany({
    where: { venueId: tx.venue, validFrom: { lt: dateOfDay(range.to) } },
    select: {
      offerId: true,
      kind: true,
      validFrom: true,
      validTo: true,
      minimumPacks: true,
      price: true,
      currency: true,
    },
  });
  const points = rows.map(({ offerId, validFrom, validTo, minimumPacks, price, ...same }) => ({
    ...same,
    offer: offerId as OfferId,
    validFrom: dayIn(validFrom),
    validTo: dayIn(validTo),
    minimumPacks: numberIn(minimumPacks),
    price: numberIn(price),
  }));
  return points.sort(
    (a, b) =>
      byOffer(a.offer, b.offer) ||
      a.validFrom - b.validFrom ||
      byText(a.kind, b.kind) ||
      (a.minimumPacks ?? 0) - (b.minimumPacks ?? 0),
  );
}
