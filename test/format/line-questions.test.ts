import { describe, expect, test } from 'vitest';
import { lineQuestionWords } from '@/lib/format/words/line-questions';
import { typedLine } from '@/lib/intake/typed-line';
import { LINE_QUESTIONS } from '@/lib/model/line-question';

const asked = (text: string): readonly string[] =>
  typedLine(text, { measures: 'metric', decimalComma: false }).questions.map(lineQuestionWords);

describe('lineQuestionWords', () => {
  test('lineQuestionWords(question) says what was read and what to say instead', () => {
    expect(asked('2-3 eggs')).toEqual(['From 2 to 3: which is it? 2 is taken until you say.']);
    expect(asked('1-1/3 cups milk')).toEqual([
      '“1-1/3” is read as 1.3333. If it means from one to the other, say which.',
    ]);
    expect(asked('1,500 g sugar')).toEqual(['“1,500” is read as 1500. If it means 1.5, write that.']);
    expect(asked('2 tbsp oil, lard or butter')).toContain('It may also be lard or butter. Which one goes in?');
    expect(asked('3 leaves gelatine')).toEqual([
      'How much is one leaf? Weigh one and add it to the ingredient’s measures, or write the weight here.',
    ]);
    expect(asked('juice and zest of 1 lemon')).toEqual([
      'Both juice and zest are taken from it. Its cost belongs to one line; which use is this?',
    ]);
  });

  test.each(LINE_QUESTIONS)('lineQuestionWords(%s) is a sentence without a gap', (code) => {
    const facts = {
      limit: 300,
      written: 'w',
      word: 'w',
      measure: 'm',
      unit: 'u',
      quantity: 60,
      read: 1,
      otherwise: 2,
      from: 1,
      to: 2,
      count: 1,
      size: 2,
      other: 'o',
      names: ['a', 'b'],
      uses: ['c', 'd'],
    };
    const words = lineQuestionWords({ code, facts });
    expect(words).toMatch(/^[A-Z“0-9].*[.?]$/);
    expect(words).not.toMatch(/undefined|null|NaN| {2}|\[object|“”/);
  });
});
