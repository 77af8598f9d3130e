import { chromium, type Browser, type Page } from 'playwright-core';
import { findBrowser } from '../../../.config/browser.mjs';
import { siteBelow } from '../../../src/command-line/site-protocols.ts';
import { buildSite, type BuiltSite } from '../../browser/site.ts';
import { bundledText } from '../../bundled.ts';
import type { Figure } from '../figure.ts';
import { typed, watch, within, type Taken } from './keys.ts';
import { largeProtocol } from './large-protocol.ts';

/** How fresh the rooms are in headless Chromium. */
export async function measureRooms(): Promise<readonly Figure[]> {
  const executablePath = findBrowser();
  if (executablePath === null)
    throw new Error('There is no Chromium: install one, or name it in CHROME_PATH.');
  const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const [site, browser] = await Promise.all([
    buildSite(),
    chromium.launch({ executablePath, args: ['--disable-gpu', ...sandbox] }),
  ]);
  try {
    return [
      await opening(browser, `${site.origin}/#/bedside/pressure_reading`, 'pressure_reading'),
      await opening(browser, `${site.origin}/#/bedside/alder_wing`, 'Alder Wing, in force'),
      ...(await writing(browser, site)),
      ...(await drawing(browser, site)),
      ...(await proving(browser, site)),
      ...(await writingMuch(browser, site)),
    ];
  } finally {
    await browser.close();
    await site.close();
  }
}

/** Opens the Bedside room anew, the median of five times: until its first field can be typed into. */
async function opening(browser: Browser, address: string, name: string): Promise<Figure> {
  const times: number[] = [];
  for (let round = 0; round < 5; round += 1) {
    const page = await browser.newPage();
    await page.goto(address, { waitUntil: 'commit' });
    const first = Date.now();
    await page.locator('.entry input, form input').first().waitFor();
    times.push(Date.now() - first);
    await page.close();
  }
  return timed(`Bedside, ${name}: from the first byte to a field`, times, 50, 1000);
}

async function openWrite(browser: Browser, { origin }: BuiltSite, id: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.addInitScript(watch);
  await page.goto(`${origin}/#/write/${id}`);
  await page.locator('.case').first().waitFor({ timeout: 120_000 });
  return page;
}

/** Keys in words, in a number and in the name of a level, in the largest bundled protocol. */
async function writing(browser: Browser, site: BuiltSite): Promise<readonly Figure[]> {
  const page = await openWrite(browser, site, 'reading_technique');
  const words = await typed(page, 'says: ', 'Now and then ');
  const numbers = await typed(page, 'at_least: ', '1<1<1<1<1<1<');
  const mistakes = await typed(page, 'level: ', 'xyz<<<');
  await page.close();
  const busy = [words, numbers, mistakes].flatMap((each) => [0, ...each.busy]);
  return [
    timed('Write: all fresh after a key in words', words.check, 95, 50),
    timed('Write: all fresh after a key in a number', numbers.check, 95, 50),
    timed('Write: all fresh after a mistake', mistakes.check, 95, 50),
    timed('Write: a key keeps the page busy', busy, 95, 50),
  ];
}

async function drawing(browser: Browser, site: BuiltSite): Promise<readonly Figure[]> {
  const page = await openWrite(browser, site, 'pressure_reading');
  await page.getByRole('tab', { name: 'Map' }).click();
  await page.locator('.map-plot svg').waitFor();
  const { map } = await typed(page, 'says: ', 'Now and then ');
  await page.close();
  return [timed('Write: the map fresh after a key', map, 95, 100)];
}

/** What must always hold, asked again after each key in a number: of a lesson, and of the largest protocols once they state some. */
async function proving(browser: Browser, site: BuiltSite): Promise<readonly Figure[]> {
  const figures: Figure[] = [];
  for (const id of ['lessons/a_score', 'pressure_reading', 'reading_technique']) {
    if (!bundledText(`${id}/protocol.yaml`).includes('must_always:')) continue;
    const page = await openWrite(browser, site, id);
    const { requirements } = await typed(page, 'at_most: ', '1<1<1<');
    await page.close();
    figures.push(timed(`Write, ${id}: proven again after a key`, requirements, 95, 1000));
  }
  return figures;
}

/** 500 rules and 2,000 cases: what is found is told, nothing is aimed at. */
async function writingMuch(browser: Browser, site: BuiltSite): Promise<readonly Figure[]> {
  const bundled = (await siteBelow('protocols', false)).protocols;
  const lent = bundled.find(({ id }) => id === 'pressure_reading');
  if (!lent) throw new Error('there is no protocol to borrow a ladder from');
  const made = largeProtocol(500, 2000);
  const file = 'large/protocol.yaml';
  const cases = { file: 'large/cases.yaml', text: made.cases };
  site.serveProtocols([{ ...lent, id: 'large', title: 'Large', file, text: made.protocol, cases }]);
  const page = await openWrite(browser, site, 'large');
  const { check, busy }: Taken = await typed(page, 'Words of rule 250', ' and so on');
  await page.close();
  return [
    timed('Write, 500 rules and 2,000 cases: all fresh after a key', check, 50, null),
    timed('Write, 500 rules and 2,000 cases: a key keeps the page busy', [0, ...busy], 95, null),
  ];
}

/** The time within which so many of a hundred stay, beside the most that is aimed at. */
function timed(what: string, times: readonly number[], hundredths: number, most: number | null): Figure {
  const found = within(times, hundredths);
  const share = hundredths === 50 ? 'median' : `${hundredths} in 100 within`;
  return {
    what,
    found: `${share} ${found.toFixed(0)} ms`,
    aim: most === null ? '' : `${most} ms`,
    reached: most === null ? null : found <= most,
  };
}
