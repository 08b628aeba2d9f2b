import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { freshDatabase } from '../fresh-database';
import { everythingStored } from './everything-stored';
import { type Files, file, folder } from './folders';
import { revision } from './stored';

const { db } = await freshDatabase();

/** A store in which deliveries, counts, moves and trials wait for names, and some rows can never be taken. */
const STORE: Files = {
  'labour.csv': ['grade,valid_from,cost_per_hour', 'Commis,,17', 'commis,2026-01-01,17.70', 'Commis,2026-13-01,18'],
  'exchange_rates.csv': ['currency;valid_from;rate', 'GBP;2026-01-01;1,195'],
  'ingredients.csv': ['ingredient,measure', 'Eggs,each', 'Lemons,each', 'Cream,ml'],
  'measures.csv': ['ingredient,name,quantity,unit', 'CREAM,tub,2,l'],
  'parts.csv': [
    'ingredient;part;output_quantity;output_unit;cost_share_pct',
    'EGGS;Yolk;18,5;g;60',
    'Duck eggs;Yolk;25;g;60',
  ],
  'yields.csv': ['ingredient,use,usable_yield_pct', 'lemons,juice,43', 'Limes,juice,40'],
  'suppliers.csv': ['supplier', 'Bay Dairy'],
  'offers.csv': [
    'supplier,code,ingredient,pack_count,pack_size,pack_unit,chosen',
    'Bay Dairy,CR,cream,1,2,l,yes',
    'Bay Dairy,EG,Eggs,1,30,each,',
  ],
  'recipes.csv': [
    'recipe,kind,valid_from,yield_quantity,yield_unit,smallest_batch,cautions',
    'Custard,component,,900,g,450,raw egg',
    'Tart,dish,,,,,',
    'Two courses,set_menu,,,,,',
    'Amuse,extra,,,,,none',
  ],
  'recipe_lines.csv': [
    'recipe,valid_from,item,quantity,unit,part,use,choice,choice_share_pct,channel,by_product_credit',
    'Custard,,Eggs,90,g,yolk,,,,,',
    'Custard,,Lemons,10,g,,zest,,,,',
    'Two courses,,Tart,1,each,,,First,60,,',
    'Two courses,,Posset,1,each,,,First,40,,',
    'Tart,,Carton,1,each,,,,,Takeaway,',
    'Tart,,Cream,20,ml,,,,,,0.5',
  ],
  'menu.csv': [
    'item,valid_from,price,tax_pct,tax_included,commission_pct',
    'Posset,2026-01-01,8,10,yes,25',
    'Syrup,2026-01-01,3,10,yes,',
  ],
  'purchases.csv': [
    'date,supplier,invoice,kind,code,packs,quantity,unit,amount',
    '2026-10-02,bay dairy,B1,goods,CR,4,,,31.20',
    '2026-10-02,Bay Dairy,B1,goods,XX,4,,,31.20',
    '2026-10-02,Bay Dairy,B2,goods,XX,4,,,31.20',
    '2026-10-02,Bay Dairy,B2,deposit,,,,,-3.50',
    '2026-10-03,Bay Dairy,,goods,EG,1,,,',
    '3.10.2026,Bay Dairy,,goods,EG,1,,,',
  ],
  'counts.csv': [
    'date,item,part,quantity,unit,place',
    '2026-10-31,cream,,3,tub,Walk-in',
    '2026-10-31,Eggs,yolk,300,g,',
    '2026-10-31,Syrup,,300,g,',
    '2026-10-31,Tart,,3,each,',
    '2026-10-31,Nougat,,3,each,',
  ],
  'moves.csv': [
    'date,item,quantity,unit,reason',
    '2026-10-01,Posset,1,each,tasting',
    '2026-10-01,Nougat,1,each,tasting',
    '2026-10-02,Custard,100,g,over_production',
    '2026-10-02,Custard,100,g,over_production',
  ],
  'trials.csv': [
    'recipe,date,hours,grade',
    'Posset,2026-09-01,2,Commis',
    'Nougat,2026-09-02,2,Commis',
    'Cream,2026-09-02,2,Commis',
  ],
  'trial_lines.csv': [
    'recipe,date,item,quantity,unit',
    'Posset,2026-09-01,Cream,2,tub',
    'Posset,2026-09-01,Gold leaf,2,sheet',
    'posset,2026-09-01,Lemons,3,each',
    'Nougat,2026-09-02,Cream,1,tub',
  ],
  'recipes-2.csv': ['recipe,kind,valid_from', 'Syrup,component,'],
};
const NAMES = Object.keys(STORE);
const soak = process.env.SOAK ? 100 : 6;

test('loadFolder(db, folder) of a store is the same as its files one by one, in any order, and the second time nothing', async () => {
  const whole = 'Whole store';
  const report = await loadFolder(db, folder(STORE), { venue: whole });
  const facts = await everythingStored(db, whole);
  expect(report.files.reduce((sum, { refusedRows }) => sum + refusedRows, 0)).toBe(facts.waiting?.length);
  expect(facts.waiting?.map(({ kind, rule }) => `${kind} ${rule}`)).toEqual([
    'counts not-countable',
    'counts unknown-item',
    'labour no-such-day',
    'moves unknown-item',
    'parts unknown-ingredient',
    'purchases unknown-offer',
    'purchases unknown-offer',
    'purchases not-a-date',
    'recipe_lines unknown-item',
    'trial_lines unknown-item',
    'trial_lines unknown-trial',
    'trials unknown-item',
    'trials not-tried',
    'yields unknown-ingredient',
  ]);
  let made = 0;
  const orders = fc.shuffledSubarray(NAMES, { minLength: NAMES.length });
  await fc.assert(
    fc.asyncProperty(orders, async (order) => {
      const venue = `Store ${made++}`;
      for (const name of order) await loadFolder(db, file(name, STORE[name] ?? ''), { venue });
      expect(await everythingStored(db, venue)).toEqual(facts);
      const at = await revision(db, venue);
      const again = await loadFolder(db, folder(STORE), { venue });
      expect(again.files.every(({ taken, changed, withdrawn }) => taken + changed + withdrawn === 0)).toBe(true);
      expect(await revision(db, venue)).toBe(at);
    }),
    { numRuns: soak, examples: [[[...NAMES].reverse()]] },
  );
}, 1_200_000);
