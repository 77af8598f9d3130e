import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { siteBelow } from '../../src/command-line/site-protocols.ts';
import { accessibilityFaults, openBrowser } from './room.ts';
import { buildSite, type BuiltSite } from './site.ts';
import { openWrite, type WriteRoom } from './write-room.ts';

let site: BuiltSite;
let browser: Browser;

beforeAll(async () => {
  [site, browser] = await Promise.all([buildSite(), openBrowser()]);
}, 240_000);

afterAll(async () => {
  await browser.close();
  await site.close();
});

const open = async (id: string, size?: { width: number; height: number }): Promise<WriteRoom> =>
  openWrite(browser, `${site.origin}/#/write/${id}`, size);

/** Types something that is a mistake at the end of the edition's line. */
async function mistype({ page, caretBehind }: WriteRoom, words = 'x'): Promise<void> {
  await caretBehind('edition: 1');
  await page.keyboard.type(words);
}

const states: Readonly<Record<string, (here: WriteRoom) => Promise<unknown>>> = {
  'as it opens': () => Promise.resolve(),
  typing: async (here) => mistype(here, ' # words'),
  problems: async (here) => {
    await mistype(here);
    await here.page.locator('.problem').first().waitFor();
  },
  'a case chosen': async ({ page }) => {
    await page.locator('.case-go').nth(1).click();
    await page.locator('.case-detail .observed-table').waitFor();
  },
  rules: async ({ page }) => page.getByRole('tab', { name: 'Rules' }).click(),
  map: async ({ page }) => {
    await page.getByRole('tab', { name: 'Map' }).click();
    await page.locator('.map-plot svg').waitFor();
  },
  'a new protocol': async ({ page }) => page.getByRole('button', { name: 'New protocol' }).click(),
  'a new case': async ({ page }) => {
    await page.getByRole('button', { name: 'New case' }).click();
    await page.locator('.draft-yaml').waitFor();
  },
  conflict: async (here) => {
    await mistype(here, ' # mine');
    const path = join(site.folder, 'lessons/a_curve/protocol.yaml');
    writeFileSync(path, `${readFileSync(path, 'utf8')}# theirs\n`);
    await here.save.click();
    await here.page.getByRole('dialog').waitFor();
  },
};

test.each(Object.keys(states))('nothing stands in the way of anybody: %s', async (name) => {
  const here = await open('lessons/a_curve');
  await states[name]?.(here);
  await here.page.waitForTimeout(300);
  const faults = await accessibilityFaults(here.page);
  expect(faults).toEqual([]);
});

test.each([
  ['390 pixels wide', 390, 844],
  ['at 200 %', 720, 450],
  ['1024 pixels wide', 1024, 768],
])('nothing is cut off or in the way: %s', async (_, width, height) => {
  const here = await open('pressure_reading', { width, height });
  await here.page.locator('.case-go').nth(3).click();
  await here.page.locator('.case-detail .observed-table').waitFor();
  expect(await here.page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
  expect(await accessibilityFaults(here.page)).toEqual([]);
});

test('by keyboard alone: into the text and out of it, to a problem, to a case', async () => {
  const { page, noise } = await open('lessons/two_signs_together');
  await page.getByRole('button', { name: 'cases.yaml' }).focus();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Control+End');
  await page.keyboard.type('x: 1');
  await page.locator('.problem').first().waitFor();
  await page.keyboard.press('Escape');
  await page.getByText('The next Tab leaves the text.').first().waitFor();
  await page.keyboard.press('Tab');
  const focused = async (): Promise<string> => page.evaluate(`document.activeElement.className`);
  for (let step = 0; step < 4 && !(await focused()).includes('problem-go'); step += 1)
    await page.keyboard.press('Tab');
  expect(await focused()).toContain('problem-go');
  await page.keyboard.press('Enter');
  await expect.poll(focused).toContain('inputarea');
  expect(noise).toEqual([]);
});

test('a site of files alone says that it cannot save, and gives the text as a download', async () => {
  site.serveProtocols((await siteBelow('protocols', false)).protocols);
  const here = await open('lessons/a_score');
  await mistype(here, ' # mine');
  const button = here.page.getByRole('button', { name: 'Download protocol.yaml' });
  await here.page.getByText(/Nothing can be saved where these rooms came from/).waitFor();
  const [file] = await Promise.all([here.page.waitForEvent('download'), button.click()]);
  expect(file.suggestedFilename()).toBe('protocol.yaml');
  const stream = await file.createReadStream();
  let text = '';
  for await (const chunk of stream) text += String(chunk);
  expect(text).toContain('edition: 1 # mine');
  site.serveProtocols(null);
});

test('what is printed is the whole text and its cases', async () => {
  const { page } = await open('lessons/a_score');
  await page.evaluate(`dispatchEvent(new Event('beforeprint'))`);
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.print-text').innerText()).toContain('source: [lesson]');
  expect(await page.locator('.text-field').isVisible()).toBe(false);
  expect(await page.locator('.case-name').first().isVisible()).toBe(true);
});
