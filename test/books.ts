import { type Day, type DayRange, parseDay } from '@/lib/core/days';
import { periodNamed } from '@/lib/core/periods';
import type { BaseUnit } from '@/lib/core/units';
import type {
  CoversDay,
  ExchangeRate,
  Facts,
  IngredientVersion,
  Item,
  ItemId,
  ItemKind,
  LabourRate,
  MenuPrice,
  NamedMeasure,
  Offer,
  OfferChoice,
  OfferId,
  Part,
  PricePoint,
  PurchaseLine,
  RecipeLine,
  RecipeVersion,
  SalesDay,
  StockCount,
  StockMove,
  Trial,
  VenueId,
  VenueSettings,
  WaitingSales,
  YieldUse,
} from '@/lib/model/facts';

type LineDetail = Partial<Omit<RecipeLine, 'position' | 'item' | 'quantity' | 'unit'>>;

/** quantity, unit, item and, where it is not prepared, bought; or whatever else the line says */
export type Line = readonly [
  quantity: number,
  unit: string,
  item: ItemId,
  as?: 'prepared' | 'bought' | LineDetail | undefined,
];

type Recipe = Partial<Omit<RecipeVersion, 'item' | 'validFrom' | 'lines'>> & {
  readonly from?: string;
  readonly yields?: readonly [quantity: number, unit: string];
  readonly also?: readonly [quantity: number, unit: string];
};
type Ingredient = Partial<Omit<IngredientVersion, 'item' | 'validFrom' | 'measure'>> & { readonly from?: string };
type Price = Partial<Omit<PricePoint, 'offer' | 'price' | 'validFrom' | 'validTo'>> & {
  readonly from?: string;
  readonly to?: string;
};
type Menu = Partial<Omit<MenuPrice, 'item' | 'price' | 'validFrom'>> & { readonly from?: string };
type Sale = Partial<Omit<SalesDay, 'item' | 'day' | 'sold'>>;
type Purchase = Partial<Omit<PurchaseLine, 'day' | 'deliveredOn'>> & { readonly delivered?: string };

const MARRAM_HOUSE: VenueSettings = {
  id: 1 as VenueId,
  name: 'Marram House',
  currency: 'EUR',
  locale: 'en-IE',
  timeZone: 'UTC',
  kitchenMeasures: 'metric',
  popularityFactor: 0.7,
  qFactor: 0,
  targetFoodCost: null,
  variableCost: null,
  priceStep: null,
  periods: 'months',
  defaulted: [],
};

/** The day of an ISO date that is known to be one. */
export function day(text: string): Day {
  const read = parseDay(text);
  if (read === null) throw new RangeError(`${text} is no day`);
  return read;
}

/** The days of a period's name that is known to be one. */
export function days(name: string): DayRange {
  const { period } = periodNamed(name);
  if (!period) throw new RangeError(`${name} is no period`);
  return period.range;
}

/** A book of recipes to write facts into, one call a fact. What is not said is not known. */
export class Book {
  private readonly venue: VenueSettings;
  private readonly items: Item[] = [];
  private readonly ingredientVersions: IngredientVersion[] = [];
  private readonly namedMeasures: NamedMeasure[] = [];
  private readonly offers: Offer[] = [];
  private readonly offerChoices: OfferChoice[] = [];
  private readonly pricePoints: PricePoint[] = [];
  private readonly recipeVersions: RecipeVersion[] = [];
  private readonly menuPrices: MenuPrice[] = [];
  private readonly sales: SalesDay[] = [];
  private readonly waitingSales: WaitingSales[] = [];
  private readonly yieldUses: YieldUse[] = [];
  private readonly parts: Part[] = [];
  private readonly labourRates: LabourRate[] = [];
  private readonly trials: Trial[] = [];
  private readonly covers: CoversDay[] = [];
  private readonly exchangeRates: ExchangeRate[] = [];
  private readonly purchases: PurchaseLine[] = [];
  private readonly counts: StockCount[] = [];
  private readonly moves: StockMove[] = [];

  constructor(settings: Partial<VenueSettings> = {}) {
    this.venue = { ...MARRAM_HOUSE, ...settings };
  }

  item(kind: ItemKind, name: string): ItemId {
    const id = (this.items.length + 1) as ItemId;
    this.items.push({ id, kind, name });
    return id;
  }

  /** An ingredient with a list price of one base unit, offered by the gram, millilitre or piece; null: nobody offers it. */
  ingredient(name: string, measure: BaseUnit, price: number | null, stated: Ingredient = {}): ItemId {
    const item = this.item('ingredient', name);
    this.ingredientVersion(item, measure, stated);
    if (price !== null) this.price(this.offer(item, 1, 1, measure), price);
    return item;
  }

  ingredientVersion(item: ItemId, measure: BaseUnit, { from, ...stated }: Ingredient = {}): void {
    this.ingredientVersions.push({
      item,
      validFrom: from ? day(from) : null,
      measure,
      productGroup: null,
      department: 'food',
      densityGPerMl: null,
      gramsEach: null,
      usableYield: 1,
      contains: null,
      mayContain: null,
      ...stated,
    });
  }

  measure(item: ItemId, name: string, quantity: number, unit: string): void {
    this.namedMeasures.push({ item, name, quantity, unit });
  }

  /** A usable yield of an ingredient for one use of it. */
  yieldFor(item: ItemId, use: string, usableYield: number): void {
    this.yieldUses.push({ item, use, usableYield });
  }

  /** A part of an ingredient: what one base unit of the whole gives, and its share of the price. */
  part(item: ItemId, name: string, outputQuantity: number, outputUnit: string, costShare: number): void {
    this.parts.push({ item, name, outputQuantity, outputUnit, costShare });
  }

  labour(grade: string, costPerHour: number, from?: string): void {
    this.labourRates.push({ grade, validFrom: from ? day(from) : null, costPerHour });
  }

  trial(item: ItemId, on: string, hours: number, grade: string, ...lines: [number, string, ItemId][]): void {
    const used = lines.map(([quantity, unit, child]) => ({ item: child, quantity, unit }));
    this.trials.push({ item, day: day(on), hours, grade, outcome: null, lines: used });
  }

  offer(item: ItemId, packCount: number, packSize: number, packUnit: string, supplier = 'Bay Dairy'): OfferId {
    const id = (this.offers.length + 1) as OfferId;
    this.offers.push({ id, item, supplier, code: `P${id}`, packCount, packSize, packUnit });
    return id;
  }

  choose(item: ItemId, offer: OfferId, from?: string): void {
    this.offerChoices.push({ item, offer, validFrom: from ? day(from) : null });
  }

  price(offer: OfferId, price: number, { from = '2000-01-01', to, ...stated }: Price = {}): void {
    this.pricePoints.push({
      offer,
      kind: 'list',
      validFrom: day(from),
      validTo: to ? day(to) : null,
      minimumPacks: null,
      price,
      currency: null,
      ...stated,
    });
  }

  component(name: string, stated: Recipe, ...lines: Line[]): ItemId {
    return this.recipe(this.item('component', name), stated, ...lines);
  }

  dish(name: string, stated: Recipe, ...lines: Line[]): ItemId {
    return this.recipe(this.item('dish', name), stated, ...lines);
  }

  recipe(item: ItemId, { from, yields, also, ...stated }: Recipe, ...lines: Line[]): ItemId {
    this.recipeVersions.push({
      item,
      validFrom: from ? day(from) : null,
      section: null,
      department: null,
      yieldQuantity: yields?.[0] ?? null,
      yieldUnit: yields?.[1] ?? null,
      alsoQuantity: also?.[0] ?? null,
      alsoUnit: also?.[1] ?? null,
      batchLossG: null,
      breakage: 0,
      estimatedCost: null,
      overrun: null,
      handsOnMinutes: null,
      grade: null,
      platingMinutes: null,
      platingGrade: null,
      shelfLifeDays: null,
      smallestBatch: null,
      thrownAtClose: false,
      cautions: [],
      refusedLines: 0,
      lines: lines.map(([quantity, unit, child, detail = {}], index) => ({
        position: index + 1,
        item: child,
        quantity,
        unit,
        as: 'prepared',
        use: null,
        part: null,
        choice: null,
        choiceShare: null,
        channel: null,
        byProductCredit: null,
        ...(typeof detail === 'string' ? { as: detail } : detail),
      })),
      ...stated,
    });
    return item;
  }

  menu(item: ItemId, price: number | null, { from, ...stated }: Menu = {}): void {
    const validFrom = from ? day(from) : null;
    const usual = { channel: 'dine_in', tax: 0, taxIncluded: false, commission: null };
    this.menuPrices.push({ item, ...usual, validFrom, price, ...stated });
  }

  sell(item: ItemId, on: string, sold: number, net: number, stated: Sale = {}): void {
    this.sellOn(item, day(on), sold, net, stated);
  }

  sellOn(item: ItemId, on: Day, sold: number, net: number, stated: Sale = {}): void {
    this.sales.push({ day: on, item, channel: 'dine_in', sold, comps: 0, net, soldWithoutRevenue: 0, ...stated });
  }

  /** Portions sold under a name that nobody knows. */
  wait(name: string, on: string, portions: number | null, rows = 1): void {
    this.waitingSales.push({ day: day(on), name, rows, portions });
  }

  cover(on: string, covers: number): void {
    this.covers.push({ day: day(on), covers });
  }

  rate(currency: string, from: string, rate: number): void {
    this.exchangeRates.push({ currency, validFrom: day(from), rate });
  }

  /** A line of an invoice; without an invoice's number it is I1. */
  buy(on: string, { delivered, ...stated }: Purchase): void {
    this.purchases.push({
      day: day(on),
      deliveredOn: delivered ? day(delivered) : null,
      supplier: 'Bay Dairy',
      invoice: 'I1',
      kind: 'goods',
      offer: null,
      packs: null,
      quantity: null,
      unit: null,
      amount: null,
      ...stated,
    });
  }

  count(on: string, item: ItemId, quantity: number, unit: string, place: string | null = null): void {
    this.counts.push({ day: day(on), item, part: null, quantity, unit, place });
  }

  move(
    on: string,
    item: ItemId,
    quantity: number,
    unit: string,
    stated: Pick<StockMove, 'reason'> & Partial<StockMove>,
  ) {
    this.moves.push({ day: day(on), item, quantity, unit, value: null, otherVenue: null, ...stated });
  }

  facts(): Facts {
    const { venue, items, ingredientVersions, namedMeasures, offers, offerChoices, pricePoints } = this;
    const { recipeVersions, menuPrices, sales, covers, exchangeRates, purchases, counts, moves } = this;
    const { yieldUses, parts, labourRates, trials, waitingSales } = this;
    return {
      ...{ venue, items, ingredientVersions, namedMeasures, offers, offerChoices, pricePoints },
      laterRecipes: [],
      ...{ recipeVersions, menuPrices, sales, covers, exchangeRates, purchases, counts, moves },
      ...{ yieldUses, parts, labourRates, trials, waitingSales },
    };
  }
}
