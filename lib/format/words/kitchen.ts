import type { ProblemWords } from './problems';

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
const counted = (count: number, single: string, plural = `${single}s`): string =>
  `${count} ${count === 1 ? single : plural}`;

export const notYours: ProblemWords = {
  title: 'Not yours to change',
  detail: 'Recipes are changed by the owner and the chef. Ask one of them, or have an owner give you that role.',
};

export const notKept: ProblemWords = {
  title: 'Not kept',
  detail: 'Something here cannot be kept as it is; nothing was changed. What it is stands with each field.',
};

export function noSuchForm(field: string): string {
  return field === ''
    ? 'This is no edit, or it says something that no edit has. Send it as its description says.'
    : `“${field}” is missing, too long, or has another form than an edit has. Send it as its description says.`;
}

export function goneFromKitchen(name: string): ProblemWords {
  return {
    title: 'Not there',
    detail: `There is no “${name}” in the kitchen. It may have been renamed or deleted; open the list again.`,
  };
}

export function alreadyThere(name: string): ProblemWords {
  return {
    title: 'Already there',
    detail: `There already is “${name}”. Open it and change it, or choose another name; nothing was changed.`,
  };
}

export function changedMeanwhile(name: string, who: string, at: string): ProblemWords {
  return {
    title: 'Somebody else changed this',
    detail: `${who} changed “${name}” on ${at}, after you opened it. Nothing of yours was kept yet: look at both and choose.`,
  };
}

export function deletedMeanwhile(name: string, who: string, at: string): ProblemWords {
  return {
    title: 'Somebody else deleted this',
    detail: `${who} deleted “${name}” on ${at}, after you opened it. Undo that first, or write it down anew.`,
  };
}

export function booksClosed(through: string): ProblemWords {
  return {
    title: 'The books are closed',
    detail: `The books are closed through ${through}, so this can no longer change. Use a later day, or have an owner reopen the period.`,
  };
}

/** Each kind of use as a part of a sentence. */
const USE: Readonly<Record<string, (where: readonly string[]) => string>> = {
  recipe: (where) => `it goes into ${listed(where)}`,
  offer: (where) => `it is bought from ${listed(where)}`,
  menu: (where) => `it has a menu price (${listed(where)})`,
  sales: (where) => `it was sold in ${listed(where)}`,
  count: (where) => `it was counted on ${listed(where)}`,
  move: (where) => `it was moved or thrown on ${listed(where)}`,
  trial: (where) => `it was tried on ${listed(where)}`,
  'trial-line': (where) => `trials of ${listed(where)} used it`,
};
const MOST_NAMED = 5;

/** Why something cannot be deleted: everything that uses it, of many the first few. */
export function stillUsed(name: string, uses: readonly { readonly kind: string; readonly in: string }[]): ProblemWords {
  const kinds = [...new Set(uses.map(({ kind }) => kind))].map((kind) => {
    const where = uses.filter((use) => use.kind === kind).map((use) => use.in);
    const more = where.length - MOST_NAMED;
    return USE[kind]?.([...where.slice(0, MOST_NAMED), ...(more > 0 ? [`${more} more`] : [])]) ?? kind;
  });
  return {
    title: 'Still in use',
    detail: `“${name}” cannot be deleted: ${kinds.join('; ')}. Take it out there first; nothing was changed.`,
  };
}

export function lastVersion(name: string): ProblemWords {
  return {
    title: 'The only version',
    detail: `This is the only version of “${name}”. Change it, or delete “${name}” as a whole; nothing was changed.`,
  };
}

export function noSuchVersion(name: string, from: string, known: readonly string[]): ProblemWords {
  const days = known.map((day) => (day === '' ? 'the beginning' : day));
  const there = days.length === 0 ? 'It has none.' : `There is one from ${listed(days)}.`;
  return {
    title: 'No such version',
    detail: `“${name}” has no version from ${from === '' ? 'the beginning' : from}. ${there}`,
  };
}

export function linesWaiting(name: string, lines: number): ProblemWords {
  return {
    title: 'Lines are waiting',
    detail: `${counted(lines, 'line')} of “${name}” from a file could not be taken and ${lines === 1 ? 'waits' : 'wait'} under this name. Save its lines once more or bring the file in again, then rename it.`,
  };
}

export const noSuchSave: ProblemWords = {
  title: 'Nothing to undo',
  detail: 'There is no such save of this venue. Open the item again to see what was last changed.',
};

export const savedByFile: ProblemWords = {
  title: 'It came with a file',
  detail:
    'That change came with a file that was brought in. Bring in the corrected file; it takes the place of the first.',
};

export function changedSince(name: string): ProblemWords {
  return {
    title: 'It was changed since',
    detail: `“${name}” was changed again after that save, and undoing it would take the later change along. Undo the later change first.`,
  };
}

export function nameTaken(name: string): ProblemWords {
  return {
    title: 'The name is taken',
    detail: `The name that would come back now belongs to “${name}”. Rename that first; nothing was changed.`,
  };
}

const THINGS: Readonly<Record<string, string>> = {
  item: 'the name',
  ingredient_version: 'a version',
  recipe_version: 'a version',
  recipe_line: 'a line',
  named_measure: 'a measure',
  part: 'a part',
  yield_use: 'a yield',
};
const DID = { added: 'added', changed: 'changed', 'taken-away': 'took away' } as const;

/** What one row of the record says: changed a line (double cream). */
export function recordedText(thing: string, did: keyof typeof DID, about: string | null): string {
  return `${DID[did]} ${THINGS[thing] ?? thing}${about === null ? '' : ` (${about})`}`;
}

type Plate = { readonly item: string; readonly kind: string };
const KINDS: Readonly<Record<string, readonly [string, string]>> = {
  ingredient: ['ingredient', 'ingredients'],
  component: ['component', 'components'],
  dish: ['dish', 'dishes'],
  set_menu: ['set menu', 'set menus'],
  extra: ['extra', 'extras'],
};
const PLATES = ['dish', 'set_menu', 'extra'];

/** The allergens that a change adds to plates or takes away: “Adds hazelnut to 3 dishes: A, B and C.” Null where no plate is touched. */
export function allergenStepText(step: {
  readonly word: string | null;
  readonly state: 'contains' | 'may-contain' | 'unknown';
  readonly added: boolean;
  readonly items: readonly Plate[];
}): string | null {
  const plates = step.items.filter(({ kind }) => PLATES.includes(kind));
  if (plates.length === 0) return null;
  const kinds = PLATES.map((kind) => [kind, plates.filter((plate) => plate.kind === kind).length] as const)
    .filter(([, count]) => count > 0)
    .map(([kind, count]) => counted(count, KINDS[kind]?.[0] ?? kind, KINDS[kind]?.[1]));
  const where = `${listed(kinds)}: ${listed(plates.map(({ item }) => item))}.`;
  if (step.state === 'unknown') {
    return step.added ? `No longer known what is in ${where}` : `Known again what is in ${where}`;
  }
  const what = step.state === 'contains' ? (step.word ?? '') : `“may contain ${step.word}”`;
  return step.added ? `Adds ${what} to ${where}` : `Takes ${what} out of ${where}`;
}
