import { type KitchenMeasures, unitNamed } from '../../core/units';
import { type LineQuestion, lineQuestion } from '../../model/line-question';

export interface ReadUnit {
  /** As in TypedLine.unit. */
  readonly unit: string;
  readonly measure: boolean;
  readonly questions: readonly LineQuestion[];
  readonly rest: string;
}

// Words for an amount that only the ingredient can explain, with plurals that are not made by an s.
const MEASURES: readonly string[] =
  'bag ball bar batch block bottle bowl box bulb bunch can carton clove container cube dash disc dollop drizzle drop envelope glass grind handful head jar jigger knob ladle leaf loaf log mug pack package packet pinch pod pot punnet rasher rib roll sachet scoop sheet shot slice splash spoon spoonful sprig squeeze stalk stick strip tablet tin tray tub tube twist wedge'.split(
    ' ',
  );
const IRREGULAR: Readonly<Record<string, string>> = {
  leaves: 'leaf',
  loaves: 'loaf',
  handsful: 'handful',
  pkg: 'package',
  pkgs: 'package',
  pkt: 'packet',
  pkts: 'packet',
  pck: 'packet',
  pcks: 'packet',
  dessertspoon: 'dessertspoon',
  dessertspoons: 'dessertspoon',
  dsp: 'dessertspoon',
};
const SINGULAR: ReadonlyMap<string, string> = new Map([
  ...MEASURES.flatMap((word) => [word, `${word}s`, `${word}es`].map((form) => [form, word] as const)),
  ...Object.entries(IRREGULAR),
]);

/** The measure in the singular, where a word is one that cooks use: leaves is leaf. Null for any other word. */
export function measureWord(word: string): string | null {
  return SINGULAR.get(word.toLowerCase().replace(/\.$/, '')) ?? null;
}

// Spellings that are probably what they look like; asked, since a teaspoon for a tablespoon is a factor of three.
const LOOKS_LIKE: ReadonlyMap<string, string> = new Map(
  (
    [
      ['tbsp', 'tb tbs tbsps tblsp tblsps tbl tbls tablespoonful tablespoonfuls'],
      ['tsp', 'ts tsps teaspoonful teaspoonfuls teapsoon tespoon'],
      ['g', 'gm gms grm grms'],
      ['kg', 'kgs kilogramme kilogrammes'],
      ['ml', 'mls mil mils'],
      ['l', 'ltrs ls'],
      ['oz', 'ozs'],
      ['us qt', 'qts'],
      ['us pt', 'pts'],
    ] as const
  ).flatMap(([unit, spellings]) => spellings.split(' ').map((spelling) => [spelling, unit] as const)),
);
const SPLIT = /^(table|tea)[ -]?(?:spoon)(?:s|fuls?|sful)?$/i;

function lookedLike(word: string): string | null {
  if (word === 'T') return 'tbsp';
  if (word === 't') return 'tsp';
  if (word === 'c' || word === 'C') return 'cup';
  const split = SPLIT.exec(word)?.[1]?.toLowerCase();
  if (split !== undefined) return split === 'table' ? 'tbsp' : 'tsp';
  return LOOKS_LIKE.get(word.toLowerCase()) ?? null;
}

/** Units that are one thing in one country and another in the next, by what the bare word is read as. */
const IMPERIAL: Readonly<Record<string, string>> = {
  'us gal': 'imperial gal',
  'us qt': 'imperial qt',
  'us pt': 'imperial pint',
  'us fl oz': 'imperial fl oz',
};

function spelledOut(name: string, written: string): string {
  return /^(?:us|metric) /i.test(written) ? name : name.replace(/^(?:us|metric) (?=(?:cup|tbsp|tsp)$)/, '');
}

function knownUnit(written: string, measures: KitchenMeasures): Omit<ReadUnit, 'rest'> | null {
  const unit = unitNamed(written, measures);
  if (!unit) return null;
  const otherwise = /^us\b/i.test(written) || measures === 'us' ? undefined : IMPERIAL[unit.name];
  const questions: LineQuestion[] =
    otherwise === undefined ? [] : [lineQuestion('which-unit', { unit: written, read: unit.name, otherwise })];
  return { unit: spelledOut(unit.name, written), measure: false, questions };
}

const STONE_FRUIT = /^stone (?!of\b)/i; // no weight of 14 lb

/**
 * The unit or measure that a text begins with, or null: "g", "fl. oz.", "tablespoons of", "leaves". Three words are tried before two.
 * A word that merely looks like a unit is read as that and asked about.
 */
export function leadingUnit(text: string, measures: KitchenMeasures): ReadUnit | null {
  for (const more of [2, 1, 0]) {
    const form = new RegExp(`^\\p{L}+\\.?(?:[ -]\\p{L}+\\.?){${more}}(?![\\p{L}'])`, 'u').exec(text)?.[0];
    if (form === undefined || STONE_FRUIT.test(text)) continue;
    const read = knownUnit(form, measures) ?? probableUnit(form);
    if (read) return { ...read, rest: text.slice(form.length).replace(/^ ?(?:of\b ?)?/i, '') };
  }
  return null;
}

function probableUnit(form: string): Omit<ReadUnit, 'rest'> | null {
  const looked = lookedLike(form.replace(/\.$/, ''));
  if (looked !== null) {
    return {
      unit: looked,
      measure: false,
      questions: [lineQuestion('unit-spelling', { written: form, read: looked })],
    };
  }
  const measure = measureWord(form);
  return measure === null
    ? null
    : { unit: measure, measure: true, questions: [lineQuestion('named-measure', { measure })] };
}
