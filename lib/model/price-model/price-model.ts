import type { BaseUnit } from '../../core/units';
import type { UnitCosts } from '../costed-period';
import type { ItemKind } from '../facts';
import type { FlatLines } from '../flat-lines';

/**
 * All that a change of prices needs of a costed period, and nothing else: numbers and names, so that it can be sent to a browser.
 *
 * Nodes and segments are those of the period. Money is venue currency, net of sales tax where nothing else is said.
 */
export interface PriceModel {
  readonly venue: PricedVenue;
  readonly segments: number;
  readonly lines: FlatLines;
  /** Of what is bought, credited or estimated; entry node * segments + segment. */
  readonly prices: UnitCosts;
  readonly goods: readonly Goods[];
  /** The items of the section that the model was made for, by name. */
  readonly items: readonly PricedItem[];
}

export interface PricedVenue {
  readonly currency: string;
  readonly locale: string;
  /** q, added once on food and drink of what is sold. */
  readonly qFactor: number;
  readonly popularityFactor: number;
  readonly targetFoodCost: number | null;
  readonly variableCost: number | null;
  /** Menu prices are multiples of it; null where the venue states none. */
  readonly priceStep: number | null;
}

/** One ingredient that is bought in the period. */
export interface Goods {
  readonly node: number;
  readonly name: string;
  readonly unit: BaseUnit;
  readonly productGroup: string | null;
  readonly isPackaging: boolean;
  /** By segment: whose price is in force; null where none is, or where it is made as a by-product. */
  readonly suppliers: readonly (string | null)[];
  /** By segment: base units that everything served in it took: paid portions, comps, extras of each cover. */
  readonly need: readonly number[];
  /** Lowest and highest price of a base unit that was in force in the days the model knows of; null where there was none. */
  readonly paid: { readonly lowest: number; readonly highest: number } | null;
}

/** One item on the menu or sold. */
export interface PricedItem {
  readonly node: number;
  readonly name: string;
  readonly kind: ItemKind;
  readonly section: string | null;
  readonly sold: number;
  readonly comps: number;
  /** As far as it is known; null where it is known of no portion. */
  readonly revenue: number | null;
  /** Achieved price; the mean menu price where none was sold; null where neither is known. */
  readonly netPrice: number | null;
  readonly expected: number;
  /** Whether it was on sale on days enough for a class. */
  readonly hasDays: boolean;
  /** Whether its plate cost is known. */
  readonly isCosted: boolean;
  /** An owner's estimate has a part in it. */
  readonly estimated: boolean;
  /** f and its food are sums over these of amount * unit cost. */
  readonly takes: readonly Take[];
  /** What its portions were listed at; its price is made of these. */
  readonly listings: readonly Listing[];
  /** On the menu on the last day that it was; null where it never was. */
  readonly menuPrice: MenuPriceNow | null;
  /** What its channels keep of its revenue, as a fraction. */
  readonly commission: number;
}

/** What one portion takes of a node in a segment, as a mean over the portions of the period. */
export interface Take {
  readonly node: number;
  readonly segment: number;
  readonly amount: number;
}

/** Portions listed at one price. */
export interface Listing {
  readonly channel: string;
  /** As on the menu; null where there was none on the day. */
  readonly price: number | null;
  /** net = price / grossed: 1 + the tax inside the price. */
  readonly grossed: number;
  /** Paid portions; days on sale where none was sold. */
  readonly weight: number;
  /** What was achieved of them; where none was sold, weight * net. */
  readonly revenue: number;
}

export interface MenuPriceNow {
  readonly channel: string;
  readonly price: number;
  readonly grossed: number;
}
