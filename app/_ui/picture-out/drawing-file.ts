/** What a drawing's look hangs on; all else has its usual value in a file too. */
const LOOK = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linejoin',
  'stroke-linecap',
  'paint-order',
  'opacity',
  'visibility',
  'font-size',
  'font-weight',
  'font-style',
  'font-variant-numeric',
  'letter-spacing',
] as const;

/** By their own names, which whoever opens the file may have. */
const VOICES = {
  serif: '"Source Serif 4", Georgia, serif',
  sans: '"Source Sans 3", "Segoe UI", sans-serif',
} as const;

/** How large the file's picture is, in px of the page. */
export interface DrawingSize {
  readonly width: number;
  readonly height: number;
}

/** The picture that is seen of a figure: the largest of its drawings that is shown. */
export function drawingOf(figure: Element): SVGSVGElement | null {
  const area = (svg: SVGSVGElement) => svg.getBoundingClientRect().width * svg.getBoundingClientRect().height;
  const shown = [...figure.querySelectorAll('svg')].filter((svg) => area(svg) > 0);
  return shown.sort((a, b) => area(b) - area(a))[0] ?? null;
}

export function sizeOf(svg: SVGSVGElement): DrawingSize {
  const { width, height } = svg.viewBox.baseVal;
  return width > 0 && height > 0 ? { width, height } : svg.getBoundingClientRect();
}

/**
 * A drawing of the page as a file of its own: its computed look written into it, on the page's paper. With `fonts` the typefaces of the
 * page are in it too.
 */
export function drawingText(svg: SVGSVGElement, fonts: string | null): string {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const originals = svg.querySelectorAll('*');
  copy.querySelectorAll('*').forEach((element, at) => {
    const original = originals[at];
    if (original && element instanceof SVGElement) dress(element, getComputedStyle(original), fonts !== null);
  });
  const { width, height } = sizeOf(svg);
  for (const [name, value] of Object.entries({
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${width} ${height}`,
    width: String(width),
    height: String(height),
  }))
    copy.setAttribute(name, value);
  copy.removeAttribute('class');
  copy.removeAttribute('style');
  const paper = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  paper.setAttribute('width', '100%');
  paper.setAttribute('height', '100%');
  paper.setAttribute('fill', getComputedStyle(document.documentElement).backgroundColor);
  copy.prepend(paper);
  if (fonts !== null) {
    const style = document.createElementNS('http://www.w3.org/2000/svg', 'style');
    style.textContent = fonts;
    copy.prepend(style);
  }
  return new XMLSerializer().serializeToString(copy);
}

function dress(element: SVGElement, look: CSSStyleDeclaration, keepsFonts: boolean): void {
  for (const name of LOOK) element.style.setProperty(name, look.getPropertyValue(name));
  if (look.display === 'none') element.style.setProperty('display', 'none');
  const family = look.fontFamily;
  element.style.setProperty(
    'font-family',
    keepsFonts ? family : family.includes('Georgia') ? VOICES.serif : VOICES.sans,
  );
  element.removeAttribute('class');
}
