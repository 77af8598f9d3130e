import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { siteBelow } from '../../src/command-line/site-protocols.ts';
import { bundledText } from '../bundled.ts';
import { accessibilityFaults, fitsItsWidth, type PageSize } from './room.ts';
import { inBrowser } from './in-browser.ts';
import { openWrite, type WriteRoom } from './write-room.ts';

const rooms = inBrowser();

const open = async (id: string, size?: PageSize): Promise<WriteRoom> =>
  openWrite(rooms.browser, `${rooms.site.origin}/#/write/${id}`, size);

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
  'a new case': async ({ page }) => newCase(page, null),
  'a new case with a refused value': async ({ page }) => newCase(page, ['940', '940 mmHg is higher']),
  'a new case with a questioned value': async ({ page }) => newCase(page, ['300', '300 mmHg is higher']),
  'an unsettled case': async ({ page }) => {
    await page
      .locator('.case')
      .filter({ hasText: /not settled/i })
      .first()
      .getByRole('button')
      .click();
    await page
      .locator('.case-detail')
      .getByText(/No result yet|Not settled|Act now on/)
      .first()
      .waitFor();
  },
  'without cases': async ({ page, part }) => {
    await part('cases.yaml');
    await page.locator('.text-field').click({ position: { x: 300, y: 60 } });
    await page.keyboard.press('Control+a');
    await page.keyboard.press('Delete');
    await page.getByText('There is no case yet').first().waitFor();
  },
  'leaving what is not saved': async (here) => {
    await mistype(here, ' # mine');
    await here.page.getByText(/Not saved: protocol\.yaml/).waitFor();
    await here.page.getByRole('link', { name: 'Bedside' }).click();
    await here.page.getByRole('alertdialog').waitFor();
  },
  conflict: async (here) => {
    await mistype(here, ' # mine');
    const path = join(rooms.site.folder, 'lessons/a_curve/protocol.yaml');
    writeFileSync(path, `${readFileSync(path, 'utf8')}# theirs\n`);
    await here.save.click();
    await here.page.getByRole('dialog').waitFor();
  },
};

/** Begins a case by hand, with a systolic pressure where one is given, and waits until that is said of it. */
async function newCase(page: Page, systolic: readonly [string, string] | null): Promise<void> {
  await page.getByRole('button', { name: 'New case' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.locator('.draft-yaml').waitFor();
  if (!systolic) return;
  await dialog.getByLabel('Systolic pressure', { exact: true }).fill(systolic[0]);
  await dialog.getByText(systolic[1]).first().waitFor();
}

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
  expect(await fitsItsWidth(here.page)).toBe(true);
  expect(await accessibilityFaults(here.page)).toEqual([]);
});

test.each([1440, 390])('long names, %i pixels wide: nothing is cut off or in the way', async (width) => {
  const word = 'Kreislaufueberwachungsverordnungsentwurf';
  const long = `${word} and a good many words after it`;
  const id = 'lessons/one_threshold';
  const text = bundledText(`${id}/protocol.yaml`).replaceAll(/title: .*/g, `title: ${long}`);
  const ladder = bundledText('alder_ladder/ladder.yaml').replace('title: Call the doctor', `title: ${long}`);
  const cases = bundledText(`${id}/cases.yaml`).replaceAll(/- case: .*/g, (each) => `${each} ${long}`);
  rooms.site.serveProtocols([
    {
      kind: 'protocol',
      id: 'long',
      title: long,
      file: 'protocol.yaml',
      text,
      ladder: { file: 'ladder.yaml', text: ladder },
      cases: { file: 'cases.yaml', text: cases },
    },
  ]);
  const { page } = await open('long', { width, height: 900 });
  rooms.site.serveProtocols(null);
  await page.locator('.case').filter({ hasText: long }).first().getByRole('button').click();
  await page.locator('.case-detail .observed-table').waitFor();
  for (const tab of ['Cases', 'Rules']) {
    await page.getByRole('tab', { name: tab }).click();
    await page.locator('.side').getByText(long).first().waitFor();
    expect(await fitsItsWidth(page)).toBe(true);
    expect(await accessibilityFaults(page)).toEqual([]);
  }
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
  rooms.site.serveProtocols((await siteBelow('protocols', false)).protocols);
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
  rooms.site.serveProtocols(null);
});

test('what is printed is the whole text and its cases', async () => {
  const { page } = await open('lessons/a_score');
  await page.evaluate(`dispatchEvent(new Event('beforeprint'))`);
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.print-text').innerText()).toContain('source: [lesson]');
  expect(await page.locator('.text-field').isVisible()).toBe(false);
  expect(await page.locator('.case-name').first().isVisible()).toBe(true);
});
