import { figure, perCentFigure } from '@/lib/format/figures';
import { currencySign, moneyFigure, type Purse } from '@/lib/format/money';
import type { Phrase } from '@/lib/format/phrase';
import {
  flagText,
  type MovedPrice,
  movedText,
  nowText,
  priceBasis,
  priceSentence,
  rulerName,
  rulerNote,
  spokenPrice,
  troubleText,
  unitName,
} from '@/lib/format/words/price-changes';
import { shortNames } from '@/lib/format/words/short-names';
import { editTroubles, type PriceEdit } from '@/lib/model/price-model/edits';
import type { PriceModel } from '@/lib/model/price-model/price-model';
import { turningValues } from '@/lib/model/price-model/turning-values';
import { priceChange } from '@/lib/reports/price-change';
import type { ChangeTable } from '../before-after/change-row';
import { shapesOfSections } from '../mark-shape';
import { tickDecimals } from '../mix-plane/nice-ticks';
import type { RulerFacts, RulerFlag } from '../price-ruler/ruler-facts';
import { rulerScale } from '../price-ruler/ruler-scale';
import { changeTable, isTouched } from './change-table';
import { chosenOf, editsOf, type Moves } from './moves';
import { editTo, standsAt, type TargetFacts, targetFacts } from './target-facts';

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

/** All that the page says and draws of some moved prices, ready to be printed. */
export interface DeskFigures {
  readonly sentence: Phrase;
  readonly basis: readonly string[];
  readonly troubles: readonly string[];
  /** Of each price that is looked at. */
  readonly moved: readonly Phrase[];
  readonly chosen: {
    readonly name: string;
    /** What the fields hold; null where it has no price of its own. */
    readonly price: string | null;
    readonly change: string;
    readonly unit: string;
    /** Where the slider stands, how that is printed and how it is spoken. */
    readonly value: number;
    readonly valueText: string;
    readonly spoken: string;
    readonly isMoved: boolean;
  };
  readonly table: ChangeTable;
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
      label: rulerName(facts.name, chosen.target.of, unitText(facts, purse)),
      scale,
      tickTexts: scale.ticks.map((tick) => figure(tick, purse.locale, decimals)),
      now,
      nowText: nowText(isShare ? figure(0, purse.locale, 0) : moneyFigure(now, purse)),
      paid: facts.paid,
      flags,
      dearAbove: !isOnMenu(facts),
    },
    note: rulerNote(unitText(facts, purse), facts.paid, flags.length > 0, purse),
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

function unitText({ now, unit }: TargetFacts, purse: Purse): string {
  if (now === null) return '%';
  const sign = currencySign(purse);
  return unit === null ? `${sign} on the menu` : `${sign} a ${unitName(unit)}`;
}

function movedPrice(facts: TargetFacts, step: Moves['list'][number]['step']): MovedPrice {
  const { now, unit, target, name } = facts;
  const price = now === null ? (step?.how === 'flat' ? step.to : null) : standsAt(facts, step);
  const share = step?.how === 'share' ? step.by : null;
  return {
    name,
    kind: target.of,
    price,
    unit: unit && unitName(unit),
    change: price !== null && now !== null ? (now === 0 ? null : price / now - 1) : share,
    amount: now === null && step?.how === 'amount' ? step.by : null,
  };
}

/** What the moved prices come to, with so many rows of the table; what the ruler touches has its row even where nothing is moved. */
export function deskFigures(
  model: PriceModel,
  moves: Moves,
  { period, purse }: DeskScope,
  shown: number,
  { touches }: Pick<DeskRuler, 'touches'>,
): DeskFigures {
  const edits = editsOf(moves);
  const change = priceChange(model, edits);
  const facts = moves.list.map(({ target }) => targetFacts(model, target));
  const moved = moves.list.flatMap(({ step }, index) => {
    const of = facts[index];
    return of ? [movedPrice(of, step)] : [];
  });
  const names = model.items.map(({ name }) => name);
  const touched = change.items.filter(isTouched).length;
  const chosen = chosenOf(moves);
  const chosenFacts = targetFacts(model, chosen.target);
  const movedNow = movedPrice(chosenFacts, chosen.step);
  const value = standsAt(chosenFacts, chosen.step);
  const isShare = chosenFacts.now === null;
  return {
    sentence: priceSentence(
      {
        moved: moved.filter((_, index) => moves.list[index]?.step !== null),
        period,
        contribution: { before: change.before.contribution ?? 0, after: change.after.contribution ?? 0 },
        foodCost: { before: change.before.foodCost, after: change.after.foodCost },
        turned: change.turned,
        names,
      },
      purse,
    ),
    basis: priceBasis(period, edits.length === 0 ? null : touched, names.length, purse.locale),
    troubles: editTroubles(model, edits).map(({ edit, why }) =>
      troubleText(targetFacts(model, edit.target).name, why, period),
    ),
    moved: moved.map((each) => movedText(each, purse)),
    chosen: {
      name: movedNow.name,
      price: isShare ? null : moneyFigure(value, purse),
      change: movedNow.change === null ? '' : figure(movedNow.change * 100, purse.locale, { least: 1, most: 1 }),
      unit: unitText(chosenFacts, purse),
      value,
      valueText: isShare ? figure(value, purse.locale, 1) : moneyFigure(value, purse),
      spoken: spokenPrice(movedNow, purse),
      isMoved: chosen.step !== null,
    },
    table: changeTable(
      change,
      new Set(touches),
      shown,
      shapesOfSections(model.items.map(({ section }) => section)),
      purse,
    ),
  };
}
