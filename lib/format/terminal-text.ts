/** Characters that steer a terminal or turn the order of what it shows: controls, and Unicode's marks, embeddings and isolates of direction. */
const STEERING = /[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu;

/** A text from a file as one piece on a terminal: what would steer it is written as \u001b. */
export function terminalText(text: string): string {
  return text.replace(STEERING, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

/** The same of a text that has lines of its own. */
export function terminalLines(text: string): string {
  return text.split('\n').map(terminalText).join('\n');
}

/** JSON for a terminal or a pipe: the same value, indented, with what would steer a terminal written as JSON's own \u001b. */
export function terminalJson(value: unknown): string {
  return `${terminalLines(JSON.stringify(value, null, 2))}\n`;
}
