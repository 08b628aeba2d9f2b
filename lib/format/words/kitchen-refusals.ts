import type { RefusalFacts, RowFault, RowRule } from '../../model/refusal';
import { rowRefusalText } from './refusals';

/** A column of the data folder as the name of a field: usable_yield_pct is usable yield. */
export function fieldName(column: string): string {
  return column
    .replace(/_pct$/, '')
    .replace(/_g_per_ml$/, '')
    .replace(/_g$/, '')
    .replaceAll('_', ' ');
}

type Sentence = (facts: RefusalFacts, value: string, field: string) => string;

/** Rules whose sentence for files speaks of files, lines and waiting: in the kitchen nothing waits. */
const IN_THE_KITCHEN: Readonly<Partial<Record<RowRule, Sentence>>> = {
  blank: (_, __, field) => `The ${field} is blank. Fill it in.`,
  'not-positive': (_, value, field) =>
    `${value} as ${field} is not above zero. Write how much it is, or take the line out.`,
  'said-twice': (_, value) =>
    `${value === '' ? 'This' : `“${value}”`} is written twice and says two things. Keep one of the two.`,
  'unknown-item': (_, value) =>
    `There is no “${value}” yet. Write it down as an ingredient or a component first, or correct the name.`,
  'unknown-ingredient': (_, value) => `“${value}” is not an ingredient. Name an ingredient.`,
  'unknown-recipe': (_, value) => `There is no such version of “${value}” any more. Open it again.`,
  'kind-differs': (_, value) =>
    `“${value}” is not what this recipe is at its other dates. Use one kind for all of them.`,
  'name-taken': (facts, value) =>
    `“${value}” is already the name of ${facts.kind === 'ingredient' ? 'an ingredient' : 'something that is made'}. A name can mean only one thing: choose another.`,
  'unknown-setting': (_, value) => `There is no field “${value}” here. Leave it out.`,
};

/** Why something written in the kitchen cannot be kept, and how to mend it: the words of files where the rule is the same. */
export function kitchenRefusalText(fault: RowFault): string {
  const field = fieldName(fault.column ?? '');
  const own = IN_THE_KITCHEN[fault.rule];
  if (own) return own(fault.facts, fault.value ?? '', field);
  const { other } = fault.facts;
  const facts = typeof other === 'string' ? { ...fault.facts, other: fieldName(other) } : fault.facts;
  return rowRefusalText({ ...fault, facts, column: field });
}
