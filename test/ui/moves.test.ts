import { describe, expect, test } from 'vitest';
import {
  chosenOf,
  editsOf,
  type Moves,
  movesOf,
  movesQuery,
  putBack,
  readableQuery,
  without,
  withStep,
  withTarget,
} from '@/app/_ui/price-desk/moves';

const CREAM = { of: 'ingredient', name: 'Double cream' } as const;
const SUGAR = { of: 'ingredient', name: 'Sugar' } as const;
const MORE = { how: 'share', by: 0.1 } as const;
const TWO: Moves = {
  list: [
    { target: CREAM, step: MORE },
    { target: SUGAR, step: { how: 'flat', to: 2 } },
  ],
  at: 1,
};

describe('movesOf(texts, at, first)', () => {
  test('reads changes and what is only looked at, and chooses the last', () => {
    expect(movesOf(['Double cream:+10%', 'Sugar:2'], null, CREAM)).toEqual({ moves: TWO, refused: [] });
    expect(movesOf(['Double cream:+10%', 'Sugar:2'], '1', CREAM).moves.at).toBe(0);
    for (const wrong of ['3', '0', 'x', '1.5'])
      expect(movesOf(['Double cream:+10%', 'Sugar:2'], wrong, CREAM).moves.at).toBe(1);
    expect(movesOf(['Sugar'], null, CREAM).moves).toEqual({ list: [{ target: SUGAR, step: null }], at: 0 });
  });

  test('says nothing of no text, and gives back what it cannot read', () => {
    expect(movesOf([], null, CREAM)).toEqual({ moves: { list: [{ target: CREAM, step: null }], at: 0 }, refused: [] });
    expect(movesOf(['Sugar:10%', ''], null, CREAM).refused).toEqual(['Sugar:10%', '']);
  });

  test('reads back what movesQuery(moves) wrote', () => {
    for (const moves of [TWO, { ...TWO, at: 0 }, putBack(TWO)]) {
      const query = new URLSearchParams(readableQuery(movesQuery(moves)));
      expect(movesOf(query.getAll('price'), query.get('at'), CREAM).moves).toEqual(moves);
    }
  });
});

test('readableQuery(parts) leaves colons and writes spaces as a plus', () => {
  expect(readableQuery([['month', '2026-10'], ...movesQuery({ ...TWO, list: TWO.list.slice(0, 1), at: 0 })])).toBe(
    'month=2026-10&price=Double+cream:%2B10%25',
  );
});

test('withTarget(moves, target) takes the place of what was never moved, and chooses what is there already', () => {
  expect(withTarget(TWO, CREAM)).toEqual({ ...TWO, at: 0 });
  const salt = { of: 'ingredient', name: 'Salt' } as const;
  expect(withTarget(TWO, salt)).toEqual({ list: [...TWO.list, { target: salt, step: null }], at: 2 });
  expect(withTarget(putBack(TWO), salt)).toEqual({ list: [{ target: salt, step: null }], at: 0 });
});

test('withStep(moves, step) moves the chosen one only; without(moves, index) takes one away, and puts back the last', () => {
  expect(editsOf(withStep(TWO, null))).toEqual([{ target: CREAM, step: MORE }]);
  expect(without(TWO, 0)).toEqual({ list: TWO.list.slice(1), at: 0 });
  expect(without({ ...TWO, at: 0 }, 1)).toEqual({ list: TWO.list.slice(0, 1), at: 0 });
  expect(without(without(TWO, 0), 0)).toEqual({ list: [{ target: SUGAR, step: null }], at: 0 });
  expect(chosenOf(putBack(TWO))).toEqual({ target: SUGAR, step: null });
});
