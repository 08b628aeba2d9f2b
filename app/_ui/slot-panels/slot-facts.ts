/** One place on the axis that all panels share: a month of a year, a day of a week. */
export interface Slot {
  readonly key: string;
  readonly label: string;
  /** In bold under the label, where a year begins. */
  readonly below: string | null;
}

/** What a panel shows in one slot; null: not known, and nothing is drawn. */
export interface SlotValue {
  readonly value: number | null;
  /** Provisional, or still running: drawn hollow. */
  readonly hollow: boolean;
  /** What it is held against: a stroke across the slot. */
  readonly against: number | null;
}

export interface Panel {
  readonly key: string;
  /** What it shows and its unit: left before labour, €. */
  readonly name: string;
  /** Bars stand on zero; dots are for what has no zero worth showing. */
  readonly kind: 'bars' | 'dots';
  readonly values: readonly SlotValue[];
  /** A line that the values are held against, with its name. */
  readonly line: { readonly value: number; readonly name: string } | null;
  /** The last known value in words, at the right end over the panel. */
  readonly last: string;
  /** Figures at the axis. */
  readonly figure: (value: number, decimals: number) => string;
}

/** A row of short words under the panels: what happened in each slot. */
export interface EventRow {
  readonly key: string;
  readonly name: string;
  readonly words: readonly string[];
}

export interface SlotFacts {
  readonly slots: readonly Slot[];
  readonly panels: readonly Panel[];
  readonly events: readonly EventRow[];
}

/** The last so many slots, where there is room for no more. */
export function lastSlots(facts: SlotFacts, count: number): SlotFacts {
  const last = <T>(all: readonly T[]): readonly T[] => all.slice(-count);
  return {
    slots: last(facts.slots),
    panels: facts.panels.map((panel) => ({ ...panel, values: last(panel.values) })),
    events: facts.events.map((row) => ({ ...row, words: last(row.words) })),
  };
}
