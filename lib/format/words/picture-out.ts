/** Under the right end of every picture. */
export const PICTURE_OUT = {
  name: 'The picture as a file',
  png: 'PNG',
  svg: 'SVG',
  failed: 'This browser does not let the page draw the picture. SVG holds the same.',
} as const;
