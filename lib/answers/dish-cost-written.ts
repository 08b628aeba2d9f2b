import { dayText } from '../core/days';
import { moneyText } from '../format/money-text';
import type { CostLine } from '../model/cost-line';
import type { WorkedRecipe } from '../model/worked-recipe';
import type { CostOverPeriod } from '../reports/cost-over-period';
import type { CostWorking } from '../reports/cost-working';
import type { CostLineAnswer, DishCostAnswer } from './dish-cost-shape';
import { writtenIssues } from './written-issues';

const money = (amount: number | null, currency: string) => (amount === null ? null : moneyText(amount, currency));

/** A working as the interface writes it: money as decimal text, days as ISO text, issues in words. */
export function writtenCost(working: CostWorking): Omit<DishCostAnswer, 'period'> {
  const { currency, locale, name } = working.venue;
  return {
    venue: name,
    item: working.item,
    kind: working.kind,
    date: dayText(working.day),
    channel: working.channel,
    currency,
    locale,
    per: working.per,
    plateCost: money(working.plateCost, currency),
    floor: money(working.halfKnown?.floor ?? null, currency),
    linesMissing: working.halfKnown?.missing ?? null,
    linesTotal: working.halfKnown?.lines ?? null,
    estimated: working.estimated,
    recipeLabour: money(working.recipeLabour, currency),
    recipe: writtenRecipe(working.recipe),
    lines: working.lines.map((line) => writtenLine(line, currency)),
    issues: writtenIssues(working.issues),
  };
}

function writtenLine(line: CostLine, currency: string): CostLineAnswer {
  return {
    item: line.item,
    kind: line.kind,
    position: line.position,
    quantity: line.quantity,
    unit: line.unit,
    as: line.as,
    use: line.use,
    part: line.part,
    choice: line.choice,
    sharePct: line.share,
    byProduct: line.byProduct,
    bought: line.bought,
    boughtUnit: line.boughtUnit,
    usableYieldPct: line.usableYield,
    unitPrice: money(line.unitPrice, currency),
    cost: money(line.cost, currency),
    floor: money(line.floor, currency),
    department: line.department,
    estimated: line.estimated,
    offer: writtenOffer(line.price, currency),
    recipe: writtenRecipe(line.recipe),
    issues: writtenIssues(line.issues),
    closed: line.closed,
    lines: line.lines.map((each) => writtenLine(each, currency)),
  };
}

function writtenOffer(price: CostLine['price'], currency: string): CostLineAnswer['offer'] {
  if (price === null) return null;
  const { offer, point, rate } = price;
  return {
    supplier: offer.supplier,
    code: offer.code,
    packCount: offer.packCount,
    packSize: offer.packSize,
    packUnit: offer.packUnit,
    price: moneyText(point.price, point.currency ?? currency),
    currency: point.currency ?? currency,
    rate,
    priceKind: point.kind,
    priceFrom: dayText(point.validFrom),
    priceTo: point.validTo === null ? null : dayText(point.validTo),
  };
}

export function writtenRecipe(recipe: WorkedRecipe | null): DishCostAnswer['recipe'] {
  if (recipe === null) return null;
  return {
    validFrom: recipe.validFrom === null ? null : dayText(recipe.validFrom),
    usable: recipe.usable,
    usableUnit: recipe.usableUnit,
    batchLossG: recipe.batchLossG,
    breakagePct: recipe.breakage,
    overrunPct: recipe.overrun,
    costSharePct: recipe.costShare,
  };
}

/** What the mean of a period is a mean of. */
export function writtenSpans(
  over: CostOverPeriod,
  currency: string,
): Pick<NonNullable<DishCostAnswer['period']>, 'sold' | 'plateCost' | 'spans'> {
  return {
    sold: over.sold,
    plateCost: money(over.plateCost, currency),
    spans: over.spans.map((span) => ({
      channel: span.channel,
      from: dayText(span.from),
      to: dayText(span.to),
      sold: span.sold,
      plateCost: money(span.plateCost, currency),
    })),
  };
}
