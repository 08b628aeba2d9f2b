const PERIODS = `  --month PERIOD   a month (2026-10), a week (2026-W41), a period (2026-P10) or days A..B, the end excluded
  --from A --to B  the same as days A..B`;

export const reportUsage = `npm run report -- menu-mix | models | dish-costs --month 2026-10 [options]
npm run report -- dish --item NAME --month 2026-10 [options]
npm run report -- dish-cost --item NAME [--date 2026-10-31] [options]
npm run report -- year [--month 2026-10] [options]
npm run report -- week [--month 2026-W43] [options]
npm run report -- prep-sheet [--day 2026-10-31] [--expect NAME=20] [--covers 60] [options]
npm run report -- recipe-card --item NAME [--portions 20 | --batches 2] [--day 2026-10-31] [options]
npm run report -- at-stake | price-change | turning-prices --month 2026-10 [options]

  menu-mix         what sells and what leaves, and how sure that is
  models           where every model of menu analysis puts each dish, and whether they agree
  dish-costs       what each dish costs and leaves, by channel
  dish             one dish in depth: what it costs and leaves, what changed since the period before and why, its last
                   eighteen periods (a line each as files)
  dish-cost        what one dish, component, set menu, extra or ingredient costs on a day, line by line
  year             what the menu left through the last eighteen months, with its changes; left out: up to the latest
  week             covers, spend per cover, portions and what was left, by day, against the four weeks before and the
                   year before, and what did not sell; left out: the latest week whose sales are all in
  prep-sheet       what to make for a day: batches by component, what to take from the store, minutes by grade
  recipe-card      a recipe scaled to portions or batches
  at-stake         what is at stake with prices: spend, share, what 1 % is worth a year, dishes; each ingredient's own spread
  price-change     what other prices would have done to every dish and the period; nothing is kept
  turning-prices   at which price of an ingredient each dish changes class

${PERIODS}
  --item NAME      which dish (dish), what dish-cost works out, or which recipe (recipe-card)
  --date DAY       on which day (2026-10-31); left out: the last day of the latest month with sales. --month instead:
                   the last day on which it was on sale in that period, and the mean of the period
  --day DAY        the same as --date (prep-sheet, recipe-card)
  --expect NAME=N  portions expected instead of the mean of the last four such weekdays (prep-sheet); may be repeated
  --covers N       guests expected instead of that mean (prep-sheet)
  --portions N     how many of a dish, --batches N how many batches of a component (recipe-card); left out: one
  --channel NAME   where it is sold (dish-cost); left out: dine_in, or the first of its channels
  --by WHAT        ingredient, group or supplier (at-stake); left out: ingredient
  --ingredient NAME  whose price turns dishes (turning-prices)
  --price CHANGE   one change (price-change), as often as wanted: "Double cream:+10%", "Double cream:6.20" (a kilogram, litre
                   or piece), "Double cream:+0.50", "group:Chocolate:-5%", "supplier:NAME:+2%", "everything:+3%",
                   "menu:DISH:14.50", "section:NAME:+0.50", "menu:+4%"; each acts on what those before it left
  --edits JSON     the same as a JSON list, as POST price-change takes it
  --set-menus WHERE  section (where nothing is said) or spread: over their courses, portions, revenue and cost (menu-mix)
  --model NAME     by which menu-mix classes: kasavana-smith (where none is named), miller, pavesic, goal-value or labour;
                   turning-prices has all but the last
  --section NAME   one section of the menu (menu-mix, models, year); left out: the whole menu
  --venue NAME     which venue; needed where there are several
  --json           the same answer as over HTTP
  --csv            one line an item
  --xlsx FILE      writes a workbook: the same rows, and a sheet with what they stand on and what is missing

Exit code: 0 answered, 1 no answer, 2 wrong use.
`;

export function wrongReport(named: string, known: readonly string[]): string {
  const there = known.join(', ');
  return named === '' ? `Which report? There is ${there}.` : `There is no report “${named}”. There is ${there}.`;
}

export const whichPeriod = 'Which period? Name it with --month 2026-10, or with --from and --to.';
export const monthOrDays = 'Either --month, or --from and --to, not both.';
export const fromAndTo = 'Days have a beginning and an end: write --from 2026-10-01 --to 2026-11-01, the end excluded.';
export const whichItem = 'The cost of what? Name it with --item NAME.';
export const dayTwice = 'Either --date or --day, not both: they mean the same.';
export const noNumber = (option: string, text: string): string =>
  `“${text}” after --${option} is no number. Write digits, such as 20.`;
export const noExpectation = (text: string): string =>
  `“${text}” names no portions. Write the item, an equals sign and how many: --expect "Tart=20".`;
export const oneFormat = 'One of --json, --csv and --xlsx, not several.';

/** What is wrong with an option, in plain words, from what the parser of the command line says of it. */
export function wrongOption(said: string): string {
  const option = /'([^']*?)(?: <value>)?'/.exec(said)?.[1] ?? '';
  const long = option.split(', ').at(-1) ?? option;
  if (said.startsWith('Unknown option')) return `There is no option “${long}”.`;
  if (said.includes('does not take an argument')) return `The option ${long} takes no value.`;
  if (/argument (is )?(missing|ambiguous)/.test(said)) return `The option ${long} needs a value after it.`;
  return `“${long}” is not expected here.`;
}

export const workbookWritten = (path: string): string => `Wrote ${path}.`;
export const workbookThere = (path: string): string =>
  `${path} is there already and was left as it is. Name another file, or take that one away first.`;
export const noWorkbook = (path: string, reason: string): string =>
  `${path} cannot be written (${reason}). Name a file in a folder that you may write to.`;
