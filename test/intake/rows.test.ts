import { expect, test } from 'vitest';
import { parseDay } from '@/lib/core/days';
import { rowRefusalText } from '@/lib/format/words/refusals';
import { fileKind } from '@/lib/intake/file-kinds';
import { ROW_KINDS } from '@/lib/intake/row-kinds';
import type { RowKind } from '@/lib/intake/rows/row-kind';
import { rowsOf } from './reading';

/** Line, column and rule of every refused row. */
async function faultsOf<Row>(kind: RowKind<Row>, lines: readonly string[]) {
  const { rows, refusal } = await rowsOf(kind, lines.join('\n'));
  expect(refusal).toBeNull();
  return rows.flatMap(({ line, fault }) => (fault ? [[line, fault.column, fault.rule]] : []));
}

async function rowOf<Row>(kind: RowKind<Row>, lines: readonly string[]): Promise<Row | null | undefined> {
  const { rows } = await rowsOf(kind, lines.join('\n'));
  expect(rows[0]?.fault).toBeNull();
  return rows[0]?.row;
}

test('fileKind(name) reads the kind from how a name begins', () => {
  const names = [
    'sales.csv',
    'Sales-2026-10.CSV',
    'sales 2.csv',
    'recipe_lines.csv',
    'recipes.csv',
    'offer_prices_2026.csv',
    'offers.csv',
  ];
  expect(names.map(fileKind)).toEqual(['sales', 'sales', 'sales', 'recipe_lines', 'recipes', null, 'offers']);
  expect(['salesman.csv', 'till.csv', 'trial_lines.csv', 'trials.csv'].map(fileKind)).toEqual([
    null,
    null,
    'trial_lines',
    'trials',
  ]);
});

test('ingredients.csv: per cent become fractions, blank is null, a missing column undefined', async () => {
  const lines = ['ingredient;measure;usable_yield_pct;density_g_per_ml;contains;valid_from', 'Lemons;G;42,5;;none;'];
  expect(await rowOf(ROW_KINDS.ingredients, lines)).toMatchObject({
    ingredient: 'Lemons',
    measure: 'g',
    validFrom: null,
    usableYield: '0.425',
    densityGPerMl: null,
    gramsEach: undefined,
    contains: [],
    mayContain: undefined,
  });
});

test('ingredients.csv refuses row by row', async () => {
  const header = 'ingredient,measure,valid_from,density_g_per_ml,grams_each,usable_yield_pct,department,counted';
  const rows = [
    header,
    ',g,,,,,,',
    'A,kg,,,,,,',
    'A,g,31/12/2026,,,,,',
    'A,g,,0,,,,',
    'A,g,,,-3,,,',
    'A,g,,,,120,,',
    'A,g,,,,,wine,',
    'A,g,,,,,,maybe',
    'A,g',
    'A,g,,,,,,,9',
  ];
  expect(await faultsOf(ROW_KINDS.ingredients, rows)).toEqual([
    [2, 'ingredient', 'blank'],
    [3, 'measure', 'not-one-of'],
    [4, 'valid_from', 'not-a-date'],
    [5, 'density_g_per_ml', 'not-positive'],
    [6, 'grams_each', 'not-positive'],
    [7, 'usable_yield_pct', 'out-of-range'],
    [8, 'department', 'not-one-of'],
    [9, 'counted', 'not-yes-no'],
    [10, null, 'field-count'],
    [11, null, 'field-count'],
  ]);
});

test('recipes.csv: a dish is one portion and no batch, an output is a whole pair, a smallest batch has a unit', async () => {
  const header =
    'recipe,kind,valid_from,yield_quantity,yield_unit,also_quantity,also_unit,overrun_pct,batch_loss_g,breakage_pct,estimated_cost,smallest_batch,shelf_life_days,hands_on_minutes';
  const rows = [
    header,
    'Ice,component,,900,g,1.5,l,,40,2,,450,3,12.5',
    'Plate,dish,,1,portion,,,0,,,2.80,,,',
    'Plate,dish,,12,portions,,,,,,,,,',
    'Plate,dish,,,,,,,5,,,,,',
    'Ice,component,,900,,,,,,,,,,',
    'Ice,component,,,g,,,,,,,,,',
    'Ice,component,,900,g,1,kg,,,,,,,',
    'Ice,component,,900,tubs,,,,,,,,,',
    'Plate,dish,,,,,,30,,,,,,',
    'Ice,component,,900,g,,,,,100,,,,',
    'Ice,component,,900,g,,,,,,1.20,,,',
    'Menu,set menu,,,,,,,,,,450,,',
    'Ice,component,,,,,,,,,,450,,',
    'Ice,component,,900,g,,,,,,,,2.5,',
    'Ice,component,,900,g,,,,,,,,0,',
    'Ice,component,,900,g,,,,,,,,,-1',
  ];
  expect(await faultsOf(ROW_KINDS.recipes, rows)).toEqual([
    [4, 'yield_quantity', 'dish-output'],
    [5, 'batch_loss_g', 'dish-loss'],
    [6, 'yield_unit', 'pair-incomplete'],
    [7, 'yield_quantity', 'pair-incomplete'],
    [8, 'also_unit', 'same-dimension'],
    [9, 'yield_unit', 'unknown-unit'],
    [10, 'overrun_pct', 'batch-only'],
    [11, 'breakage_pct', 'out-of-range'],
    [12, 'estimated_cost', 'estimate-without-dish'],
    [13, 'smallest_batch', 'batch-only'],
    [14, 'yield_unit', 'pair-incomplete'],
    [15, 'shelf_life_days', 'not-whole'],
    [16, 'shelf_life_days', 'out-of-range'],
    [17, 'hands_on_minutes', 'negative'],
  ]);
  const { rows: read } = await rowsOf(ROW_KINDS.recipes, rows.join('\n'));
  expect(read[1]?.row).toMatchObject({ kind: 'dish', yieldQuantity: null, yieldUnit: null, estimatedCost: '2.8' });
  expect(read[0]?.row).toMatchObject({ smallestBatch: '450', shelfLifeDays: 3, handsOnMinutes: '12.5' });
  const set = [
    'recipe,kind,valid_from,plating_minutes,plating_grade,thrown_at_close,cautions,overrun_pct,grade',
    'Tide,Set menu,2026-01-01,4,Finisher,yes,Raw egg; alcohol;raw egg,,',
    'Amuse,extra,2026-01-01,,,,none,,',
    'Foam,component,2026-01-01,,,no,,85,commis',
  ];
  const { rows: more } = await rowsOf(ROW_KINDS.recipes, set.join('\n'));
  expect(more.map(({ row }) => row)).toMatchObject([
    {
      kind: 'set_menu',
      platingMinutes: '4',
      platingGrade: 'Finisher',
      thrownAtClose: true,
      cautions: ['alcohol', 'raw egg'],
    },
    { kind: 'extra', platingMinutes: null, thrownAtClose: null, cautions: [], overrun: null },
    { kind: 'component', overrun: '0.85', grade: 'commis', cautions: null, shelfLifeDays: undefined },
  ]);
});

test('recipe_lines.csv: quantity above zero, a choice with its share, a credit of zero or more, key as the facts are counted by', async () => {
  const header = 'recipe,valid_from,item,quantity,unit,as,use,part,choice,choice_share_pct,channel,by_product_credit';
  const rows = [
    header,
    ' Plum TART,2026-03-01,Plums,250,g,bought,,,,,,',
    'Tart,,Plums,-1,g,,,,,,,',
    'Tart,,Eggs,1,each,,,yolk,,,,',
    'Tart,,Lemons,1,each,,zest,,,,,',
    'Tart,,Wine,1,each,,,,sweet,,,',
    'Tart,,Wine,1,each,,,,,40,,',
    'Tart,,Wine,1,each,,,,sweet,140,,',
    'Tart,,Wine,1,each,,,,sweet,0,,',
    'Tart,,Box,1,each,,,,,,Takeaway,',
    'Tart,,Whey,1,g,,,,,,,0',
    'Tart,,Whey,1,g,,,,,,,-1',
    'Tart,,Plums,two,g,,,,,,,',
  ];
  expect(await faultsOf(ROW_KINDS.recipe_lines, rows)).toEqual([
    [3, 'quantity', 'not-positive'],
    [6, 'choice_share_pct', 'pair-incomplete'],
    [7, 'choice', 'pair-incomplete'],
    [8, 'choice_share_pct', 'out-of-range'],
    [12, 'by_product_credit', 'negative'],
    [13, 'quantity', 'not-a-number'],
  ]);
  const { rows: read } = await rowsOf(ROW_KINDS.recipe_lines, rows.join('\n'));
  expect(read.slice(0, 2).map(({ key }) => key)).toEqual(['plum tart|2026-03-01', 'tart|']);
  expect([2, 3, 7, 8, 9].map((place) => read[place]?.row)).toMatchObject([
    { part: 'yolk', use: null },
    { use: 'zest', choice: null, choiceShare: null },
    { choice: 'sweet', choiceShare: '0' },
    { channel: 'takeaway' },
    { byProductCredit: '0' },
  ]);
  const alone = await rowsOf(ROW_KINDS.recipe_lines, 'recipe,valid_from,item,quantity,unit,choice\nTart,,Plums,2,g,\n');
  expect(alone.rows[0]?.row).toMatchObject({ choice: null, choiceShare: null, use: undefined });
});

test('offers.csv and offer_prices.csv refuse row by row', async () => {
  const offers = [
    'supplier,code,ingredient,pack_count,pack_size,pack_unit,gtin,chosen,chosen_from',
    'Bay,1,Cream,12,500,g,6291041500213,yes,2026-01-01',
    'Bay,2,Cream,0,500,g,,,',
    'Bay,3,Cream,12,500,g,6291041500214,,',
    'Bay,4,Cream,12,500,g,,no,2026-01-01',
  ];
  expect(await faultsOf(ROW_KINDS.offers, offers)).toEqual([
    [3, 'pack_count', 'not-positive'],
    [4, 'gtin', 'gtin'],
    [5, 'chosen_from', 'chosen-from-alone'],
  ]);
  const prices = [
    'supplier,code,valid_from,price,kind,valid_to,minimum_packs,currency',
    'Bay,1,2026-01-01,12.50,,,,',
    'Bay,1,,12.50,,,,',
    'Bay,1,2026-01-01,\u20ac12.50,,,,',
    'Bay,1,2026-01-01,-1,,,,',
    'Bay,1,2026-01-01,1,list,2026-02-01,,',
    'Bay,1,2026-01-01,1,agreed,2025-12-31,,',
    'Bay,1,2026-01-01,1,,,,XYQ',
  ];
  expect(await faultsOf(ROW_KINDS.offer_prices, prices)).toEqual([
    [3, 'valid_from', 'blank'],
    [4, 'price', 'currency-sign'],
    [5, 'price', 'negative'],
    [6, 'valid_to', 'end-without-agreed'],
    [7, 'valid_to', 'end-before-start'],
    [8, 'currency', 'not-a-currency'],
  ]);
  const { rows } = await rowsOf(ROW_KINDS.offer_prices, prices.join('\n'));
  expect(rows[0]?.row).toMatchObject({ kind: 'list', minimumPacks: null, currency: null });
});

test('menu.csv: off the menu has no price; a price is needed else; a commission is a share below all', async () => {
  const rows = [
    'item,channel,valid_from,price,tax_pct,tax_included,commission_pct,off_menu',
    'Tart,Takeaway,2026-01-01,12.50,10,yes,,',
    'Tart,,2026-02-01,,10,yes,0,yes',
    'Tart,,2026-02-01,,10,yes,,',
    'Tart,,2026-02-01,9,110,yes,,',
    'Tart,,2026-02-01,9,10,yes,100,',
    'Tart,,2026-02-01,9,10,yes,22.5,',
  ];
  expect(await faultsOf(ROW_KINDS.menu, rows)).toEqual([
    [4, 'price', 'blank'],
    [5, 'tax_pct', 'out-of-range'],
    [6, 'commission_pct', 'out-of-range'],
  ]);
  const { rows: read } = await rowsOf(ROW_KINDS.menu, rows.join('\n'));
  expect(read[0]?.row).toMatchObject({ channel: 'takeaway', price: '12.5', tax: '0.1', taxIncluded: true });
  expect(read[1]?.row).toMatchObject({ channel: 'dine_in', price: null, commission: '0' });
  expect(read[5]?.row).toMatchObject({ commission: '0.225' });
});

test('sales.csv: date goes before sold_at, net before gross, gross needs its tax', async () => {
  const rows = [
    'date,sold_at,item,channel,sold,comps,net_revenue,gross_revenue,tax_pct',
    '2026-10-01,2026-10-09T12:00,Tart,,2,,10,11,10',
    ',2026-10-02T03:00,Tart,,2,1,,11,10',
    ',,Tart,,2,,,,',
    '1/10/2026,,Tart,,2,,,,',
    '2026-10-01,,Tart,,-2,,,,',
    '2026-10-01,,Tart,,,,,,',
    '2026-10-01,,Tart,,1,-1,,,',
    '2026-10-01,,Tart,,1,,,12,',
  ];
  expect(await faultsOf(ROW_KINDS.sales, rows)).toEqual([
    [4, 'date', 'blank'],
    [5, 'date', 'not-a-date'],
    [6, 'sold', 'void'],
    [7, 'sold', 'blank'],
    [8, 'comps', 'negative'],
    [9, 'tax_pct', 'tax-missing'],
  ]);
  const { rows: read } = await rowsOf(ROW_KINDS.sales, rows.join('\n'));
  const first = parseDay('2026-10-01');
  expect(read[0]?.row).toMatchObject({ day: first, net: '10', gross: null, channel: 'dine_in' });
  expect(read[1]?.row).toMatchObject({ day: first, net: null, gross: '11', tax: '0.1', comps: '1' });
  expect(read.map(({ day }) => day)).toEqual([first, first, null, null, first, first, first, first]);
  const grossAlone = await rowsOf(ROW_KINDS.sales, 'date,item,sold,gross_revenue\n2026-10-01,Tart,1,11\n');
  expect(grossAlone.refusal).toMatchObject({ rule: 'lacks-column', column: 'tax_pct' });
});

test('labour.csv, exchange_rates.csv, parts.csv and yields.csv: rates as they stand, per cent as fractions', async () => {
  const labour = ['grade,valid_from,cost_per_hour', 'Commis,,17.70', 'Commis,2026-01-01,-1', ',2026-01-01,9'];
  expect(await faultsOf(ROW_KINDS.labour, labour)).toEqual([
    [3, 'cost_per_hour', 'negative'],
    [4, 'grade', 'blank'],
  ]);
  expect(await rowOf(ROW_KINDS.labour, labour)).toEqual({ grade: 'Commis', validFrom: null, costPerHour: '17.7' });
  const rates = [
    'currency,valid_from,rate',
    'gbp,2026-01-01,1.1950',
    'GBP,,1.2',
    'GBP,2026-01-01,0',
    'XYQ,2026-01-01,1',
  ];
  expect(await faultsOf(ROW_KINDS.exchange_rates, rates)).toEqual([
    [3, 'valid_from', 'blank'],
    [4, 'rate', 'not-positive'],
    [5, 'currency', 'not-a-currency'],
  ]);
  expect(await rowOf(ROW_KINDS.exchange_rates, rates)).toMatchObject({ currency: 'GBP', rate: '1.195' });
  const parts = [
    'ingredient,part,output_quantity,output_unit,cost_share_pct',
    'Eggs,yolk,18,g,60',
    'Eggs,white,0,g,40',
    'Eggs,shell,6,cups of shell,0',
    'Eggs,shell,6,g,101',
  ];
  expect(await faultsOf(ROW_KINDS.parts, parts)).toEqual([
    [3, 'output_quantity', 'not-positive'],
    [4, 'output_unit', 'unknown-unit'],
    [5, 'cost_share_pct', 'out-of-range'],
  ]);
  expect(await rowOf(ROW_KINDS.parts, parts)).toMatchObject({ part: 'yolk', outputQuantity: '18', costShare: '0.6' });
  const yields = ['ingredient,use,usable_yield_pct', 'Lemons,juice,43', 'Lemons,zest,0'];
  expect(await faultsOf(ROW_KINDS.yields, yields)).toEqual([[3, 'usable_yield_pct', 'out-of-range']]);
  expect(await rowOf(ROW_KINDS.yields, yields)).toEqual({ ingredient: 'Lemons', use: 'juice', usableYield: '0.43' });
});

test('purchases.csv: goods need a code and how much, other lines an amount; the key is the invoice, or the day without one', async () => {
  const rows = [
    'date,supplier,invoice,kind,code,packs,quantity,unit,amount,delivered_on',
    '2026-10-02,Bay Dairy,BD-1,,A1,8,,,116.80,2026-10-02',
    '2026-10-02,bay dairy, bd-1,Non food,,,,,14,',
    '2026-10-03,Bay Dairy,,goods,A1,2,,,,',
    '2026-10-03,Bay Dairy,BD-2,goods,P,,1.4,kg,4.62,',
    '2026-10-03,Bay Dairy,BD-3,credit,A1,-1,,,-14.60,',
    '2026-10-03,Bay Dairy,BD-3,deposit,,,,,-7.00,',
    '2026-10-03,Bay Dairy,BD-4,goods,,2,,,10,',
    '2026-10-03,Bay Dairy,BD-4,goods,A1,,,,10,',
    '2026-10-03,Bay Dairy,BD-4,goods,A1,,2,,10,',
    '2026-10-03,Bay Dairy,BD-4,goods,A1,,,kg,10,',
    '2026-10-03,Bay Dairy,BD-4,freight,,,,,,',
    '2026-10-03,Bay Dairy,BD-4,gift,,,,,1,',
    '3.10.2026,Bay Dairy,,goods,A1,2,,,10,',
    '3.10.2026,Bay Dairy,BD-4,goods,A1,2,,,10,',
  ];
  expect(await faultsOf(ROW_KINDS.purchases, rows)).toEqual([
    [8, 'code', 'goods-without-code'],
    [9, 'packs', 'nothing-delivered'],
    [10, 'unit', 'pair-incomplete'],
    [11, 'quantity', 'pair-incomplete'],
    [12, 'amount', 'blank'],
    [13, 'kind', 'not-one-of'],
    [14, 'date', 'not-a-date'],
    [15, 'date', 'not-a-date'],
  ]);
  const { rows: read } = await rowsOf(ROW_KINDS.purchases, rows.join('\n'));
  expect(read.map(({ key }) => key)).toEqual([
    'bay dairy|bd-1',
    'bay dairy|bd-1',
    'bay dairy||2026-10-03',
    'bay dairy|bd-2',
    ...Array(2).fill('bay dairy|bd-3'),
    ...Array(6).fill('bay dairy|bd-4'),
    null,
    'bay dairy|bd-4',
  ]);
  expect(read.slice(0, 5).map(({ row }) => row)).toMatchObject([
    { kind: 'goods', packs: '8', quantity: null, amount: '116.8', deliveredOn: parseDay('2026-10-02') },
    { kind: 'non_food', code: null, amount: '14' },
    { invoice: null, amount: null },
    { packs: null, quantity: '1.4', unit: 'kg' },
    { packs: '-1', amount: '-14.6' },
  ]);
});

test('counts.csv and moves.csv: units as written, none counted is a count, nothing moved is no move', async () => {
  const counts = [
    'date,item,part,quantity,unit,place',
    '2026-10-31,Shell Eggs,Yolk,0.4,kg,Service fridge',
    '2026-10-31,Double cream,,0,tub,',
    '2026-10-31,Double cream,,-1,tub,',
    'October,Double cream,,1,tub,',
  ];
  expect(await faultsOf(ROW_KINDS.counts, counts)).toEqual([
    [4, 'quantity', 'negative'],
    [5, 'date', 'not-a-date'],
  ]);
  const { rows: counted } = await rowsOf(ROW_KINDS.counts, counts.join('\n'));
  expect(counted.map(({ key }) => key)).toEqual([
    '2026-10-31|shell eggs|yolk|service fridge',
    '2026-10-31|double cream||',
    '2026-10-31|double cream||',
    null,
  ]);
  expect(counted[1]?.row).toMatchObject({ part: null, quantity: '0', unit: 'tub', place: null });
  const moves = [
    'date,item,quantity,unit,reason,value,other_venue',
    '2026-10-01,Brownie,2,each,Staff food,,',
    '2026-10-01,Brownie,2,each,transfer_out,9.50,Harbour Kiosk',
    '2026-10-01,Brownie,0,each,broken,,',
    '2026-10-01,Brownie,2,each,eaten,,',
    '2026-10-01,Brownie,2,each,transfer_in,-1,',
  ];
  expect(await faultsOf(ROW_KINDS.moves, moves)).toEqual([
    [4, 'quantity', 'not-positive'],
    [5, 'reason', 'not-one-of'],
    [6, 'value', 'negative'],
  ]);
  const { rows: moved } = await rowsOf(ROW_KINDS.moves, moves.join('\n'));
  expect(moved.slice(0, 2).map(({ row, key }) => ({ ...row, key }))).toMatchObject([
    { reason: 'staff_food', value: null, otherVenue: null, key: '2026-10-01' },
    { reason: 'transfer_out', value: '9.5', otherVenue: 'Harbour Kiosk' },
  ]);
});

test('trials.csv and trial_lines.csv: a dish and a day, hours of a grade, what was used', async () => {
  const trials = [
    'recipe,date,hours,grade,outcome',
    'Posset,2026-10-01,2.5,Commis,',
    'Posset,2026-10-01,-1,Commis,',
    'Posset,,1,Commis,',
  ];
  expect(await faultsOf(ROW_KINDS.trials, trials)).toEqual([
    [3, 'hours', 'negative'],
    [4, 'date', 'blank'],
  ]);
  expect(await rowOf(ROW_KINDS.trials, trials)).toEqual({
    recipe: 'Posset',
    day: parseDay('2026-10-01'),
    hours: '2.5',
    grade: 'Commis',
    outcome: null,
  });
  const lines = [
    'recipe,date,item,quantity,unit',
    'Posset,2026-10-01,Double cream,600,ml',
    'Posset,2026-10-01,Lemons,0,each',
  ];
  expect(await faultsOf(ROW_KINDS.trial_lines, lines)).toEqual([[3, 'quantity', 'not-positive']]);
  const { rows: used } = await rowsOf(ROW_KINDS.trial_lines, lines.join('\n'));
  expect(used.map(({ key }) => key)).toEqual(['posset|2026-10-01', 'posset|2026-10-01']);
});

test('venue.csv reads each setting in its own way', async () => {
  const rows = [
    'setting,value',
    'Time zone,europe/dublin',
    'q_factor_pct,2.5',
    'currency,eur',
    'colour,red',
    'currency,euro',
    'time_zone,+01:00',
    'time_zone,Nowhere/Land',
    'business_day_ends,25:00',
    'locale,not a locale',
    'popularity_factor,1.2',
    'periods,weeks',
    'price_step,',
  ];
  expect(await faultsOf(ROW_KINDS.venue, rows)).toEqual([
    [5, 'setting', 'unknown-setting'],
    [6, 'value', 'not-a-currency'],
    [7, 'value', 'not-a-time-zone'],
    [8, 'value', 'not-a-time-zone'],
    [9, 'value', 'not-a-clock-time'],
    [10, 'value', 'not-a-locale'],
    [11, 'value', 'out-of-range'],
    [12, 'value', 'not-one-of'],
    [13, 'value', 'blank'],
  ]);
  const { rows: read } = await rowsOf(ROW_KINDS.venue, rows.join('\n'));
  expect(read.slice(0, 3).map(({ row }) => row?.value)).toEqual(['Europe/Dublin', '0.025', 'EUR']);
});

test('rowRefusalText(fault) says what is wrong, where, and how to mend it', async () => {
  const why = async (cell: string) => {
    const { rows } = await rowsOf(ROW_KINDS.covers, `date,covers\n${cell}`);
    const fault = rows[0]?.fault;
    return fault ? rowRefusalText(fault) : null;
  };
  expect(await why('31/12/2026,38')).toBe(
    '“31/12/2026” in date is no date as this file needs it. Write it as 2026-12-31.',
  );
  expect(await why('01/02/2026,38')).toBe(
    '“01/02/2026” in date is no date as this file needs it. Write it as 2026-02-01 or as 2026-01-02.',
  );
  expect(await why('2026-12-31,-3')).toBe('-3 in covers is below zero. Write zero or more.');
});
