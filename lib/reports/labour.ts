import type { Day, DayRange } from '../core/days';
import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, ItemKind, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { inOrder } from '../model/issue-list';
import { itemFigures } from '../model/item-figures';
import { type GradeWork, gradeWork } from '../model/labour-by-grade';
import { labourIssues } from '../model/labour-issues';
import { isOnMenu } from '../model/menu-price';
import { isOffered } from '../model/offered';
import { labourPerPortion } from '../model/per-portion';
import { portionWeights } from '../model/portion-weights';
import { issuesOf } from '../model/reached';
import { needOfServed } from '../model/served';
import type { Thing } from '../model/things';
import { withoutMinutes } from '../model/without-minutes';

/** The work in one item over all channels. Money is venue currency, per portion. */
export interface ItemLabour {
  readonly id: ItemId;
  readonly item: string;
  readonly kind: ItemKind;
  readonly sold: number;
  /** f: food, drink and packaging. */
  readonly plateCost: number | null;
  /** Hands-on minutes at the cost per hour of their grades, without plating. */
  readonly recipeLabour: number | null;
  /** Food plus recipe labour; null where either is not known. Energy is not included. */
  readonly foodPlusLabour: number | null;
  readonly platingMinutes: number | null;
  /** Net price - plate cost, before commission and labour. */
  readonly margin: number | null;
  readonly marginPerPlatingMinute: number | null;
  /** Recipes in it that state no minutes: why its labour is not known. */
  readonly withoutMinutes: readonly string[];
}

export interface LabourReport {
  readonly venue: VenueSettings;
  readonly period: DayRange;
  readonly items: readonly ItemLabour[];
  /** Work that what was served takes by recipe, by grade; what states no minutes is not in it. */
  readonly grades: readonly GradeWork[];
  readonly issues: readonly Issue[];
}

/**
 * The work by recipe in what is on the menu or sold, by name, and what it came to in the period, by grade.
 *
 * food plus recipe labour = f + hands-on minutes * cost per hour / 60; margin per plating minute = CM / plating minutes.
 */
export function labour(period: CostedPeriod): LabourReport {
  const offered = period.things.flatMap((thing, node) => (isOffered(thing) ? [{ thing, node }] : []));
  const nodes = offered.map(({ node }) => node);
  return {
    venue: period.venue,
    period: period.range,
    items: offered
      .map(({ thing, node }) => itemLabour(period, thing, node))
      .sort((a, b) => byText(nameKey(a.item), nameKey(b.item))),
    grades: gradeWork(period, needOfServed(period)),
    issues: [...issuesOf(period, nodes), ...labourIssues(period, nodes)].sort(inOrder),
  };
}

function itemLabour(period: CostedPeriod, thing: Thing, node: number): ItemLabour {
  const { from, to } = period.range;
  const days = Array.from({ length: to - from }, (_, index) => (from + index) as Day);
  const onMenu = days.filter((day) => isOnMenu(thing.menu, day));
  const channels = thing.menu.map(({ channel }) => channel);
  const { sold, plateCost, margin } = itemFigures(period, node, thing.sales, onMenu, channels);
  const weights = portionWeights(period, node, thing.sales, onMenu, channels);
  const { recipeLabour, platingMinutes } = labourPerPortion(period, node, weights);
  return {
    ...{ id: thing.id, item: thing.name, kind: thing.kind, sold, plateCost, recipeLabour, platingMinutes, margin },
    foodPlusLabour: plateCost === null || recipeLabour === null ? null : plateCost + recipeLabour,
    marginPerPlatingMinute: margin === null || !platingMinutes ? null : margin / platingMinutes,
    withoutMinutes: withoutMinutes(period, node),
  };
}
