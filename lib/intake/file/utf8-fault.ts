/**
 * The place of the first byte that is not UTF-8 (RFC 3629), or -1. A character that the bytes break off in counts from where it
 * begins as `unfinished`, since more bytes may follow.
 */
export function utf8Fault(bytes: Uint8Array): { readonly bad: number; readonly unfinished: number } {
  let at = 0;
  while (at < bytes.length) {
    const length = characterLength(bytes, at);
    if (length === 0) return { bad: at, unfinished: -1 };
    if (length === null) return { bad: -1, unfinished: at };
    at += length;
  }
  return { bad: -1, unfinished: -1 };
}

/** Bytes of the character that begins here; 0: there is none; null: it goes on behind the end. */
function characterLength(bytes: Uint8Array, at: number): number | null {
  const lead = bytes[at] ?? 0;
  if (lead < 0x80) return 1;
  const length = lead >= 0xf0 ? 4 : lead >= 0xe0 ? 3 : 2;
  if (lead < 0xc2 || lead > 0xf4) return 0;
  for (let next = 1; next < length; next++) {
    const byte = bytes[at + next];
    if (byte === undefined) return null;
    const [low, high] = next === 1 ? secondByte(lead) : [0x80, 0xbf];
    if (byte < low || byte > high) return 0;
  }
  return length;
}

/** What may follow a lead byte: no overlong forms, no surrogates, nothing above U+10FFFF. */
function secondByte(lead: number): readonly [number, number] {
  if (lead === 0xe0) return [0xa0, 0xbf];
  if (lead === 0xed) return [0x80, 0x9f];
  if (lead === 0xf0) return [0x90, 0xbf];
  if (lead === 0xf4) return [0x80, 0x8f];
  return [0x80, 0xbf];
}
