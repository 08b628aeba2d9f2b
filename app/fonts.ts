import localFont from 'next/font/local';

// Only the sans is preloaded: it sets everything but sentences and names. Until they are there, the faces of stand-ins.css are.
// The extended files hold the letters of more languages and are fetched only where one of them is on the page.
// The loader reads this file without running it, so everything in it is spelt out.
const sourceSans = localFont({
  src: '../node_modules/@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2',
  weight: '200 900',
  style: 'normal',
  display: 'swap',
  preload: true,
  adjustFontFallback: false,
  variable: '--font-sans',
});

const sourceSansExtended = localFont({
  src: '../node_modules/@fontsource-variable/source-sans-3/files/source-sans-3-latin-ext-wght-normal.woff2',
  weight: '200 900',
  style: 'normal',
  display: 'swap',
  preload: false,
  adjustFontFallback: false,
  variable: '--font-sans-ext',
  declarations: [
    {
      prop: 'unicode-range',
      value:
        'U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+0304,U+0308,U+0329,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+2020,U+20A0-20AB,U+20AD-20C0,U+2113,U+2C60-2C7F,U+A720-A7FF',
    },
  ],
});

const sourceSerif = localFont({
  src: [
    {
      path: '../node_modules/@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2',
      weight: '200 900',
      style: 'normal',
    },
    {
      path: '../node_modules/@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-italic.woff2',
      weight: '200 900',
      style: 'italic',
    },
  ],
  display: 'swap',
  preload: false,
  adjustFontFallback: false,
  variable: '--font-serif',
});

const sourceSerifExtended = localFont({
  src: [
    {
      path: '../node_modules/@fontsource-variable/source-serif-4/files/source-serif-4-latin-ext-wght-normal.woff2',
      weight: '200 900',
      style: 'normal',
    },
    {
      path: '../node_modules/@fontsource-variable/source-serif-4/files/source-serif-4-latin-ext-wght-italic.woff2',
      weight: '200 900',
      style: 'italic',
    },
  ],
  display: 'swap',
  preload: false,
  adjustFontFallback: false,
  variable: '--font-serif-ext',
  declarations: [
    {
      prop: 'unicode-range',
      value:
        'U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+0304,U+0308,U+0329,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+2020,U+20A0-20AB,U+20AD-20C0,U+2113,U+2C60-2C7F,U+A720-A7FF',
    },
  ],
});

/** Class names that make the typefaces known to the tokens. */
export const typefaces = [sourceSans, sourceSansExtended, sourceSerif, sourceSerifExtended]
  .map((face) => face.variable)
  .join(' ');
