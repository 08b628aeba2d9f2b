/** The typefaces that the page has loaded, as rules with the fonts inside: a picture drawn from a file can reach no others. */
export async function pageFonts(): Promise<string> {
  const loaded = new Set([...document.fonts].filter(({ status }) => status === 'loaded').map(keyOf));
  const rules = [...document.styleSheets].flatMap(({ cssRules }) =>
    [...cssRules].filter((rule) => rule instanceof CSSFontFaceRule && loaded.has(keyOfRule(rule.style))),
  );
  return (await Promise.all(rules.map(withFontInside))).join('\n');
}

const bare = (family: string): string => family.replaceAll(/["']/g, '');
const keyOf = ({ family, unicodeRange }: FontFace): string => `${bare(family)} ${unicodeRange}`.toLowerCase();
const keyOfRule = (style: CSSStyleDeclaration): string =>
  `${bare(style.getPropertyValue('font-family'))} ${style.getPropertyValue('unicode-range') || 'U+0-10FFFF'}`.toLowerCase();

async function withFontInside(rule: CSSRule): Promise<string> {
  const address = /url\("?([^")]+)"?\)/.exec(rule.cssText)?.[1];
  if (address === undefined) return rule.cssText;
  const font = await (await fetch(new URL(address, rule.parentStyleSheet?.href ?? document.baseURI))).blob();
  return rule.cssText.replace(address, await dataUrl(font));
}

function dataUrl(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(blob);
  });
}
