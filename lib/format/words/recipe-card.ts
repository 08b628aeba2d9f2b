import { benchAmount, benchMinutes } from '../bench-amount';
import { figure, perCent } from '../figures';
import { dayName } from '../periods';
import { countWord, portions } from '../portions';
import type { ProblemWords } from './problems';

export const CARD = {
  quantity: 'Quantity',
  item: 'Item',
  take: 'Take from the store',
  note: 'Note',
  byProduct: 'made beside it',
  asBought: 'as bought',
} as const;

interface CardHead {
  readonly venue: string;
  readonly date: string;
  readonly item: string;
  readonly kind: string;
  readonly times: number;
  readonly gives: number | null;
  readonly serves: number | null;
  readonly recipe: {
    readonly usableUnit: string | null;
    readonly breakagePct: number;
    readonly batchLossG: number | null;
  } | null;
  readonly handsOnMinutes: number | null;
  readonly grade: string | null;
  readonly platingMinutes: number | null;
  readonly platingGrade: string | null;
  readonly shelfLifeDays: number | null;
  readonly thrownAtClose: boolean;
  readonly smallestBatch: { readonly quantity: number; readonly unit: string } | null;
}

/** What stands over a card: what and how much, what it gives, minutes, how long it keeps. */
export function cardHead(card: CardHead, locale: string): readonly string[] {
  const isBatch = card.kind === 'component';
  const many = isBatch
    ? `${figure(card.times, locale, { least: 0, most: 2 })} ${card.times === 1 ? 'batch' : 'batches'}`
    : portions(card.times, locale);
  const unit = card.recipe?.usableUnit ?? null;
  const loss = card.recipe?.breakagePct ?? 0;
  const gives =
    card.gives === null
      ? 'What it gives is not known.'
      : `Gives ${isBatch ? benchAmount(card.gives, unit, locale) : portions(card.gives, locale)}${
          loss > 0 ? `; ${perCent(loss, locale)} of it breaks` : ''
        }.`;
  const minutes = [
    ...(card.handsOnMinutes === null ? [] : [`hands-on ${benchMinutes(card.handsOnMinutes, locale)}${by(card.grade)}`]),
    ...(card.platingMinutes === null
      ? []
      : [`plating ${benchMinutes(card.platingMinutes, locale)}${by(card.platingGrade)}`]),
  ];
  return [
    `${card.item}, ${many} (${card.venue}, ${dayName(card.date, locale)})`,
    gives,
    ...(minutes.length === 0 ? [] : [`Minutes: ${minutes.join('; ')}.`]),
    ...keeping(card, locale),
  ];
}

const by = (grade: string | null): string => (grade === null ? '' : ` (${grade})`);

function keeping({ shelfLifeDays, thrownAtClose, smallestBatch }: CardHead, locale: string): readonly string[] {
  const keeps = thrownAtClose
    ? ['Thrown at close']
    : shelfLifeDays === null
      ? []
      : [
          `Keeps ${figure(shelfLifeDays, locale, 0)} ${shelfLifeDays === 1 ? 'day' : 'days'}, the day of making with it`,
        ];
  const smallest = smallestBatch
    ? [`never less than ${benchAmount(smallestBatch.quantity, smallestBatch.unit, locale)}`]
    : [];
  const all = [...keeps, ...smallest];
  return all.length === 0 ? [] : [`${all.join('; ')}.`];
}

interface NamedLine {
  readonly item: string;
  readonly as: 'prepared' | 'bought';
  readonly use: string | null;
  readonly part: string | null;
  readonly choice: string | null;
  readonly sharePct: number | null;
  readonly channel: string | null;
  readonly byProduct: boolean;
}

/** What a line asks for: Eggs, yolk (as bought; takeaway only). */
export function cardLineName(line: NamedLine, locale: string): string {
  const beside = [
    ...(line.use === null ? [] : [line.use]),
    ...(line.as === 'bought' ? [CARD.asBought] : []),
    ...(line.choice === null
      ? []
      : [`${line.choice}: ${line.sharePct === null ? '' : perCent(line.sharePct, locale, 0)}`]),
    ...(line.channel === null ? [] : [`${line.channel} only`]),
    ...(line.byProduct ? [CARD.byProduct] : []),
  ];
  const name = line.part === null ? line.item : `${line.item}, ${line.part}`;
  return beside.length === 0 ? name : `${name} (${beside.join('; ')})`;
}

interface InIt {
  readonly allergens: readonly { readonly allergen: string; readonly state: string }[];
  readonly cautions: readonly { readonly caution: string; readonly from: readonly string[] }[];
  readonly unknownFrom: readonly string[];
}

/** Allergens and cautions of a card; what is not known is never left out. */
export function inItWords({ allergens, cautions, unknownFrom }: InIt): readonly string[] {
  const of = (state: string): string =>
    allergens
      .filter((each) => each.state === state)
      .map(({ allergen }) => allergen)
      .join(', ') || 'none declared';
  return [
    `Contains: ${of('contains')}. May contain: ${of('may-contain')}.`,
    ...(unknownFrom.length === 0 ? [] : [`Not known for ${unknownFrom.join(', ')}: free of nothing because of it.`]),
    ...cautions.map(({ caution, from }) => `Caution: ${caution} (${from.join(', ')}).`),
  ];
}

export function portionsOfComponent(item: string): ProblemWords {
  return {
    title: 'Batches',
    detail: `${item} is a component and is made in batches. Name them with --batches instead of --portions.`,
  };
}

export function batchesOfPlate(item: string): ProblemWords {
  return {
    title: 'Portions',
    detail: `${item} is plated by the portion. Name them with --portions instead of --batches.`,
  };
}

export function notSoMany(most: number): ProblemWords {
  return { title: 'How many?', detail: `The number has to be above zero, and at most ${countWord(most, 'en')}.` };
}

export function noRecipeThen(item: string, day: string): ProblemWords {
  return {
    title: 'No recipe',
    detail: `No recipe of ${item} is in force on ${day}. Name another day, or write one down.`,
  };
}
