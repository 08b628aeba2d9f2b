import type { Day } from '../core/days';

/**
 * A fact that is missing or does not fit, as a value: which rule, about what, and the particulars that the sentence needs.
 * lib/format/words turns it into the sentence with its remedy; nothing in the model words anything.
 */
export interface Issue {
  readonly code: IssueCode;
  /** Name of the thing that has to be mended: an ingredient, a recipe, an offer, a setting. */
  readonly about: string;
  readonly facts: Readonly<Record<string, string | number | null | readonly string[]>>;
  /** First business day of the period on which it holds, where it is dated. */
  readonly day?: Day;
}

export const ISSUE_CODES = [
  'no-offer', // an ingredient in use that nobody offers
  'offer-not-chosen', // several offers, none chosen. facts: offers[]
  'no-price', // the chosen offer has no price in force. facts: supplier, code; where it has one on other days of the period: from (first day without), until (first day with one again), each null where there is none
  'no-exchange-rate', // facts: currency
  'price-waits', // an invoice price more than 20 % off what was known enters no cost until a yes. facts: supplier, code, invoice, price, last
  'goods-without-quantity', // a delivered line that says neither packs nor weight. facts: supplier, code, invoice
  'goods-without-value', // goods received, not invoiced, and no price to take. facts: supplier, code
  'unknown-count-unit', // counted or moved in a unit that leads nowhere. facts: unit
  'portions-above-covers', // about: the day. facts: portions, covers, each (most that one guest could order)
  'unknown-unit', // facts: unit, where (recipe or offer)
  'pack-unit-mismatch', // pack unit in another dimension and no way across. facts: unit, missing
  'no-density', // facts: recipe, unit
  'no-piece-weight', // facts: recipe, unit
  'no-yield', // a component without output whose lines cannot all be weighed. facts: missing[]
  'no-output-unit', // a component asked for in a dimension its batch was not measured in. facts: recipe, unit, outputs
  'nothing-left', // fixed batch loss at or above the batch. facts: output, loss
  'no-lines', // a version without lines
  'refused-lines', // a version with lines that could not be taken. facts: lines
  'no-version', // a line to a thing with no version in force that day. facts: recipe
  'unknown-use', // a line names a usable yield that the thing does not have. facts: recipe, use
  'unknown-part', // a line names a part that the thing is not split into. facts: recipe, part
  'part-unit', // a part asked for in a dimension it is not stated in. facts: recipe, unit, outputs
  'part-shares', // the cost shares of the parts of a thing do not sum to 1. facts: sum
  'choice-shares', // the shares of a choice do not sum to 1. facts: choice, sum (null: one is not stated)
  'credits-differ', // two recipes make it with different credits. facts: recipes[]
  'no-mix-volume', // overrun without the volume of the mix. facts: outputs
  'no-grade', // hands-on minutes without a grade. facts: minutes
  'no-labour-rate', // minutes of a grade that has no cost per hour that day. facts: recipe
  'unknown-allergen', // a declared word that is on no list, so that nothing can be said of any allergen. facts: word
  'covers-missing', // about: the period. days with sales at the tables without covers: no spend per cover of them. facts: days
  'no-covers', // extras are given per cover, and days with sales have no covers. facts: days
  'cycle', // facts: loop[] of names, first repeated last
  'no-recipe', // sold or on the menu, neither recipe nor estimate
  'begins-late', // sold or on the menu before what is stated of it begins. facts: from (first day on sale without), begins, kind
  'no-portion', // sold, but measured by weight or volume: nobody said what a portion is
  'no-menu-price', // portions without revenue and no menu price that day. facts: portions
  'stand-in-revenue', // revenue taken from the menu price. facts: portions
  'few-items', // fewer than six items in the mix. facts: items
  'few-trading-days', // fewer than 14: no certainty. facts: days
  'not-classed', // on sale on too few days. facts: days, needed
  'sales-waiting', // sold under names that nobody knows. facts: names (how many), rows, portions, largest[], share of all portions
  'set-menu-not-spread', // its sales stay with it: what its courses cost or brought alone is not its own. facts: portions
  'course-estimated', // its part of set menus is taken from its plate cost: it has no price alone
  'no-sales', // nothing sold in the period
  'no-variable-cost', // goal values ask for the venue's stated variable cost
  'year-short', // about: the first day with sales, later than the first of the twelve months. facts: from
  'coverage-low', // about: the period. margins known for so few portions that its figures are provisional. facts: share
  'revenue-negative', // an item's net revenue of the period is below zero. facts: revenue
  'setting-defaulted', // facts: setting, value
] as const;

export type IssueCode = (typeof ISSUE_CODES)[number];
