import type { Packer, Unpacker } from '../../core/byte-pack';

/** What an amount was made from, as far as it can be told: with it the amount is written in few bytes, without it in eight. */
export interface AmountSource {
  /** What the recipe gives: base units of a batch, breakage taken off. Alike for all lines of a recipe. */
  readonly made: (line: number) => number;
  /** Usable yield of what the line asks for. */
  readonly usableYield: (line: number) => number;
}

/** Decimals of a quantity in base units that are tried: 0.125 g has three. */
const MOST_DIGITS = 4;
/** Steps between neighbouring doubles that a division done in another order may be off. */
const MOST_STEPS = 40;
const LARGEST = 2 ** 31;
/** Forms of an amount: 0 as it is; else 1 + 2 * digits, one more where the usable yield has no part in it. */
const AS_IT_IS = 0;

/**
 * Amounts of flat lines in few bytes, to the last bit.
 *
 * amount = quantity / usable yield / made, and a quantity as somebody weighs it has few digits. So there are written, for each run of
 * lines of one recipe, what it makes; for each thing that lines ask for, its usable yield; and for each line its quantity as a whole
 * number, and how many doubles the quotient is off.
 */
export function packAmounts(to: Packer, amounts: Float64Array, child: Int32Array, source: AmountSource): void {
  const yields = new Float64Array(child.reduce((most, each) => Math.max(most, each), -1) + 1);
  const forms: number[] = [];
  const wholes: number[] = [];
  const steps: number[] = [];
  const rest: number[] = [];
  const runs: number[] = [];
  const mades: number[] = [];
  amounts.forEach((amount, line) => {
    const made = source.made(line);
    const below = child[line] as number;
    if (yields[below] === 0) yields[below] = source.usableYield(line);
    if (runs.length > 0 && Object.is(mades.at(-1), made)) runs[runs.length - 1] = (runs.at(-1) ?? 0) + 1;
    else {
      runs.push(1);
      mades.push(made);
    }
    const form = formOf(amount, made, yields[below] as number);
    forms.push(form.form);
    if (form.form === AS_IT_IS) rest.push(amount);
    else {
      wholes.push(form.whole);
      steps.push(form.steps);
    }
  });
  to.ints(runs);
  to.doubles(mades);
  to.ints(forms);
  to.ints(wholes);
  to.ints(steps);
  to.doubles(yields);
  to.doubles(rest);
}

export function unpackAmounts(from: Unpacker, child: Int32Array): Float64Array {
  const runs = from.ints();
  const mades = from.doubles();
  const forms = from.ints();
  const wholes = from.ints();
  const steps = from.ints();
  const yields = from.doubles();
  const rest = from.doubles();
  let [run, left, whole, other] = [-1, 0, 0, 0];
  return Float64Array.from(forms, (form, line) => {
    while (left === 0) left = runs[++run] as number;
    left--;
    if (form === AS_IT_IS) return rest[other++] as number;
    const divisor = form % 2 === 1 ? (yields[child[line] as number] as number) : 1;
    const quotient = amountOf(wholes[whole] as number, form, divisor, mades[run] as number);
    return stepped(quotient, steps[whole++] as number);
  });
}

function amountOf(whole: number, form: number, usableYield: number, made: number): number {
  return whole / 10 ** Math.floor((form - 1) / 2) / usableYield / made;
}

interface Form {
  readonly form: number;
  readonly whole: number;
  readonly steps: number;
}

function formOf(amount: number, made: number, usable: number): Form {
  for (let digits = 0; digits <= MOST_DIGITS; digits++) {
    for (const [divisor, form] of [
      [usable, 1 + 2 * digits],
      [1, 2 + 2 * digits],
    ] as const) {
      const whole = Math.round(amount * made * divisor * 10 ** digits);
      if (!(Math.abs(whole) < LARGEST) || whole === 0) continue;
      const steps = stepsBetween(amountOf(whole, form, divisor, made), amount);
      if (Math.abs(steps) <= MOST_STEPS) return { form, whole, steps };
    }
  }
  return { form: AS_IT_IS, whole: 0, steps: 0 };
}

const cell = new DataView(new ArrayBuffer(8));

function bitsOf(value: number): bigint {
  cell.setFloat64(0, value);
  return cell.getBigInt64(0);
}

/** How many doubles lie from one to the other, of the same sign. */
function stepsBetween(a: number, b: number): number {
  if (a === b) return 0;
  return Number(bitsOf(b) - bitsOf(a));
}

function stepped(value: number, steps: number): number {
  if (steps === 0) return value;
  cell.setBigInt64(0, bitsOf(value) + BigInt(steps));
  return cell.getFloat64(0);
}
