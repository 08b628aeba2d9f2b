/** What one item sold for and cost in a period. Money in venue currency per portion, net of sales tax. */
export interface BridgeSide {
  /** s: paid portions. */
  readonly sold: number;
  /** P: achieved price. */
  readonly netPrice: number;
  /** L: listed price. */
  readonly listPrice: number;
  /** f */
  readonly plateCost: number;
}

/** Why an item left more or less than in the period before, in venue currency; the parts sum to the change of what it left. */
export interface ItemBridge {
  readonly volume: number;
  readonly mix: number;
  readonly menuPrice: number;
  readonly discounts: number;
  readonly ingredientPrice: number;
  readonly recipe: number;
}

const NOTHING: BridgeSide = { sold: 0, netPrice: 0, listPrice: 0, plateCost: 0 };

/**
 * One item's part in the bridge from period 0 to period 1, of a menu that sold N0 and N1 portions; w = s / N, CM = P - f.
 *
 * volume = (N1 - N0) w0 CM0; mix = N1 (w1 - w0) CM0; menu price = s1 (L1 - L0); discounts = s1 [(P1 - L1) - (P0 - L0)];
 * ingredient price = -s1 (f01 - f00); recipe = -s1 (f11 - f01). Their sum is s1 CM1 - s0 CM0.
 *
 * s0 = 0: the old figures are taken as the new ones, so that a new dish is mix; s1 = 0: price and cost terms are 0; N0 = 0: all is volume.
 * "Volume" is the sales-quantity variance of Horngren's Cost Accounting; its sales-volume variance is volume + mix.
 */
export function itemBridge(
  before: BridgeSide | null,
  after: BridgeSide | null,
  costAtNewPrices: number | null,
  portions: { readonly before: number; readonly after: number },
): ItemBridge {
  const one = after ?? NOTHING;
  const isNew = before === null || before.sold === 0;
  const zero = isNew ? { ...one, sold: 0 } : before;
  const f01 = isNew ? one.plateCost : (costAtNewPrices ?? zero.plateCost);
  const margin = zero.netPrice - zero.plateCost;
  const [n0, n1, s0, s1] = [portions.before, portions.after, zero.sold, one.sold];
  const share = n0 === 0 ? 0 : s0 / n0;
  const volume = n0 === 0 ? s1 * margin : (n1 - n0) * share * margin;
  return {
    volume,
    mix: n0 === 0 ? 0 : (s1 - n1 * share) * margin,
    ...(s1 === 0
      ? { menuPrice: 0, discounts: 0, ingredientPrice: 0, recipe: 0 }
      : {
          menuPrice: s1 * (one.listPrice - zero.listPrice),
          discounts: s1 * (one.netPrice - one.listPrice - (zero.netPrice - zero.listPrice)),
          ingredientPrice: -s1 * (f01 - zero.plateCost),
          recipe: -s1 * (one.plateCost - f01),
        }),
  };
}
