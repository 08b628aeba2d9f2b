/*
 * The shapes in which the house is written down: what a pastry chef, a buyer and a bookkeeper would put on paper.
 * Dates are ISO texts; blank cells are left out.
 */

export type Department = 'food' | 'drink' | 'packaging';
export type Grade = 'pastry chef' | 'commis' | 'finisher';

/** A quantity with its unit: [250, 'g']. */
export type Amount = readonly [quantity: number, unit: string];

export interface Ingredient {
  readonly name: string;
  readonly measure: 'g' | 'ml' | 'each';
  readonly group: string;
  readonly department?: Department;
  readonly gramsPerMl?: number;
  readonly gramsEach?: number;
  /** Usable weight of what is bought, per cent; 100 where nothing is said. */
  readonly usablePct?: number;
  /** Allergens of EU 1169/2011, Annex II, split by a semicolon; 'none' is declared none. */
  readonly contains: string;
  readonly mayContain?: string;
  /** Where it is kept; where nothing is said it is not counted. */
  readonly place?: string;
}

export interface LineDetail {
  readonly as?: 'bought';
  readonly use?: string;
  readonly part?: string;
  readonly choice?: string;
  readonly sharePct?: number;
  readonly channel?: string;
  /** What the by-product made with the batch is worth, for the quantity of the line. */
  readonly credit?: number;
  readonly note?: string;
}

export type Line = readonly [item: string, quantity: number, unit: string, detail?: LineDetail];

/** What stands on the card of anything that is made. */
interface Card {
  readonly name: string;
  readonly gives?: Amount;
  readonly also?: Amount;
  readonly overrunPct?: number;
  /** Grams that stay in bowl and pipe, whatever the size of the batch. */
  readonly lossG?: number;
  readonly breakagePct?: number;
  readonly handsOn?: readonly [minutes: number, grade: Grade];
  readonly keepsDays?: number;
  /** In the unit of `gives`. */
  readonly smallestBatch?: number;
  readonly thrownAtClose?: boolean;
  readonly cautions?: string;
  readonly lines: readonly Line[];
}

/** A component as the kitchen writes it; on the books from the opening menu on unless it says otherwise. */
export interface Component extends Card {
  readonly from?: string;
}

/** One dated version of a recipe. */
export interface Recipe extends Card {
  readonly kind: 'component' | 'dish' | 'set_menu' | 'extra';
  readonly from: string;
  readonly section?: string;
  readonly department?: Department;
  readonly plating?: readonly [minutes: number, grade: Grade];
  readonly estimatedCost?: number;
}

export interface PricePoint {
  readonly kind: 'agreed' | 'list' | 'quote' | 'invoice';
  readonly from: string;
  readonly to?: string;
  readonly price: number;
  readonly minimumPacks?: number;
}

export interface Offer {
  readonly code: string;
  readonly ingredient: string;
  /** count x size unit: [20, 250, 'g']. */
  readonly pack: readonly [count: number, size: number, unit: string];
  readonly description: string;
  readonly gtinStem?: string;
  /** From when the house buys it here: 'always', a day, or 'no'. */
  readonly chosen: string;
  /** Priced by the weight delivered. */
  readonly catchWeight?: boolean;
  readonly prices: readonly PricePoint[];
}

export interface Supplier {
  readonly name: string;
  readonly contact: string;
  readonly email: string;
  readonly orderDays: string;
  readonly minimumOrder: number;
  readonly deliveryCharge: number;
  /** Blank: the house's own currency. */
  readonly currency?: string;
  /** ISO weekdays on which it delivers. */
  readonly deliversOn: readonly number[];
  /** Invoice numbers start here. */
  readonly firstInvoice: number;
  readonly invoicePrefix: string;
  readonly offers: readonly Offer[];
}
