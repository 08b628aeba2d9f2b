import { type Browser, type BrowserContextOptions, chromium, type Page, type Request } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest';

const ARGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A page and everything on it that went wrong. */
interface Visit {
  readonly page: Page;
  readonly troubles: string[];
}

/**
 * The router lets go of the stream of a navigation when it has read it, which the browser calls aborted. That all of it came is seen on
 * the page: what did not come leaves its panel waiting.
 */
function isReadToItsEnd(request: Request): boolean {
  return request.url().includes('_rsc=') && request.failure()?.errorText === 'net::ERR_ABORTED';
}

/**
 * Opens pages of the running program, or of another by its full address, for the tests of a file. After each test its pages are closed, and anything on the console, any
 * error of a page and any failed request fails it.
 */
export function visitor(): (path: string, options?: BrowserContextOptions) => Promise<Page> {
  let browser: Browser;
  const visits: Visit[] = [];

  beforeAll(async () => {
    const isRoot = process.getuid?.() === 0;
    browser = await chromium.launch({
      executablePath: inject('program').browser,
      args: isRoot ? ['--no-sandbox', ...ARGS] : ARGS,
    });
  });

  afterEach(async () => {
    const troubles = visits.flatMap((visit) => visit.troubles);
    await Promise.all(visits.splice(0).map(({ page }) => page.context().close()));
    expect(troubles).toEqual([]);
  });

  afterAll(() => browser.close());

  return async (path, options = {}) => {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-GB', ...options });
    const page = await context.newPage();
    page.setDefaultTimeout(10_000);
    const troubles: string[] = [];
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) troubles.push(`console: ${message.text()}`);
    });
    page.on('pageerror', (error) => troubles.push(`page: ${error.message}`));
    page.on('requestfailed', (request) => {
      if (!isReadToItsEnd(request)) troubles.push(`request: ${request.url()} ${request.failure()?.errorText}`);
    });
    page.on('response', (response) => {
      if (response.status() >= 400) troubles.push(`response: ${response.status()} ${response.url()}`);
    });
    visits.push({ page, troubles });
    await page.goto(new URL(path, inject('program').address).href);
    await page.waitForLoadState('networkidle');
    return page;
  };
}
