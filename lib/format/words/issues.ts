import { dayText } from '../../core/days';
import type { Issue, IssueCode } from '../../model/issue';

type Facts = Issue['facts'];

const one = (facts: Facts, name: string): string => String(facts[name] ?? '');
const many = (facts: Facts, name: string): readonly string[] => {
  const value = facts[name];
  return Array.isArray(value) ? value : [];
};
const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
const perCent = (facts: Facts, name: string): string => {
  const value = facts[name];
  return typeof value === 'number' ? String(Number((value * 100).toFixed(4))) : '';
};
const perCentWhole = (facts: Facts, name: string): string => String(Math.floor(Number(facts[name]) * 100));
const counted = (count: string, single: string, plural: string): string =>
  `${count} ${count === '1' ? single : plural}`;

/** How far an invoice price is from the last: 25 % above. */
function apart(facts: Facts): string {
  const share = Number(facts.price) / Number(facts.last) - 1;
  return Number.isFinite(share)
    ? `${Math.round(Math.abs(share) * 100)} % ${share < 0 ? 'below' : 'above'}`
    : 'far from';
}

/** On which days of the period there is no price. */
function pricelessDays(facts: Facts): string {
  const [from, until] = [one(facts, 'from'), one(facts, 'until')];
  if (from === '' && until === '') return 'in force';
  if (from === '') return `before ${until}`;
  return until === '' ? `from ${from} on` : `from ${from} until ${until}`;
}

function sold(facts: Facts): string {
  const portions = counted(one(facts, 'portions'), 'portion was sold', 'portions were sold');
  const { share } = facts;
  return typeof share === 'number' ? `${portions} (${Number((share * 100).toFixed(1))} % of all)` : portions;
}

/** The largest names, and how many more there are. */
function namesWaiting(facts: Facts): string {
  const largest = many(facts, 'largest');
  const more = Number(facts.names) - largest.length;
  return more > 0 ? `${largest.join(', ')} and ${counted(String(more), 'other', 'others')}` : listed(largest);
}

/** What is missing, and how to mend it: one sentence or two for each rule, with the particulars in place. */
const SENTENCES: Readonly<Record<IssueCode, (about: string, facts: Facts) => string>> = {
  'setting-defaulted': (_, f) =>
    `Nobody has said ${one(f, 'setting')} for this venue, so ${one(f, 'value')} stands in. State it in venue.csv.`,
  'no-offer': (about) => `No supplier offers ${about}. Add an offer with its pack to offers.csv.`,
  'offer-not-chosen': (about, f) =>
    `${about} is offered as ${listed(many(f, 'offers'))} and none is chosen. Mark one as chosen in offers.csv.`,
  'no-price': (about, f) =>
    `${about} has no price ${pricelessDays(f)}: ${one(f, 'supplier')} ${one(f, 'code')}. Add one to offer_prices.csv, agreed, list or invoice.`,
  'no-exchange-rate': (about, f) =>
    `${about} is priced in ${one(f, 'currency')} and there is no rate for it. Price it in the venue’s currency, or add the rate to exchange_rates.csv.`,
  'price-waits': (about, f) =>
    `${about} came at a price ${apart(f)} the last one (${one(f, 'supplier')} ${one(f, 'code')}, invoice ${one(f, 'invoice')}), and enters no cost until someone says yes. Check the invoice; if it is right, add the price to offer_prices.csv as agreed, list or invoice.`,
  'goods-without-quantity': (about, f) =>
    `${about} came from ${one(f, 'supplier')} (${one(f, 'code')}, invoice ${one(f, 'invoice')}) and nobody said how much. Add packs, or quantity and unit, to purchases.csv.`,
  'goods-without-value': (about, f) =>
    `${about} came from ${one(f, 'supplier')} (${one(f, 'code')}) without an invoice, and there is no price to stand in. Add an agreed price to offer_prices.csv.`,
  'unknown-count-unit': (about, f) =>
    `${about} was counted or moved in “${one(f, 'unit')}”, and there is no way from that to how it is measured. Write another unit in counts.csv or moves.csv, or say what one ${one(f, 'unit')} is in measures.csv.`,
  'portions-above-covers': (about, f) =>
    `On ${about} ${counted(one(f, 'portions'), 'portion', 'portions')} went to ${counted(one(f, 'covers'), 'cover', 'covers')}, more than ${one(f, 'each')} each. Check sales.csv and covers.csv for that day.`,
  'unknown-unit': (about, f) =>
    `${about} is used in “${one(f, 'unit')}” in ${one(f, 'where')}, which is no unit. Write g, ml, each or another unit, or say what one ${one(f, 'unit')} is in measures.csv.`,
  'pack-unit-mismatch': (about, f) =>
    `A pack of ${about} is stated in ${one(f, 'unit')}, and there is no way from that to how it is measured. Add its ${one(f, 'missing')} to ingredients.csv.`,
  'no-density': (about, f) =>
    `${one(f, 'recipe')} uses ${about} in ${one(f, 'unit')}, which needs its density. Add density_g_per_ml to ingredients.csv, or a second output to the recipe if it is made here.`,
  'no-piece-weight': (about, f) =>
    `${one(f, 'recipe')} uses ${about} in ${one(f, 'unit')}, which needs the weight of one piece. Add grams_each to ingredients.csv.`,
  'no-yield': (about, f) =>
    `What a batch of ${about} gives is not known: it has no yield, and ${listed(many(f, 'missing'))} cannot be weighed. Add yield_quantity and yield_unit to recipes.csv.`,
  'no-output-unit': (about, f) =>
    `${one(f, 'recipe')} asks for ${about} in ${one(f, 'unit')}, but a batch is measured in ${listed(many(f, 'outputs'))}. State the same batch in ${one(f, 'unit')} as also_quantity and also_unit in recipes.csv.`,
  'nothing-left': (about, f) =>
    `Every batch of ${about} loses ${one(f, 'loss')} g of ${one(f, 'output')} g, so nothing is left. Check yield_quantity and batch_loss_g in recipes.csv.`,
  'no-lines': (about) =>
    `${about} has a recipe without lines. Add them to recipe_lines.csv, or give the dish an estimated_cost.`,
  'refused-lines': (about, f) =>
    `${counted(one(f, 'lines'), 'line', 'lines')} of ${about} could not be taken, so it is not costed. Mend what was refused and load it again.`,
  'no-version': (about, f) =>
    `${one(f, 'recipe')} uses ${about}, which has no recipe in force on ${one(f, 'day') || 'that day'}. Give it an earlier valid_from in recipes.csv.`,
  'unknown-use': (about, f) =>
    `${one(f, 'recipe')} uses ${about} for “${one(f, 'use')}”, and no usable yield is stated for that. Add it to yields.csv, or leave use blank for the usual one.`,
  'unknown-part': (about, f) =>
    `${one(f, 'recipe')} uses the part “${one(f, 'part')}” of ${about}, which is not split into one of that name. Add it to parts.csv.`,
  'part-unit': (about, f) =>
    `${one(f, 'recipe')} asks for ${about} in ${one(f, 'unit')}, but parts.csv states what one gives in ${listed(many(f, 'outputs'))}. Write the line in ${listed(many(f, 'outputs'))}.`,
  'part-shares': (about, f) =>
    `The cost shares of the parts of ${about} come to ${perCent(f, 'sum')} %, not 100. Mend cost_share_pct in parts.csv: no part of it is costed until then.`,
  'choice-shares': (about, f) =>
    f.sum === null
      ? `A choice of ${about}, ${one(f, 'choice')}, has a line without choice_share_pct. Add it to recipe_lines.csv: how many of a hundred guests choose it.`
      : `The shares of ${one(f, 'choice')} in ${about} come to ${perCent(f, 'sum')} %, not 100. Mend choice_share_pct in recipe_lines.csv.`,
  'credits-differ': (about, f) =>
    `${listed(many(f, 'recipes'))} make ${about} and say different things of what it is worth. State the same by_product_credit in recipe_lines.csv.`,
  'no-mix-volume': (about, f) =>
    `${about} has an overrun, but its batch is measured in ${listed(many(f, 'outputs'))}. State the volume of the mix, in ml, as yield_quantity or also_quantity in recipes.csv.`,
  'no-grade': (about, f) =>
    `${about} takes ${counted(one(f, 'minutes'), 'minute', 'minutes')} of hands-on work, and nobody has said whose. Add a grade to recipes.csv.`,
  'no-labour-rate': (about, f) =>
    `${one(f, 'recipe')} is made by a ${about}, and no cost per hour is stated for one on that day. Add it to labour.csv.`,
  'unknown-allergen': (about, f) =>
    `Something in ${about} declares “${one(f, 'word')}”, which is no allergen that is known, so nothing is shown as free of anything. Write milk, eggs, gluten, wheat, nuts, almonds or another of the list in contains or may_contain of ingredients.csv.`,
  'no-covers': (about, f) =>
    `${about} is given to every guest, and ${counted(one(f, 'days'), 'day', 'days')} with sales have no covers. Add them to covers.csv.`,
  'covers-missing': (about, f) =>
    `${counted(one(f, 'days'), 'day', 'days')} of ${about} with sales at the tables ${f.days === 1 ? 'has' : 'have'} no covers, and ${f.days === 1 ? 'is' : 'are'} in no spend per cover. Add them to covers.csv.`,
  cycle: (_, f) => `A recipe leads back to itself: ${many(f, 'loop').join(', then ')}. Take one of these lines out.`,
  'no-recipe': (about) =>
    `${about} has neither a recipe nor an estimated cost. Add its lines, or an estimated_cost in recipes.csv.`,
  'begins-late': (about, f) =>
    f.kind === 'ingredient'
      ? `${about} is not known before ${one(f, 'begins')}, and was on sale from ${one(f, 'from')}. Give it an earlier valid_from in ingredients.csv.`
      : `${about} has no recipe before ${one(f, 'begins')}, and was on sale from ${one(f, 'from')}. Give it an earlier valid_from in recipes.csv.`,
  'no-portion': (about) =>
    `${about} is sold by the portion, but its recipe is measured by weight or volume. Make a dish of it that says how much one portion is.`,
  'no-menu-price': (about, f) =>
    `${counted(one(f, 'portions'), 'portion', 'portions')} of ${about} came without revenue, and there was no menu price on the day. Add one to menu.csv.`,
  'stand-in-revenue': (about, f) =>
    `${counted(one(f, 'portions'), 'portion', 'portions')} of ${about} came without revenue: the day’s menu price stands in.`,
  'few-items': (_, f) => `Only ${counted(one(f, 'items'), 'dish', 'dishes')}: averages of so few say little.`,
  'few-trading-days': (_, f) =>
    `Only ${counted(one(f, 'days'), 'trading day', 'trading days')}: how sure a class is cannot be said under 14.`,
  'not-classed': (about, f) =>
    `${about} was on sale on ${counted(one(f, 'days'), 'day', 'days')} of at least ${one(f, 'needed')} that a class needs.`,
  'sales-waiting': (_, f) =>
    `${sold(f)} under ${counted(one(f, 'names'), 'name', 'names')} that nothing here has, and ${f.portions === 1 ? 'is' : 'are'} in no figure: ${namesWaiting(f)}. Write ${f.names === 1 ? 'it' : 'them'} into menu.csv or recipes.csv as the till spells ${f.names === 1 ? 'it' : 'them'}.`,
  'set-menu-not-spread': (about, f) =>
    `${counted(one(f, 'portions'), 'portion', 'portions')} of ${about} stay in its own section: its courses have to be dishes, by the portion, with prices of their own, and cost together what it costs. Mend its lines in recipe_lines.csv or their prices in menu.csv.`,
  'course-estimated': (about) =>
    `${about} has no price of its own, so its part of set menus is estimated from its plate cost and the target food cost. Give it a price in menu.csv.`,
  'no-sales': (about) => `Nothing was sold in ${about}. Load sales.csv for these days.`,
  'no-variable-cost': (about) =>
    `Goal values ask for what a portion costs beside food and labour. State variable_cost_pct of ${about} in venue.csv.`,
  'year-short': (about, f) =>
    `Sales begin on ${about}, so what 1 % is worth a year counts the days since then only, not all twelve months from ${one(f, 'from')}. Load the sales before it.`,
  'coverage-low': (about, f) =>
    `Margins are known for ${perCentWhole(f, 'share')} % of the portions of ${about} only, so its figures are provisional. Add the recipes and prices that its mix says are missing.`,
  'revenue-negative': (about, f) =>
    `The revenue of ${about} comes to ${one(f, 'revenue')} in this period. Check its discounts and voids.`,
};

export function issueText(issue: Issue): string {
  const day = issue.day === undefined ? null : dayText(issue.day);
  return SENTENCES[issue.code](issue.about, { day, ...issue.facts });
}
