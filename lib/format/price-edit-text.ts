import type { EditTarget, PriceEdit, PriceStep } from '../model/price-model/edits';

/** What a change is aimed at, as it is written before a name; nothing stands before the name of an ingredient. */
const PREFIXES = {
  ingredient: 'ingredient',
  group: 'group',
  supplier: 'supplier',
  item: 'menu',
  section: 'section',
} as const;

const WHOLES = { 'everything-bought': 'everything', 'whole-menu': 'menu' } as const;

const PREFIX = new RegExp(`^(${Object.values(PREFIXES).join('|')}):`);

/**
 * A change of prices as people write it in an address or behind an option: what, a colon, and the change.
 *
 * `Double cream:+10%`, `Double cream:+0.50` (a kilogram, litre or piece), `Double cream:6.20`, `group:Chocolate:-5%`,
 * `supplier:Bay Dairy:+2%`, `everything:+3%`, `menu:Dune:14.50`, `section:Plated:+0.50`, `menu:+4%`.
 */
export function priceEditText({ target, step }: PriceEdit): string {
  return `${targetText(target)}:${stepText(step)}`;
}

export function targetText(target: EditTarget): string {
  if (target.of === 'everything-bought' || target.of === 'whole-menu') return WHOLES[target.of];
  // an ingredient whose name reads as something else says that it is one
  const isPlain = target.of === 'ingredient' && !PREFIX.test(target.name) && !isWhole(target.name);
  return isPlain ? target.name : `${PREFIXES[target.of]}:${target.name}`;
}

function isWhole(text: string): boolean {
  return Object.values(WHOLES).some((whole) => whole === text);
}

function stepText(step: PriceStep): string {
  if (step.how === 'flat') return numberText(step.to);
  const sign = step.by < 0 ? '' : '+';
  return step.how === 'share' ? `${sign}${numberText(step.by * 100)}%` : `${sign}${numberText(step.by)}`;
}

/** Twelve digits: what a double holds without the noise of its last ones, never with an exponent. */
function numberText(value: number): string {
  const short = Number(value.toPrecision(12));
  return Math.abs(short) < 1e-6 ? '0' : String(short);
}

/** The change that a text says, or null where it says none. */
export function readPriceEdit(text: string): PriceEdit | null {
  const at = text.lastIndexOf(':');
  if (at < 0) return null;
  const target = readTarget(text.slice(0, at));
  const step = readStep(text.slice(at + 1));
  return target && step ? { target, step } : null;
}

/** What a text names, without a change. */
export function readTarget(text: string): EditTarget | null {
  const name = text.trim();
  if (name === '') return null;
  if (name === WHOLES['everything-bought']) return { of: 'everything-bought', name: null };
  if (name === WHOLES['whole-menu']) return { of: 'whole-menu', name: null };
  const prefix = PREFIX.exec(name)?.[1];
  const rest = prefix === undefined ? name : name.slice(prefix.length + 1).trim();
  if (rest === '') return null;
  const of = (Object.keys(PREFIXES) as (keyof typeof PREFIXES)[]).find((kind) => PREFIXES[kind] === prefix);
  return { of: of ?? 'ingredient', name: rest };
}

const STEP = /^([+-]?)(\d{1,9}(?:\.\d{1,9})?)(%?)$/;

/** `+10%`, `-0.50`, `19.20`; a minus may be the typographer's. A share needs its sign, so that it is no price. */
export function readStep(text: string): PriceStep | null {
  const [, sign, digits, percent] = STEP.exec(text.replaceAll(/\s/g, '').replace('\u2212', '-')) ?? [];
  if (digits === undefined) return null;
  const value = Number(digits) * (sign === '-' ? -1 : 1);
  if (percent === '%') return sign === '' ? null : { how: 'share', by: value / 100 };
  return sign === '' ? { how: 'flat', to: value } : { how: 'amount', by: value };
}
