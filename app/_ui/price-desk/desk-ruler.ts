import { figure, perCentFigure } from '@/lib/format/figures';
import { moneyFigure, type Purse } from '@/lib/format/money';
import { flagText, nowText, rulerName, rulerNote } from '@/lib/format/words/price-changes';
import { shortNames } from '@/lib/format/words/short-names';
import type { PriceEdit } from '@/lib/model/price-model/edits';
import type { PriceModel } from '@/lib/model/price-model/price-model';
import { turningValues } from '@/lib/model/price-model/turning-values';
import { priceChange } from '@/lib/reports/price-change';
import { tickDecimals } from '../mix-plane/nice-ticks';
import type { RulerFacts, RulerFlag } from '../price-ruler/ruler-facts';
import { rulerScale } from '../price-ruler/ruler-scale';
import { isTouched } from './change-table';
import { chosenOf, type Moves } from './moves';
import { editTo, standsAt, type TargetFacts, targetFacts, targetUnit } from './target-facts';

/** Whose figures they are, in words. */
export interface DeskScope {
  readonly period: string;
  readonly purse: Purse;
}

/** The ruler of the chosen price; it rests while that price moves. */
export interface DeskRuler {
  /** Null where the price is not known. */
  readonly facts: RulerFacts | null;
  readonly note: string;
  /** Dishes that the price touches wherever it is moved to: they keep their rows, so that nothing shifts while it moves. */
  readonly touches: readonly string[];
}

/** How far the slider reaches from the price now, and from nothing where several move together. */
const REACH = [0.5, 1.6] as const;
const SHARE_REACH = [-40, 60] as const;

function isOnMenu({ target }: TargetFacts): boolean {
  return target.of === 'item' || target.of === 'section' || target.of === 'whole-menu';
}

/** The ruler of the chosen price, with room for what was paid and for where it stands. */
export function deskRuler(model: PriceModel, moves: Moves, { purse }: DeskScope): DeskRuler {
  const chosen = chosenOf(moves);
  const facts = targetFacts(model, chosen.target);
  const isShare = facts.now === null;
  if (isShare && (chosen.target.of === 'ingredient' || chosen.target.of === 'item')) {
    return { facts: null, note: '', touches: [] };
  }
  const now = facts.now ?? 0;
  const reach = isShare ? SHARE_REACH : REACH.map((share) => now * share);
  const scale = rulerScale([now, ...reach, ...(facts.paid ?? []), standsAt(facts, chosen.step)], isShare ? -100 : 0);
  const decimals = tickDecimals(scale.ticks);
  const edits = editsAlong(moves, facts);
  const flags = flagsOf(model, edits, facts, scale, purse);
  const ends = [scale.low, scale.high].flatMap((end) => priceChange(model, edits(end)).items.filter(isTouched));
  return {
    facts: {
      label: rulerName(facts.name, chosen.target.of, targetUnit(facts, purse)),
      scale,
      tickTexts: scale.ticks.map((tick) => figure(tick, purse.locale, decimals)),
      now,
      nowText: nowText(isShare ? figure(0, purse.locale, 0) : moneyFigure(now, purse)),
      paid: facts.paid,
      flags,
      dearAbove: !isOnMenu(facts),
    },
    note: rulerNote(targetUnit(facts, purse), facts.paid, flags.length > 0, purse),
    touches: [...new Set([...ends.map(({ item }) => item.name), ...flags.map(({ item }) => item)])],
  };
}

/** All changes, with the chosen price at a value of the ruler. */
function editsAlong({ list, at }: Moves, facts: TargetFacts): (value: number) => readonly PriceEdit[] {
  return (value) =>
    list.flatMap(({ target, step }, index) =>
      index === at ? [editTo(facts, value)] : step === null ? [] : [{ target, step }],
    );
}

/** The dishes that change class along the ruler, those nearest to the price now first. */
function flagsOf(
  model: PriceModel,
  edits: (value: number) => readonly PriceEdit[],
  facts: TargetFacts,
  { low, high }: { readonly low: number; readonly high: number },
  purse: Purse,
): readonly RulerFlag[] {
  const now = facts.now ?? 0;
  const names = model.items.map(({ name }) => name);
  const short = new Map(shortNames(names).map((name, index) => [names[index], name]));
  return turningValues(model, edits, low, high)
    .filter(({ value }) => value >= low && value <= high)
    .sort((a, b) => Math.abs(a.value - now) - Math.abs(b.value - now))
    .map(({ item, value, below, above }) => ({
      item,
      value,
      head: `${short.get(item) ?? item} ${facts.now === null ? perCentFigure(value / 100, purse.locale) : moneyFigure(value, purse)}`,
      text: value > now ? flagText(above, true) : flagText(below, false),
    }));
}
