/** Models of menu analysis by the names that the interface gives them. */
export type ModelName = 'kasavana-smith' | 'miller' | 'pavesic' | 'goal-value' | 'labour';

/** Kasavana & Smith's four classes. */
export type QuadrantClass = 'star' | 'plowhorse' | 'puzzle' | 'dog';

/** The classes of all models. */
export type MixClass =
  | QuadrantClass
  | 'winner'
  | 'marginal'
  | 'loser'
  | 'prime'
  | 'standard'
  | 'sleeper'
  | 'problem'
  | 'above'
  | 'below'
  | `${QuadrantClass}-${'light' | 'heavy'}`;

/** What a model looks at, of one item or of one item in one resample. Money in venue currency per portion. */
export interface MixFigures {
  readonly sold: number;
  /** Portions it would have had if each day's portions had been shared equally among that day's items. */
  readonly expected: number;
  /** Contribution margin. */
  readonly margin: number;
  readonly netPrice: number;
  /** Of the plate cost, what food-cost % counts. */
  readonly food: number;
  /** Recipe labour; null where it is not known. */
  readonly labour: number | null;
}

/** What an item is held against: the menu as a whole, of the items whose margin is known. */
export interface MenuAverages {
  /** Kasavana & Smith's share of the expected portions from which an item is popular; 0.70. */
  readonly popularityFactor: number;
  /** Portion-weighted mean margin. */
  readonly meanMargin: number;
  /** Total food cost / total revenue; null where there is no revenue. */
  readonly foodCost: number | null;
  /** What an item left in the period, as a mean over items. */
  readonly meanContribution: number;
  /** The menu's own goal value; null where it cannot be said. */
  readonly goalValue: number | null;
  /** The venue's stated variable cost as a fraction of the price; null where none is stated. */
  readonly variableCost: number | null;
  /** Portion-weighted mean recipe labour of the items of which it is known; null where it is known of none that was sold. */
  readonly meanLabour: number | null;
}

/** One model of menu analysis: a function from an item and its menu to a class; null where what it asks for is not known. */
export interface MixModel {
  readonly name: ModelName;
  /** Its classes, the most favourable first. */
  readonly classes: readonly MixClass[];
  /** Whether it looks at recipe labour, which is worked out only when it is asked for. */
  readonly asksLabour: boolean;
  readonly classOf: (item: MixFigures, menu: MenuAverages) => MixClass | null;
}
