import type { Day } from '../core/days';
import type { BaseUnit } from '../core/units';
import { isByProduct } from './by-products';
import type { CostedPeriod } from './costed-period';
import type { Department, ItemKind, Offer, PricePoint, RecipeLine } from './facts';
import { type LineCount, lineCount } from './half-known';
import { onDay } from './in-force';
import type { Issue } from './issue';
import { lineYield } from './line-reading';
import type { Measure } from './measure';
import type { RecipePiece } from './recipe-piece';
import { inSegment } from './segments';
import type { Thing } from './things';
import { type WorkedRecipe, workedRecipe } from './worked-recipe';

/** One line of what a cost is made of, for as much of it as the whole takes. Money is venue currency. */
export interface CostLine {
  readonly item: string;
  /** `estimate`: the owner's, where it stands in for a recipe. `not_measured`: the venue's stated share for what is not measured. */
  readonly kind: ItemKind | 'estimate' | 'not_measured';
  /** Place in its recipe, counted from 1. */
  readonly position: number | null;
  /** As the recipe states it, before usable yield and before the breakage of the recipe that it stands in. */
  readonly quantity: number | null;
  readonly unit: string | null;
  readonly as: RecipeLine['as'];
  /** Which of the yields of what is bought; which part of it; the choice of which it is one, and its share of the guests. */
  readonly use: string | null;
  readonly part: string | null;
  readonly choice: string | null;
  readonly share: number | null;
  /** The line makes it: a credit, so that bought and cost are below zero; or uses what is made as a by-product, at its credit. */
  readonly byProduct: 'made' | 'used' | null;
  /** y of this line: 1 where none is applied, null where it is not known. */
  readonly usableYield: number | null;
  /** What has to be bought or made: quantity * share / y / (1 - r), in the base unit of the item; null where it cannot be worked out. */
  readonly bought: number | null;
  readonly boughtUnit: BaseUnit | null;
  /** Cost of one base unit; null where it is not known. */
  readonly unitPrice: number | null;
  /** bought * unitPrice; null where it is not known. */
  readonly cost: number | null;
  /** Where the cost is not known, the part of it that is; null where nothing is. */
  readonly floor: number | null;
  /** Of something bought. */
  readonly department: Department | null;
  /** An owner's estimate has a part in it. */
  readonly estimated: boolean;
  /** The offer and the price point of something bought. */
  readonly price: { readonly offer: Offer; readonly point: PricePoint; readonly rate: number } | null;
  /** The recipe of something made. */
  readonly recipe: WorkedRecipe | null;
  /** What is missing of this line itself, where its cost is not known; what is missing below it stands below it. */
  readonly issues: readonly Issue[];
  /** It has lines that are left out here, since there are too many of them: its own working holds them. */
  readonly closed: boolean;
  readonly lines: readonly CostLine[];
}

/** One line of a recipe, for `wanted` base units of what the recipe makes; without the lines below it. */
export function costLine(
  period: CostedPeriod,
  segment: number,
  piece: RecipePiece,
  index: number,
  wanted: number,
): CostLine {
  const line = piece.lines[index] as RecipeLine;
  const child = piece.children[index] as number;
  const thing = period.things[child] as Thing;
  const measure = measureOf(period, child, segment);
  const isUsed = isByProduct(period.makings, child, segment);
  return {
    position: line.position,
    // of a batch that gives nobody knows what, the lines are shown as they are written
    quantity: line.quantity * (Number.isNaN(piece.usable) ? 1 : wanted / piece.usable),
    unit: line.unit,
    as: line.as,
    use: line.use,
    part: line.part,
    choice: line.choice,
    share: line.choiceShare,
    byProduct: line.byProductCredit !== null ? 'made' : isUsed ? 'used' : null,
    usableYield: measure === null ? null : lineYield(line, thing, measure),
    ...figured(period, thing, child, segment, wanted * (piece.amounts[index] as number)),
  };
}

type Asked =
  | 'position'
  | 'quantity'
  | 'unit'
  | 'as'
  | 'use'
  | 'part'
  | 'choice'
  | 'share'
  | 'byProduct'
  | 'usableYield';
type Figured = Omit<CostLine, Asked>;

function figured(period: CostedPeriod, thing: Thing, node: number, segment: number, need: number): Figured {
  const { complete, estimated, makings, recipes, segments } = period;
  const cell = node * segments.count + segment;
  const bought = Number.isNaN(need) ? null : need;
  const unitPrice = complete[cell] === 1 ? unitCost(period, cell) : null;
  const cost = bought === null || unitPrice === null ? null : bought * unitPrice;
  const piece = inSegment(recipes[node] ?? [], segment);
  const isBought = !isByProduct(makings, node, segment);
  const price = isBought ? onDay(thing.prices, segments.cuts[segment] as Day) : null;
  return {
    item: thing.name,
    kind: thing.kind,
    bought,
    boughtUnit: measureOf(period, node, segment)?.base ?? null,
    unitPrice,
    cost,
    floor:
      cost === null && bought !== null
        ? floorOf(lineCount(period, node, segment), bought * unitCost(period, cell))
        : null,
    department: onDay(thing.versions, segments.cuts[segment] as Day)?.department ?? null,
    estimated: estimated[cell] !== 0,
    price: price?.issue === null ? { offer: price.offer, point: price.point, rate: price.rate } : null,
    recipe: piece === null ? null : workedRecipe(period, node, segment, piece),
    issues: cost === null ? issuesAbout(period, thing.name) : [],
    closed: false,
    lines: [],
  };
}

/** How a thing is measured; what packs an item is counted by the item. */
function measureOf({ measures, nodeOf, things }: CostedPeriod, node: number, segment: number): Measure | null {
  const { channel, id } = things[node] as Thing;
  const measured = channel === null ? node : (nodeOf.get(id) ?? node);
  return inSegment(measures[measured] ?? [], segment)?.measure ?? null;
}

/** Cost of one base unit of a thing in a segment, without q; the known part of it where it is not complete. */
export function unitCost({ costs }: CostedPeriod, cell: number): number {
  return (costs.food[cell] ?? 0) + (costs.packaging[cell] ?? 0) + (costs.estimate[cell] ?? 0);
}

/** The known part of a cost; null where none of the lines that it ends in is known. */
export function floorOf({ lines, missing }: LineCount, known: number): number | null {
  return missing < lines && !Number.isNaN(known) ? known : null;
}

/** A single line that asks for something: the item itself, where nothing is made of it. */
export function boughtLine(period: CostedPeriod, node: number, segment: number, need: number): CostLine {
  const thing = period.things[node] as Thing;
  const base = measureOf(period, node, segment)?.base ?? null;
  const byProduct = isByProduct(period.makings, node, segment) ? ('used' as const) : null;
  const nothing = { position: null, use: null, part: null, choice: null, share: null, byProduct };
  const quantity = Number.isNaN(need) ? null : need;
  const asked = { ...nothing, quantity, unit: base, as: 'bought' as const, usableYield: 1 };
  return { ...asked, ...figured(period, thing, node, segment, base === null ? Number.NaN : need) };
}

/** Issues that ask for something of this very thing. */
function issuesAbout({ issues }: CostedPeriod, name: string): readonly Issue[] {
  return issues.filter(({ about, code, facts }) => {
    if (code === 'cycle') return Array.isArray(facts.loop) && facts.loop.includes(name);
    return about === name && code !== 'setting-defaulted';
  });
}
