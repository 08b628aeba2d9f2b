import { expect, test } from 'vitest';
import { shapesOfSections } from '@/app/_ui/mark-shape';
import { planeFacts } from '@/app/_ui/mix-plane/plane-facts';
import { drawnMarks, namedCurves } from '@/app/_ui/mix-plane/plane-layout';
import { NARROW } from '@/app/_ui/mix-plane/plane-size';
import { axisNameX, plotWords, wordBox } from '@/app/_ui/mix-plane/plane-words';
import { HALF_AXIS } from '@/app/_ui/mix-plane/region';
import { plainText } from '@/lib/format/phrase';
import { PLANE, popularityLine } from '@/lib/format/words/mix-plane';
import { october } from '../format/october';

const shapes = shapesOfSections(october.items.map(({ section }) => section));
const facts = planeFacts(october, 'en-GB', shapes);

/** October, but with the first dish on sale half the days. */
const differing = {
  ...october,
  items: october.items.map((item, index) => ({ ...item, expected: index === 0 ? 100 : 200 })),
  thresholds: { ...october.thresholds, popularity: null },
};

function mark(name: string) {
  const found = facts.marks.find(({ item }) => item === name);
  if (!found) throw new Error(`no mark ${name}`);
  return found;
}

test('planeFacts(mix) draws what has a margin, and leaves out what has none', () => {
  expect(facts.marks).toHaveLength(15);
  expect(facts.marks.some(({ item }) => item === 'Sheep’s curd, fig leaf')).toBe(false);
  expect(facts.marks.filter(({ doubtful }) => doubtful)).toHaveLength(6);
});

// 0.70 / 16 = 4.375 %; 26,954.50 / 3,316 = 8.12862.
test('planeFacts(mix) names both lines with their exact values', () => {
  expect(facts.popularity?.words.replaceAll('\u2009', ' ')).toBe('popular from 4.375 %');
  expect(facts.margin?.words).toEqual(['high margin', 'from 8.1286']);
});

test('popularityLine(popularity) prints the exact threshold, to three decimals where it has no end', () => {
  const printed = (threshold: number) => popularityLine({ low: threshold, high: threshold }, 'en-IE').words;
  expect(printed(0.7 / 3)).toBe('popular from 23.333\u2009%');
  expect(printed(0.7 / 8)).toBe('popular from 8.75\u2009%');
  expect(printed(0.7 / 16)).toBe('popular from 4.375\u2009%');
  expect(printed(0.07)).toBe('popular from 7\u2009%');
});

test('planeFacts(mix) where dishes were on sale on different days gives each its own line', () => {
  const own = planeFacts(differing, 'en-GB', shapes);
  expect(own.marks[0]?.popularFrom).toBeCloseTo(70 / 3412, 12);
  expect(own.popularity?.low).toBeCloseTo(70 / 3412, 12);
  expect(own.popularity?.high).toBeCloseTo(140 / 3412, 12);
  expect(own.popularity?.words.replaceAll('\u2009', ' ')).toBe('popular from 2.1 to 4.1 %, by days on sale');
  expect(plainText(own.marks[0]?.reading ?? [])).toContain('(popular from 2.05\u2009%)');
});

test('planeFacts(mix) reads a mark with its figures, its class in words, and how sure that is', () => {
  const said = (name: string) => plainText(mark(name).reading).replaceAll('\u2009', ' ');
  expect(said('Rye choux, hay cream')).toBe(
    '4.2 % of portions · leaves €9.31 · sells little, leaves much (puzzle) in 65 of 100 resamples, star in 35',
  );
  expect(said('Dune')).toBe(
    '9.1 % of portions · leaves €11.82 · sells well, leaves much (star) in 100 of 100 resamples, settled',
  );
  expect(said('Iced pear lantern')).toContain('leaves €10.62 by the owner’s estimate');
  expect(mark('Rye choux, hay cream').label).toBe('Rye choux');
});

// 5,000 px a unit of share and 50 px a unit of margin; the share of Rye choux is 4.19 %, the line stands at 4.375 %.
test('drawnMarks(facts, scales, plot) hatches a region just where it reaches over its own line', () => {
  const plot = { x: 0, y: 0, width: 1000, height: 700 };
  const scales = { x: (share: number) => share * 5000, y: (margin: number) => 700 - margin * 50 };
  const drawn = drawnMarks(facts, scales, plot);
  const rye = drawn.find(({ mark: one }) => one.item === 'Rye choux, hay cream');
  expect(rye?.region?.rx).toBeCloseTo(HALF_AXIS * (rye?.mark.spread?.share ?? 0) * 5000, 6);
  expect(rye?.doubtPath).toContain('M218.75 0');
  expect(drawn.find(({ mark: one }) => one.item === 'Dune')?.doubtPath).toBeNull();
});

test('drawnMarks(facts, scales, plot) follows the word where a settled dish’s region crosses a line all the same', () => {
  const plot = { x: 0, y: 0, width: 1000, height: 700 };
  const scales = { x: (share: number) => share * 5000, y: (margin: number) => 700 - margin * 50 };
  const settled = facts.marks.map((one) => ({ ...one, doubtful: false }));
  expect(drawnMarks({ ...facts, marks: settled }, scales, plot).every(({ doubtPath }) => doubtPath === null)).toBe(
    true,
  );
});

test('namedCurves(curves, nameOf, plot) leaves out names that would touch, the lower sum first', () => {
  const curves = [100, 140, 300, 500].map((x, index) => ({ level: (index + 1) * 25_000_000, path: '', x }));
  const plot = { x: 50, y: 0, width: 460, height: 300 };
  const names = namedCurves(curves, (level) => level.toLocaleString('en-GB'), plot);
  expect(names.map(({ level }) => level)).toEqual([75_000_000, 50_000_000]);
});

test('plotWords(facts, marks) move out of the way of marks, and name the upright line where it is free', () => {
  const plot = { x: 50, y: 30, width: 800, height: 500 };
  const scales = { x: (share: number) => 50 + share * 5000, y: (margin: number) => 530 - margin * 50 };
  const size = { width: 900, height: 590, namesMargin: true };
  const measured = (text: string) => text.length * 7;
  const [one] = drawnMarks(facts, scales, plot);
  if (!one) throw new Error('no mark');
  const clear = plotWords(facts, [], scales, plot, size, measured);
  expect(clear.map(({ key }) => key)).toEqual(['popular', 'puzzle', 'star', 'dog', 'plowhorse']);
  const inTheWay = clear.map(({ x, y, anchor }) => ({ ...one, x: anchor === 'end' ? x - 10 : x + 10, y: y - 6 }));
  plotWords(facts, inTheWay, scales, plot, size, measured).forEach((word, index) => {
    expect([word.x, word.y]).not.toEqual([clear[index]?.x, clear[index]?.y]);
  });
});

test('plotWords(facts, marks) on a phone name the upright line under the axis, where no dish’s name lies over it, and never outside', () => {
  const plot = { x: 50, y: 40, width: 302, height: 340 };
  const scales = { x: (share: number) => 50 + share * 2800, y: (margin: number) => 380 - margin * 20 };
  const measured = (text: string) => text.length * 6.4;
  const own = planeFacts(differing, 'en-GB', shapes);
  const drawn = drawnMarks(own, scales, plot);
  const [one] = drawn;
  if (!one) throw new Error('no mark');
  const everywhere = Array.from({ length: 300 }, (_, at) => ({
    ...one,
    x: 50 + 15 * (at % 20),
    y: 40 + 22 * (at / 20),
  }));
  const [popular, ...classes] = plotWords(own, everywhere, scales, plot, NARROW, measured);
  if (!popular) throw new Error('no name');
  expect(popular.y).toBe(426);
  expect(popular.text.replaceAll('\u2009', ' ')).toBe('popular from 2.1 to 4.1 %');
  for (const word of [popular, ...classes]) {
    const box = wordBox(word, measured);
    expect(box.x).toBeGreaterThanOrEqual(0);
    expect(box.x + box.width).toBeLessThanOrEqual(NARROW.width);
  }
  expect(plotWords(own, [], scales, plot, NARROW, measured)[0]).toEqual(popular);
  const nameX = axisNameX([popular], NARROW, plot, measured);
  expect(nameX + measured(PLANE.shareAxis)).toBeLessThan(wordBox(popular, measured).x);
  expect(axisNameX(classes, NARROW, plot, measured)).toBe(plot.x);
});

// Its own line at 70 / 3,412 = 2.052 % of 5,000 px a unit: 102.58 px; that of all others at 205.16 px.
test('drawnMarks(facts) of dishes with lines of their own draws each, through the region where the dish is on it', () => {
  const plot = { x: 0, y: 0, width: 1000, height: 700 };
  const scales = { x: (share: number) => share * 5000, y: (margin: number) => 700 - margin * 50 };
  const drawn = drawnMarks(planeFacts(differing, 'en-GB', shapes), scales, plot);
  expect(drawn[0]?.ownLine?.x).toBeCloseTo(102.58, 2);
  const rye = drawn.find(({ mark: one }) => one.item === 'Rye choux, hay cream');
  expect(rye?.ownLine?.x).toBeCloseTo(205.16, 2);
  expect(rye?.ownLine?.isNeeded).toBe(true);
  expect(rye?.doubtPath).toContain('M205.1');
  expect((rye?.ownLine?.bottom ?? 0) - (rye?.ownLine?.top ?? 0)).toBeGreaterThan(2 * (rye?.region?.ry ?? 0));
  expect(drawn.filter(({ mark: one, ownLine }) => ownLine?.isNeeded && !one.doubtful)).toEqual([]);
  expect(drawnMarks(facts, scales, plot).every(({ ownLine }) => ownLine === null)).toBe(true);
});
