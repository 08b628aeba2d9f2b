import { figure } from '@/lib/format/figures';
import { moneyFigure } from '@/lib/format/money';
import type { Phrase } from '@/lib/format/phrase';
import {
  type MovedPrice,
  movedText,
  priceBasis,
  priceSentence,
  spokenPrice,
  troubleText,
  unitName,
} from '@/lib/format/words/price-changes';
import { editTroubles, type PriceEdit } from '@/lib/model/price-model/edits';
import type { PriceModel } from '@/lib/model/price-model/price-model';
import { uncostedTouched } from '@/lib/model/price-model/reached-goods';
import { priceChange } from '@/lib/reports/price-change';
import type { ChangeTable } from '../before-after/change-row';
import { shapesOfSections } from '../mark-shape';
import { changeTable, isTouched } from './change-table';
import type { DeskRuler, DeskScope } from './desk-ruler';
import { chosenOf, editsOf, type Moves } from './moves';
import { standsAt, type TargetFacts, targetFacts, targetUnit } from './target-facts';

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

function isMade(move: Moves['list'][number] | undefined, edits: readonly PriceEdit[]): boolean {
  return move?.step != null && edits.some(({ target, step }) => target === move.target && step === move.step);
}

/** What the moved prices come to, with so many rows of the table; what the ruler touches has its row even where nothing is moved. */
export function deskFigures(
  model: PriceModel,
  moves: Moves,
  { period, purse }: DeskScope,
  shown: number,
  { touches }: Pick<DeskRuler, 'touches'>,
): DeskFigures {
  const asked = editsOf(moves);
  const troubles = editTroubles(model, asked);
  const refused = new Set(troubles.map(({ edit }) => edit));
  // what cannot be is said, and nothing is worked out from it
  const edits = asked.filter((edit) => !refused.has(edit));
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
        moved: moved.filter((_, index) => isMade(moves.list[index], edits)),
        period,
        contribution: { before: change.before.contribution ?? 0, after: change.after.contribution ?? 0 },
        foodCost: { before: change.before.foodCost, after: change.after.foodCost },
        turned: change.turned,
        names,
      },
      purse,
    ),
    basis: priceBasis(
      period,
      edits.length === 0 ? null : { known: touched, unknown: uncostedTouched(model, edits).length },
      names.length,
      purse.locale,
    ),
    troubles: troubles.map(({ edit, why }) => troubleText(targetFacts(model, edit.target).name, why, period)),
    moved: moved.map((each) => movedText(each, purse)),
    chosen: {
      name: movedNow.name,
      price: isShare ? null : moneyFigure(value, purse),
      change: movedNow.change === null ? '' : figure(movedNow.change * 100, purse.locale, { least: 1, most: 1 }),
      unit: targetUnit(chosenFacts, purse),
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
