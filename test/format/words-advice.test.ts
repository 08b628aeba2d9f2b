import { describe, expect, test } from 'vitest';
import { plainText } from '@/lib/format/phrase';
import { type AdviceFigures, adviceSentences } from '@/lib/format/words/advice';

const PURSE = { currency: 'EUR', locale: 'en' };
const LITTLE: AdviceFigures = {
  ...{ againstAverage: '-0.45', leavesLess: 0.98, rise: '0.47', mayLose: 0.061, takenOffFrom: 0.936 },
  ...{ onlyWithout: [], mostPlatingMinutes: null },
};
const said = (more: Partial<AdviceFigures> = {}) => adviceSentences({ ...LITTLE, ...more }, PURSE).map(plainText);

describe('adviceSentences', () => {
  test('adviceSentences(advice) of what leaves little: against the average, the rise, and when taking it off pays', () => {
    expect(said()).toEqual([
      'It leaves €0.45 less a portion than the average, in 98 of 100 resamples.',
      'At a net price €0.47 higher it would leave the average, which it lifts too; it may then lose 6.1\u2009% of its portions before it leaves less in the period than now.',
      'Taking it off pays only if more than 94\u2009% of its guests order another dish instead.',
    ]);
  });

  test('adviceSentences(advice) of what leaves much has no rise, and never pays to be taken off', () => {
    expect(said({ againstAverage: '1.2', leavesLess: 0.01, rise: null, mayLose: null, takenOffFrom: 1.14 })).toEqual([
      'It leaves €1.20 more a portion than the average, in 99 of 100 resamples.',
      'Taking it off never pays, even if all of its guests ordered another dish.',
    ]);
    expect(said({ againstAverage: '0.00', leavesLess: null, rise: null, takenOffFrom: null })).toEqual([
      'It leaves as much a portion as the average.',
    ]);
  });

  test('adviceSentences(advice) of what leaves nothing, and of a rise that no loss of portions is known for', () => {
    const [, rise, off] = said({ mayLose: null, takenOffFrom: 0, leavesLess: null });
    expect(rise).toBe('At a net price €0.47 higher it would leave the average, which it lifts too.');
    expect(off).toContain('It leaves nothing');
  });

  test('adviceSentences(advice) says what else it carries, with the usual caution', () => {
    const [, , , without, plating] = said({ onlyWithout: ['gluten', 'milk'], mostPlatingMinutes: 6.5 });
    expect(without).toContain('the only one on the menu without declared gluten or milk');
    expect(without).toContain('cross-contact');
    expect(plating).toBe('None takes more plating: 6.5 minutes.');
  });
});
