import type { RulerScale } from './ruler-scale';

/** A turning price as a flag: whose it is, and what happens there. */
export interface RulerFlag {
  readonly item: string;
  readonly value: number;
  /** Its name and price, and below that its class beyond: Slate 18.81, plowhorse from here. */
  readonly head: string;
  readonly text: string;
}

/** All that a ruler draws and says, but for the value that is moved. Values are in the unit that is printed. */
export interface RulerFacts {
  /** What is moved, and in what unit: Dark couverture 70 %, euro a kilogram. */
  readonly label: string;
  readonly scale: RulerScale;
  readonly tickTexts: readonly string[];
  readonly now: number;
  readonly nowText: string;
  /** What was paid in the last 18 months; null where nobody knows. */
  readonly paid: readonly [number, number] | null;
  readonly flags: readonly RulerFlag[];
  /** Whether more of it is against the house: a price paid is, a menu price is not. */
  readonly dearAbove: boolean;
}
