import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { sectionsOf, spelledSection } from '@/lib/model/offered';
import { Book, day, days } from '../books';

const OCTOBER = days('2026-10');

describe('sectionsOf', () => {
  test('sectionsOf(things) is by name, each as the first of its items spells it; what is not offered has none', () => {
    const book = new Book();
    book.menu(book.dish('Apple tart', { section: 'Mains', estimatedCost: 1 }), 9);
    book.menu(book.dish('Bread', { section: 'Sweet', estimatedCost: 1 }), 9);
    book.menu(book.dish('Crab', { section: 'SWEET', estimatedCost: 1 }), 9);
    book.dish('Duck', { section: 'Not yet', estimatedCost: 1 });
    const { sections } = costPeriod(book.facts(), OCTOBER, 'everything');
    expect(sections).toEqual(['Mains', 'Sweet']);
    expect(sectionsOf([])).toEqual([]);
  });
});

describe('spelledSection', () => {
  test('spelledSection(sections, asked) is as the menu spells it; the whole menu is itself; undefined where there is none', () => {
    expect(spelledSection(['Mains', 'Sweet'], 'sweet')).toBe('Sweet');
    expect(spelledSection(['Mains', 'Sweet'], null)).toBeNull();
    expect(spelledSection(['Mains', 'Sweet'], 'Cheese')).toBeUndefined();
  });
});

describe('costPeriod: in which order facts stand', () => {
  test('costPeriod(facts) has covers of its own days alone, by day', () => {
    const book = new Book();
    for (const on of ['2026-10-20', '2026-10-09', '2026-11-01', '2026-10-12']) book.cover(on, 10);
    expect(costPeriod(book.facts(), OCTOBER).covers.map((each) => each.day)).toEqual([
      day('2026-10-09'),
      day('2026-10-12'),
      day('2026-10-20'),
    ]);
  });

  test('costPeriod(facts) has the sales of an item by day, then channel, and its menus by channel', () => {
    const book = new Book();
    const tart = book.dish('Tart', { estimatedCost: 1 });
    book.sell(tart, '2026-10-12', 1, 9, { channel: 'takeaway' });
    book.sell(tart, '2026-10-03', 2, 18);
    book.sell(tart, '2026-10-12', 3, 27);
    book.menu(tart, 8, { channel: 'takeaway' });
    book.menu(tart, 9);
    const [thing] = costPeriod(book.facts(), OCTOBER).things;
    expect(thing?.sales.map(({ sold }) => sold)).toEqual([2, 3, 1]);
    expect(thing?.menu.map(({ channel }) => channel)).toEqual(['dine_in', 'takeaway']);
  });

  test('costPeriod(an item that is on the menu in one of its channels) has it; in none, not', () => {
    const book = new Book();
    const tart = book.dish('Tart', { estimatedCost: 1 });
    const flan = book.dish('Flan', { estimatedCost: 1 });
    book.menu(tart, 9);
    book.menu(tart, null, { channel: 'takeaway' });
    book.menu(flan, null);
    expect(costPeriod(book.facts(), OCTOBER).things.map(({ name }) => name)).toEqual(['Tart']);
  });
});
