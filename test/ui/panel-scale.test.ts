import { expect, test } from 'vitest';
import { panelDomain, panelScale, runsOfKnown } from '@/app/_ui/slot-panels/panel-scale';
import { lastSlots, type Panel, type SlotFacts } from '@/app/_ui/slot-panels/slot-facts';

const panel = (kind: Panel['kind'], values: readonly (number | null)[], more: Partial<Panel> = {}): Panel => ({
  ...{ key: 'p', name: 'p', kind, line: null, last: '', figure: String },
  values: values.map((value) => ({ value, hollow: false, against: null })),
  ...more,
});

test('panelDomain(panel) of bars starts at zero, of dots leaves some air, and has the line and what is held against', () => {
  expect(panelDomain(panel('bars', [20, 50, null]))).toEqual([0, 50]);
  expect(panelDomain(panel('bars', [-10, 30]))).toEqual([-10, 30]);
  expect(panelDomain(panel('bars', [0]))).toEqual([0, 1]);
  // 12 % of 20 to 30 on either side; the line at 40 is shown too
  expect(panelDomain(panel('dots', [20, 30]))).toEqual([18.8, 31.2]);
  expect(panelDomain(panel('dots', [20, 30], { line: { value: 40, name: '' } }))).toEqual([17.6, 42.4]);
  const against = panel('bars', [5]);
  expect(panelDomain({ ...against, values: [{ value: 5, hollow: false, against: 9 }] })).toEqual([0, 9]);
  expect(panelDomain(panel('dots', [null, null], { line: { value: 1, name: '' } }))).toBeNull();
});

test('panelDomain(panel) of dots that are all alike still has a height', () => {
  expect(panelDomain(panel('dots', [50, 50]))).toEqual([44, 56]);
  expect(panelDomain(panel('dots', [0]))).toEqual([-1, 1]);
});

test('panelScale(panel, height) puts the lowest at the floor and the highest at the top', () => {
  const scale = panelScale(panel('bars', [10, 40]), 100);
  expect([scale?.y(0), scale?.y(40), scale?.y(10), scale?.ticks]).toEqual([100, 0, 75, [0, 20, 40]]);
  expect(panelScale(panel('bars', [null]), 100)).toBeNull();
});

test('runsOfKnown(values) breaks where a value is not known', () => {
  expect(runsOfKnown(panel('dots', [1, 2, null, null, 3, null, 4, 5]).values)).toEqual([[0, 1], [4], [6, 7]]);
});

test('lastSlots(facts, count) keeps the last of slots, values and words alike', () => {
  const facts: SlotFacts = {
    slots: ['a', 'b', 'c'].map((key) => ({ key, label: key, below: null })),
    panels: [panel('bars', [1, 2, 3])],
    events: [{ key: 'came', name: 'came', words: ['', '+1', '+2'] }],
  };
  const last = lastSlots(facts, 2);
  expect(last.slots.map(({ key }) => key)).toEqual(['b', 'c']);
  expect(last.panels[0]?.values.map(({ value }) => value)).toEqual([2, 3]);
  expect(last.events[0]?.words).toEqual(['+1', '+2']);
  expect(lastSlots(facts, 18)).toEqual(facts);
});
