import type { FileRefusal, FileRule, RefusalFacts, RowFault, RowRule } from '../../model/refusal';

type Sentence = (facts: RefusalFacts, value: string, column: string) => string;

const one = (facts: RefusalFacts, name: string): string => String(facts[name] ?? '');
const many = (facts: RefusalFacts, name: string): readonly string[] => {
  const value = facts[name];
  return Array.isArray(value) ? value : [];
};
const listed = (names: readonly string[], joint = 'and'): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} ${joint} ${names.at(-1)}`;
const counted = (count: string, single: string): string => `${count} ${count === '1' ? single : `${single}s`}`;

const KINDS: Readonly<Record<string, string>> = {
  ingredient: 'an ingredient',
  component: 'a component',
  dish: 'a dish',
  set_menu: 'a set menu',
  extra: 'an extra',
};
const kind = (facts: RefusalFacts): string => KINDS[one(facts, 'kind')] ?? one(facts, 'kind');

function meantDate(facts: RefusalFacts): string {
  const iso = many(facts, 'iso');
  return iso.length === 0 ? 'Write it as year-month-day, such as 2026-12-31.' : `Write it as ${listed(iso, 'or as')}.`;
}

function recipeVersions(facts: RefusalFacts): string {
  const known = many(facts, 'known');
  if (one(facts, 'kind') === 'ingredient') return 'it is an ingredient, which has no lines. Take the line out.';
  if (known.length === 0) return 'there is no such recipe yet. Add it to recipes.csv; this line waits until then.';
  const days = listed(
    known.map((day) => day || 'a blank valid_from'),
    'and',
  );
  const wanted = one(facts, 'validFrom') || 'a blank valid_from';
  return `it has no version for ${wanted}, only for ${days}. Add that version to recipes.csv, or correct valid_from.`;
}

/** What is wrong with a row and how to mend it, by the rule that it breaks. */
const ROWS: Readonly<Record<RowRule, Sentence>> = {
  'field-count': (f) =>
    `This row has ${counted(one(f, 'fields'), 'cell')}, the header has ${one(f, 'expected')}. Put text that holds a separator in quotes, and leave a cell empty where nothing is known.`,
  blank: (_, __, column) => `${column} is blank. Fill it in, or take the row out.`,
  'too-long': (f, _, column) => `${column} is longer than ${one(f, 'limit')} characters. Shorten it.`,
  'not-a-number': (f, value, column) =>
    `“${value}” in ${column} is no number. Write digits only, such as 12.50${one(f, 'decimalComma') === 'yes' ? ' or 12,50' : ''}, without thousands marks and without a unit.`,
  'currency-sign': (_, value, column) =>
    `“${value}” in ${column} has a currency sign. Write the number alone, such as 12.50; amounts are in the venue’s currency.`,
  'number-size': (_, __, column) => `The number in ${column} has more digits than any quantity or price. Check it.`,
  negative: (_, value, column) => `${value} in ${column} is below zero. Write zero or more.`,
  'not-positive': (_, value, column) =>
    `${value} in ${column} is not above zero. Write how much it is, or take the row out.`,
  'not-whole': (_, value, column) => `${value} in ${column} is no whole number. Write how many there were.`,
  'out-of-range': (f, value, column) => `${value} in ${column} is out of range. It has to be ${one(f, 'range')}.`,
  'not-a-date': (f, value, column) => `“${value}” in ${column} is no date as this file needs it. ${meantDate(f)}`,
  'no-such-day': (_, value, column) => `There is no ${value} (${column}). Check the month and the day.`,
  'far-day': (f, value, column) =>
    `${value} in ${column} is no day of a restaurant’s books, which are from ${one(f, 'from')} to ${one(f, 'to')}. Check the year.`,
  'not-a-time': (_, value, column) =>
    `“${value}” in ${column} is no time. Write date and time, such as 2026-12-31T21:40 or 2026-12-31 21:40:00+01:00.`,
  'not-yes-no': (_, value, column) => `“${value}” in ${column} is neither yes nor no. Write one of the two.`,
  'not-one-of': (f, value, column) =>
    `“${value}” in ${column} is not known. Write ${listed(many(f, 'allowed'), 'or')}.`,
  'not-a-currency': (_, value) => `“${value}” is no currency. Write its three letters (ISO 4217), such as EUR.`,
  'not-a-locale': (_, value) => `“${value}” is no locale. Write a language and a country, such as en-IE.`,
  'not-a-time-zone': (_, value) => `“${value}” is no time zone. Write its name, such as Europe/Dublin.`,
  'not-a-clock-time': (_, value) => `“${value}” is no time of day. Write hours and minutes, such as 04:00.`,
  'unknown-setting': (f, value) => `There is no setting “${value}”. There is ${listed(many(f, 'allowed'))}.`,
  'other-venue': (f, value) =>
    `This file is about “${value}”, but it was to be loaded into ${one(f, 'venue')}. Load it with --venue "${value}", or correct the name.`,
  'said-twice': (f) =>
    `Line ${one(f, 'line')} already says something else about the same thing. Keep one of the two lines.`,
  'name-taken': (f, value) =>
    `“${value}” is already the name of ${kind(f)}. A name can mean only one thing: rename one of the two.`,
  'measure-differs': (f, value) =>
    `“${value}” differs from the ${one(f, 'measure')} in which this ingredient is measured at another date (${one(f, 'validFrom') || 'from the beginning'}). Use one measure for all its dates.`,
  'kind-differs': (f, value) =>
    `“${value}” differs from line ${one(f, 'line')}, which says that this recipe is ${kind(f)}. Use one kind for all its dates.`,
  'unknown-unit': (_, value, column) =>
    `“${value}” in ${column} is no unit. Write g, kg, ml, l, each or another unit of weight, volume or count.`,
  'pair-incomplete': (f, _, column) =>
    `${column} is blank although ${one(f, 'other')} is filled in. Fill in both, or neither.`,
  'same-dimension': (f, value, column) =>
    `“${value}” in ${column} measures the same as ${one(f, 'other')}. State the second output in another dimension (weight, volume or pieces), or leave it blank.`,
  'dish-output': (_, __, column) =>
    `A dish is one portion, so it states no output. Leave ${column} blank, or make the batch a component of which the dish uses some.`,
  'dish-loss': (_, __, column) =>
    `A dish is one portion and has no batch to lose from. Leave ${column} blank, or state the loss on a component.`,
  'estimate-without-dish': (_, __, column) =>
    `An estimate can stand in for a dish only. Leave ${column} blank, or set kind to dish.`,
  'batch-only': (_, __, column) =>
    `${column} is about a batch, and only a component is made in batches. Leave it blank, or state it on the component.`,
  'nothing-delivered': () =>
    'Neither packs nor quantity says how much was delivered. Fill in one of the two (with its unit where it is quantity).',
  'goods-without-code': (_, __, column) =>
    `${column} is blank, so nobody can tell what was delivered. Fill in the code of the supplier’s offer, or set kind to non_food, freight, deposit, rebate or credit.`,
  'unknown-ingredient': (f, value) =>
    f.kind
      ? `“${value}” is ${kind(f)}, not an ingredient. Name an ingredient, or rename one of the two.`
      : `There is no ingredient “${value}” yet. Add it to ingredients.csv, or correct the name; this row waits until then.`,
  'unknown-offer': (f, value) =>
    `${one(f, 'supplier')} has no offer with the code “${value}” yet. Add it to offers.csv, or correct the code; this row waits until then.`,
  'unknown-recipe': (f, value) => `“${value}”: ${recipeVersions(f)}`,
  'unknown-item': (_, value) =>
    `There is no “${value}” yet. Add it to menu.csv, recipes.csv or ingredients.csv (a sale needs one of the first two), or correct the name; this row waits until then.`,
  'unknown-trial': (f, value) =>
    `There is no trial of “${value}” on ${one(f, 'day')} yet. Add it to trials.csv, or correct the name or the date; this line waits until then.`,
  'not-countable': (f, value) =>
    `“${value}” is ${kind(f)}, and only ingredients and components are counted. Name what it is made of, or add it to recipes.csv as a component; this row waits until then.`,
  'not-tried': (_, value) =>
    `“${value}” is an ingredient, and a trial is of a dish or a component. Name the dish, or move the line to trial_lines.csv.`,
  'tax-missing': (_, __, column) => `Gross revenue needs its tax rate. Fill in ${column}, or give net_revenue instead.`,
  'end-without-agreed': (f, _, column) =>
    `Only an agreed price ends on a stated day; this one is of the kind ${one(f, 'kind')}. Leave ${column} blank, or set kind to agreed.`,
  'end-before-start': (f, value, column) =>
    `${value} in ${column} is before the price begins on ${one(f, 'start')}. Correct one of the two.`,
  gtin: (_, value) =>
    `“${value}” is no GTIN: it needs 8, 12, 13 or 14 digits of which the last one checks the others. Copy it again from the pack, or leave it blank.`,
  'chosen-from-alone': (_, __, column) =>
    `${column} is filled in, but chosen is not yes. Write yes in chosen, or leave ${column} blank.`,
  'chosen-twice': (f) =>
    `Line ${one(f, 'line')} already chooses another offer of this ingredient from the same day. Choose one of the two.`,
  'none-and-more': (_, value, column) =>
    `“${value}” in ${column} says none and names something. Write none alone, or leave none out.`,
  void: (_, value, column) =>
    `${value} in ${column} looks like a void, and sales.csv takes portions sold, zero or more. Take the voided portions off the rows they belong to.`,
  'outside-days': (f) =>
    `This row is outside ${one(f, 'from')} to ${one(f, 'to')}, the days that the file was loaded for. Widen --days, or leave it out.`,
  closed: (f) =>
    `The books are closed through ${one(f, 'through')}, so this can no longer change. Use a later day, or have an owner reopen the period.`,
};

/** Why a whole file is refused and how to mend it. */
const FILES: Readonly<Record<FileRule, Sentence>> = {
  'unreadable-file': (f) =>
    `The file cannot be read (${one(f, 'reason')}). Check that it is there and that you may open it.`,
  'empty-file': () => 'The file is empty. Export it again, with a first line that names the columns.',
  'not-utf8': (f) =>
    f.utf16 === 'yes'
      ? 'The file is written as UTF-16. Save it again as “CSV UTF-8”; nothing of it was taken.'
      : `Byte ${one(f, 'byte')} is not UTF-8, so letters with accents cannot be read. Save the file again as “CSV UTF-8”; nothing of it was taken.`,
  binary: (f) =>
    `Byte ${one(f, 'byte')} is a zero byte, which no text file has. Save the file as “CSV UTF-8”; nothing of it was taken.`,
  'damaged-archive': (f) =>
    `This part of the archive cannot be unpacked (${one(f, 'reason')}). Pack it again without a password, or bring the files in a folder; nothing of it was taken.`,
  workbook: () =>
    'This is a workbook or an archive, not a CSV file. Open it and save each sheet as “CSV UTF-8”; nothing of it was taken.',
  'no-header': (f) =>
    `The first line names none of the columns. It has to name ${listed(many(f, 'missing'))}; it reads: ${many(f, 'found').join(', ')}. Add that line on top.`,
  'lacks-column': (f) =>
    `The file lacks ${listed(many(f, 'missing'))}. Add the column, or correct its name in the first line, which has: ${many(f, 'found').join(', ')}.`,
  'column-twice': (f, _, column) =>
    `The first line names ${column} twice (columns ${listed(many(f, 'at'))}). Rename or take out one of them.`,
  'open-quote': () =>
    'A quote is opened here and not closed where a cell ends. Close it, and double every quote inside a quoted cell; nothing of the file was taken.',
  'cut-off': (f) =>
    f.fields === null
      ? 'The file ends in the middle of a letter, so it was cut off. Export or copy it again; nothing of it was taken.'
      : `The file ends inside its last row, after ${counted(one(f, 'fields'), 'cell')} of ${one(f, 'expected')}, so it was cut off. Export or copy it again; nothing of it was taken.`,
  'record-too-long': (f) =>
    `A line here is longer than ${one(f, 'limit')} bytes, so these are no rows. Check that the file was saved as CSV, one row a line; nothing of it was taken.`,
  'days-closed': (f) =>
    `The books are closed through ${one(f, 'through')}, and --days begins before that. Begin on a later day, or have an owner reopen the period.`,
  'period-closed': (f) =>
    `The books are closed through ${one(f, 'through')}, and this file would change them. Leave those days out, or have an owner reopen the period; nothing of it was taken.`,
};

/** Why a row cannot be taken, and how to mend it. */
export function rowRefusalText({ rule, facts, value, column }: RowFault): string {
  return ROWS[rule](facts, value ?? '', column ?? '');
}

/** Why a file is refused whole, and how to mend it. */
export function fileRefusalText({ rule, facts, value, column }: FileRefusal): string {
  return FILES[rule](facts, value ?? '', column ?? '');
}
