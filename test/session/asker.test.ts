import { describe, expect, test } from 'vitest';
import { askedHere } from '@/lib/session/asker';

describe('askedHere(host, origin)', () => {
  test('lets in this machine’s own address, with and without a port', () => {
    expect(askedHere('127.0.0.1', null)).toBe(true);
    expect(askedHere('127.0.0.1:3000', null)).toBe(true);
    expect(askedHere('127.0.0.1:3000', 'http://127.0.0.1:3000')).toBe(true);
  });

  test.each([
    null,
    '',
    'localhost:3000',
    'rebound.example',
    '127.0.0.1.example',
    '127.0.0.2:3000',
    '[::1]:3000',
    '127.0.0.1:3000@x',
    ' 127.0.0.1',
  ])('refuses the Host %j', (host) => {
    expect(askedHere(host, null)).toBe(false);
  });

  test.each(['http://elsewhere.example', 'null', 'http://127.0.0.1:4000', 'https://127.0.0.1:3000'])(
    'refuses a page of %s that asks 127.0.0.1:3000',
    (origin) => {
      expect(askedHere('127.0.0.1:3000', origin)).toBe(false);
    },
  );
});
