import { z } from 'zod';
import type { RefusalFacts, RowRule } from '../model/refusal';

/** What is wrong with a cell: the rule that it breaks and the particulars that the sentence needs. */
export class CellFault {
  constructor(
    readonly rule: RowRule,
    readonly facts: RefusalFacts = {},
  ) {}
}

export type ReadCell<T> = (text: string) => T | CellFault;

/** A cell that must hold something. */
export function needed<T>(read: ReadCell<T>) {
  return z.string().transform((cell, context): T => {
    const text = cell.trim();
    const value = text === '' ? new CellFault('blank') : read(text);
    if (!(value instanceof CellFault)) return value;
    context.addIssue(issueOf(value));
    return z.NEVER;
  });
}

/** A cell that may be blank, which means "not known": null. A column that the file does not have says nothing: undefined. */
export function optional<T>(read: ReadCell<T>) {
  return z
    .string()
    .transform((cell, context): T | null => {
      const text = cell.trim();
      const value = text === '' ? null : read(text);
      if (!(value instanceof CellFault)) return value;
      context.addIssue(issueOf(value));
      return z.NEVER;
    })
    .optional();
}

/** The issue that carries a fault through zod; `column` where it is found by looking at several cells. */
export function issueOf(fault: CellFault, column?: string) {
  return { code: 'custom' as const, params: { fault }, ...(column === undefined ? {} : { path: [column] }) };
}

export const NAME_LIMIT = 200;
export const NOTE_LIMIT = 2000;

/** Text as it was written, without surrounding space. */
export function text(limit = NAME_LIMIT): ReadCell<string> {
  return (cell) =>
    cell.length > limit || cell.normalize('NFKC').length > limit ? new CellFault('too-long', { limit }) : cell;
}

/** One of a few words, without regard to case. */
export function oneOf<const Word extends string>(words: readonly Word[]): ReadCell<Word> {
  return (cell) => {
    const key = cell.normalize('NFKC').toLowerCase();
    return words.find((word) => word.toLowerCase() === key) ?? new CellFault('not-one-of', { allowed: words });
  };
}

export const yesNo: ReadCell<boolean> = (cell) => {
  const key = cell.normalize('NFKC').toLowerCase();
  return key === 'yes' ? true : key === 'no' ? false : new CellFault('not-yes-no');
};

/** Texts separated by semicolons, sorted and each once; `none` alone is a declaration that there are none. */
export const declaration: ReadCell<readonly string[]> = (cell) => {
  const named = cell.split(';').map((part) => part.normalize('NFKC').trim().toLowerCase());
  const words = [...new Set(named.filter((word) => word !== ''))].sort();
  if (words.length === 0 || !words.includes('none'))
    return words.some((word) => word.length > NAME_LIMIT) ? new CellFault('too-long', { limit: NAME_LIMIT }) : words;
  return words.length === 1 ? [] : new CellFault('none-and-more');
};
