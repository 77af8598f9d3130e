import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { openBrowser } from './room.ts';
import { buildSite, type BuiltSite } from './site.ts';

/** The rooms as they are now and a browser, for all tests of a file: made before the first of them, gone after the last. */
export function inBrowser(): { readonly site: BuiltSite; readonly browser: Browser } {
  let made: { readonly site: BuiltSite; readonly browser: Browser } | null = null;
  const here = (): { readonly site: BuiltSite; readonly browser: Browser } => {
    if (!made) throw new Error('the rooms are open only while a test runs');
    return made;
  };
  beforeAll(async () => {
    const [site, browser] = await Promise.all([buildSite(), openBrowser()]);
    made = { site, browser };
  }, 240_000);
  afterAll(async () => {
    await made?.browser.close();
    await made?.site.close();
  });
  return {
    get site() {
      return here().site;
    },
    get browser() {
      return here().browser;
    },
  };
}
