import type { Calendar } from '../core/calendar';
import type { Day } from '../core/days';
import type { BaseUnit, KitchenMeasures } from '../core/units';

/*
 * The facts of a venue as they were stated: what was bought, written down, priced and sold. Nothing here is worked out.
 * `null` means "not known", never zero. A `validFrom` of null means "from the beginning". Money and quantities are doubles here;
 * exact decimals belong to the statement. Fractions are 0..1, never per cent.
 */

export type VenueId = number & { readonly __brand: 'VenueId' };
export type ItemId = number & { readonly __brand: 'ItemId' };
export type OfferId = number & { readonly __brand: 'OfferId' };

/** What a name stands for. Everything shares one namespace. */
export type ItemKind = 'ingredient' | 'component' | 'dish' | 'set_menu' | 'extra';

export type Department = 'food' | 'drink' | 'packaging';

export interface VenueSettings {
  readonly id: VenueId;
  readonly name: string;
  /** ISO 4217 code. */
  readonly currency: string;
  /** BCP 47 tag for words and numbers. */
  readonly locale: string;
  readonly timeZone: string;
  readonly kitchenMeasures: KitchenMeasures;
  /** Kasavana & Smith's share of the expected portions from which an item is popular; 0.70. */
  readonly popularityFactor: number;
  /** q: the venue's stated share for what is not measured (0.02 adds 2 %), on what is sold. */
  readonly qFactor: number;
  readonly targetFoodCost: number | null;
  /** What a portion costs beside food and labour, as a fraction of its price; a stated share, for goal values. */
  readonly variableCost: number | null;
  /** Menu prices are multiples of it, in venue currency. */
  readonly priceStep: number | null;
  /** What a numbered period (P10) means. */
  readonly periods: Calendar;
  /** Names of settings that nobody stated, so that the default stands in; each is an issue. */
  readonly defaulted: readonly string[];
}

export interface Item {
  readonly id: ItemId;
  readonly kind: ItemKind;
  readonly name: string;
}

export interface IngredientVersion {
  readonly item: ItemId;
  readonly validFrom: Day | null;
  /** The dimension it is bought and counted in; the same in all versions of an ingredient. */
  readonly measure: BaseUnit;
  readonly productGroup: string | null;
  readonly department: Department;
  readonly densityGPerMl: number | null;
  readonly gramsEach: number | null;
  /** Usable weight / bought weight, 0 < y <= 1. */
  readonly usableYield: number;
  /** Declared allergens; an empty list is declared none, null is unknown. */
  readonly contains: readonly string[] | null;
  readonly mayContain: readonly string[] | null;
}

/** Another usable yield of an ingredient, for one use of it: zest, juice. */
export interface YieldUse {
  readonly item: ItemId;
  readonly use: string;
  readonly usableYield: number;
}

/** A part of a split ingredient: the yolk of an egg. */
export interface Part {
  readonly item: ItemId;
  readonly name: string;
  /** o: net output of one base unit of the whole. */
  readonly outputQuantity: number;
  readonly outputUnit: string;
  /** s: its share of the price of the whole; the shares of an ingredient sum to 1. */
  readonly costShare: number;
}

/** A measure of the ingredient's own: a pod = 3 g, a leaf = 2 g. */
export interface NamedMeasure {
  readonly item: ItemId;
  readonly name: string;
  readonly quantity: number;
  readonly unit: string;
}

export interface Offer {
  readonly id: OfferId;
  readonly item: ItemId;
  readonly supplier: string;
  readonly code: string;
  /** A pack is packCount pieces of packSize packUnit: 12 x 500 g. */
  readonly packCount: number;
  readonly packSize: number;
  readonly packUnit: string;
}

export interface OfferChoice {
  readonly item: ItemId;
  readonly offer: OfferId;
  readonly validFrom: Day | null;
}

export type PriceKind = 'agreed' | 'list' | 'quote' | 'invoice';

/** A dated price of one pack. */
export interface PricePoint {
  readonly offer: OfferId;
  readonly kind: PriceKind;
  readonly validFrom: Day;
  /** Last day of an agreed price, included; null: open-ended. */
  readonly validTo: Day | null;
  readonly minimumPacks: number | null;
  readonly price: number;
  /** ISO 4217; null is the venue's own. */
  readonly currency: string | null;
}

export interface RecipeLine {
  /** Order in which the lines were written: also the order in which they are added. */
  readonly position: number;
  readonly item: ItemId;
  readonly quantity: number;
  readonly unit: string;
  /** `prepared`: the quantity is after trimming, so bought = quantity / usable yield. `bought`: as purchased, the yield is not applied. */
  readonly as: 'prepared' | 'bought';
  /** Which of the ingredient's yields by use. */
  readonly use: string | null;
  /** Which part of a split ingredient; null is the whole. */
  readonly part: string | null;
  /** Lines of a set menu that share a choice are alternatives; their shares sum to 1. */
  readonly choice: string | null;
  readonly choiceShare: number | null;
  /** Only for portions sold in this channel: packaging. */
  readonly channel: string | null;
  /** The line is made, not used: worth this for one of its unit. 0 is a by-product without credit. */
  readonly byProductCredit: number | null;
}

export interface RecipeVersion {
  readonly item: ItemId;
  readonly validFrom: Day | null;
  readonly section: string | null;
  /** Null: taken from the ingredients (drink where all are drink, else food). */
  readonly department: Department | null;
  /** Measured output of a batch; for a dish null, since a dish is one portion. Null for a component: what its lines weigh. */
  readonly yieldQuantity: number | null;
  readonly yieldUnit: string | null;
  /** The same output in a second dimension: the pair is the component's density. */
  readonly alsoQuantity: number | null;
  readonly alsoUnit: string | null;
  /** Lost from every batch whatever its size, in grams. */
  readonly batchLossG: number | null;
  /** r: made but not served, 0 <= r < 1. */
  readonly breakage: number;
  /** The owner's estimate of a plate cost, in venue currency, that stands in where there is no recipe. */
  readonly estimatedCost: number | null;
  /** Air beaten into the mix, as a share of its volume: the stated volume is the mix. */
  readonly overrun: number | null;
  /** Hands-on minutes of a batch; of a dish, of one portion. */
  readonly handsOnMinutes: number | null;
  readonly grade: string | null;
  /** Minutes of finishing one portion in front of service. */
  readonly platingMinutes: number | null;
  readonly platingGrade: string | null;
  /** L: what is so many days old is thrown. */
  readonly shelfLifeDays: number | null;
  /** B: the smallest batch that is made, in yieldUnit. */
  readonly smallestBatch: number | null;
  /** Thrown at close: L = 1. */
  readonly thrownAtClose: boolean;
  /** raw egg, alcohol, liquid nitrogen, dry ice. */
  readonly cautions: readonly string[];
  readonly lines: readonly RecipeLine[];
  /** Lines of this version that could not be taken: while there are any, it is not costed. */
  readonly refusedLines: number;
}

/** The first day on which a recipe holds. */
export interface LaterRecipe {
  readonly item: ItemId;
  readonly begins: Day;
}

/** The price of an item in a channel from a day on; price null takes it off the menu. */
export interface MenuPrice {
  readonly item: ItemId;
  readonly channel: string;
  readonly validFrom: Day | null;
  readonly price: number | null;
  /** Sales tax rate as a fraction. */
  readonly tax: number;
  readonly taxIncluded: boolean;
  /** What the channel keeps of the net price, as a fraction. */
  readonly commission: number | null;
}

/** What was sold of an item in a channel on one business day, over all sources. */
export interface SalesDay {
  readonly day: Day;
  readonly item: ItemId;
  readonly channel: string;
  /** Paid portions. */
  readonly sold: number;
  readonly comps: number;
  /** Revenue net of sales tax of the portions that came with a revenue. */
  readonly net: number;
  /** Paid portions that came without a revenue: the day's menu price stands in for them. */
  readonly soldWithoutRevenue: number;
}

/** Sales of a business day under a name that stands for nothing yet: kept, and in no other fact. */
export interface WaitingSales {
  readonly day: Day;
  readonly name: string;
  readonly rows: number;
  /** Null where no row has a number that can be read. */
  readonly portions: number | null;
}

export interface CoversDay {
  readonly day: Day;
  readonly covers: number;
}

export interface LabourRate {
  readonly grade: string;
  readonly validFrom: Day | null;
  /** (pay + employer on-costs + paid leave) / hours worked, in venue currency. */
  readonly costPerHour: number;
}

export interface ExchangeRate {
  readonly currency: string;
  readonly validFrom: Day;
  /** Venue currency for one unit of the other. */
  readonly rate: number;
}

export type PurchaseKind = 'goods' | 'credit' | 'freight' | 'deposit' | 'rebate' | 'non_food';

/** One line of an invoice or a delivery. */
export interface PurchaseLine {
  readonly day: Day;
  readonly deliveredOn: Day | null;
  readonly supplier: string;
  /** Null: not come yet. */
  readonly invoice: string | null;
  readonly kind: PurchaseKind;
  readonly offer: OfferId | null;
  readonly packs: number | null;
  /** What was delivered where it is weighed (catch weight). */
  readonly quantity: number | null;
  readonly unit: string | null;
  /** Net of recoverable tax, in venue currency; null: accrued at the agreed price. */
  readonly amount: number | null;
}

/** What stood in one place at the end of a business day. */
export interface StockCount {
  readonly day: Day;
  readonly item: ItemId;
  readonly part: string | null;
  readonly quantity: number;
  readonly unit: string;
  readonly place: string | null;
}

export type MoveReason =
  | 'spoiled'
  | 'over_production'
  | 'broken'
  | 'staff_food'
  | 'tasting'
  | 'transfer_in'
  | 'transfer_out';

export interface StockMove {
  readonly day: Day;
  readonly item: ItemId;
  readonly quantity: number;
  readonly unit: string;
  readonly reason: MoveReason;
  /** The agreed value of a transfer, in venue currency. */
  readonly value: number | null;
  readonly otherVenue: string | null;
}

/** A day of trying a dish that is not on the menu yet. */
export interface Trial {
  readonly item: ItemId;
  readonly day: Day;
  readonly hours: number;
  readonly grade: string;
  readonly outcome: string | null;
  readonly lines: readonly { readonly item: ItemId; readonly quantity: number; readonly unit: string }[];
}

/** All that is needed to cost a period: dated facts up to its end, sales inside it. */
export interface Facts {
  readonly venue: VenueSettings;
  readonly items: readonly Item[];
  readonly ingredientVersions: readonly IngredientVersion[];
  readonly namedMeasures: readonly NamedMeasure[];
  readonly offers: readonly Offer[];
  readonly offerChoices: readonly OfferChoice[];
  readonly pricePoints: readonly PricePoint[];
  readonly recipeVersions: readonly RecipeVersion[];
  /** Recipes whose first version begins after the range: only so that they are not said to have none. */
  readonly laterRecipes: readonly LaterRecipe[];
  readonly menuPrices: readonly MenuPrice[];
  readonly sales: readonly SalesDay[];
  /** Inside the range, by day and name. */
  readonly waitingSales: readonly WaitingSales[];
  readonly covers: readonly CoversDay[];
  readonly yieldUses: readonly YieldUse[];
  readonly parts: readonly Part[];
  readonly labourRates: readonly LabourRate[];
  readonly exchangeRates: readonly ExchangeRate[];
  /** What was delivered or invoiced from the beginning to the end of the range: a last invoice may be older than the period. */
  readonly purchases: readonly PurchaseLine[];
  /** Counts up to the end of the range. */
  readonly counts: readonly StockCount[];
  /** Moves inside the range, and transfers from the beginning: what stock is worth hangs on all that came in. */
  readonly moves: readonly StockMove[];
  /** All trials up to the end of the range: development takes longer than a period. */
  readonly trials: readonly Trial[];
}
