import { nameKey } from '@/lib/core/name-key';

/** A price, or several together, that can be moved. */
export interface PriceChoice {
  /** Apart from every other choice: a supplier may be called like a dish. */
  readonly key: string;
  readonly name: string;
  /** What it is, beside the name: ingredient, product group, supplier, on the menu. */
  readonly what: string;
}

const SHOWN = 60;

/** The choices whose names hold every word that was typed, those that begin with it first; so many that a list can be read. */
export function foundChoices(choices: readonly PriceChoice[], typed: string): readonly PriceChoice[] {
  const whole = nameKey(typed);
  const words = whole.split(/\s+/).filter(Boolean);
  const found = choices.filter(({ name }) => {
    const key = nameKey(name);
    return words.every((word) => key.includes(word));
  });
  const first = found.filter(({ name }) => nameKey(name).startsWith(whole));
  const rest = found.filter(({ name }) => !nameKey(name).startsWith(whole));
  return [...first, ...rest].slice(0, SHOWN);
}
