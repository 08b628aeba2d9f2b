import { expect, test } from 'vitest';
import { leaning } from '@/lib/model/mix/leaning';
import { MIX_MODELS } from '@/lib/model/mix/mix-models';

test('leaning(class) is for on the favourable side of every axis, against on none, whatever the work', () => {
  const by = (model: keyof typeof MIX_MODELS) => MIX_MODELS[model].classes.map(leaning);
  expect(by('kasavana-smith')).toEqual(['for', 'mixed', 'mixed', 'against']);
  expect(by('miller')).toEqual(['for', 'mixed', 'against']);
  expect(by('pavesic')).toEqual(['for', 'mixed', 'mixed', 'against']);
  expect(by('goal-value')).toEqual(['for', 'against']);
  expect(by('labour')).toEqual(['for', 'for', 'mixed', 'mixed', 'mixed', 'mixed', 'against', 'against']);
});
