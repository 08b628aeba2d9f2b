const FRACTIONS: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅐': '1/7',
  '⅑': '1/9',
  '⅒': '1/10',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const BULLET = /^(?:[-*+•·▪▢□☐–—]|\[[ x]?\])\s+/i;
const LINK = /\[([^\]]*)\]\([^)]*\)/g;

/**
 * A line without the dress it was copied in: bullets, marks of emphasis, links, several kinds of dash and space. Fractions of one
 * character become 1/2, before Unicode compatibility would join them to the number before (2½ is not 21/2).
 */
export function plainLine(written: string): string {
  return written
    .replace(/[¼½¾⅐-⅞]/g, (sign) => ` ${FRACTIONS[sign] ?? sign} `)
    .normalize('NFKC')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replaceAll('\u2044', '/')
    .replaceAll('\u2019', "'")
    .replace(/\p{Cc}|\p{Cf}/gu, ' ')
    .trim()
    .replace(BULLET, '')
    .replace(LINK, '$1')
    .replace(/\*+|(?<![\p{L}\p{N}])_+|_+(?![\p{L}\p{N}])/gu, '')
    .replace(/\s+/g, ' ')
    .replace(/(\d) ?\/ ?(\d)/g, '$1/$2')
    .trim();
}
