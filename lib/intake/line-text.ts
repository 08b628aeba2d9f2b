import type { TypedLine } from '../model/line-question';

/** What a line says when it is written out again. */
export type WrittenLine = Pick<TypedLine, 'quantity' | 'unit' | 'name' | 'size' | 'use' | 'part' | 'preparation'>;

const MANY: Readonly<Record<string, string>> = {
  leaf: 'leaves',
  loaf: 'loaves',
  pinch: 'pinches',
  dash: 'dashes',
  bunch: 'bunches',
};

/** 1/3 of a cup keeps twelve decimals, which is far below a milligram of anything. */
function plain(quantity: number): string {
  const fixed = quantity.toFixed(12);
  return fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
}

function unitText(unit: string, quantity: number): string {
  return quantity > 1 ? (MANY[unit] ?? unit) : unit;
}

/**
 * A line as a cook would type it, such that typedLine reads the same from it: "250 g double cream, softened", "zest of 4 lemons",
 * "4 large egg yolk". A quantity that nobody stated stays unsaid.
 */
export function lineText({ quantity, unit, name, size, use, part, preparation }: WrittenLine): string {
  const amount =
    quantity === null
      ? []
      : [plain(quantity), size, unit === null || unit === 'each' ? null : unitText(unit, quantity)];
  const ofEgg = (part === 'yolk' || part === 'white') && /egg$/i.test(name);
  const thing = ofEgg ? `${name} ${part}` : name;
  const said = [...amount, thing].filter((word) => word !== null && word !== '').join(' ');
  const taken = use !== null ? `${use} of ${said}` : part === null || ofEgg ? said : `${part} of ${said}`;
  return preparation === null ? taken : `${taken}, ${preparation}`;
}
