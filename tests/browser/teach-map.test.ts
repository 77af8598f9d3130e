import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { lightAt, visions } from './light.ts';
import {
  accessibilityFaults,
  fitsItsWidth,
  heardOn,
  listen,
  liveRegions,
  moving,
  openPage,
  openRoom,
  type OpenedPage,
} from './room.ts';
import { inBrowser } from './in-browser.ts';

// The answer of a drill as it is heard and seen, and the map in it and in the handout.

const rooms = inBrowser();

const patient = { timeout: 60_000 };
const newly = 'Each number nearly fine, and newly confused';

async function answered(id: string, name: string, width = 1440): Promise<OpenedPage> {
  const opened = await openPage(
    rooms.browser,
    `${rooms.site.origin}/#/teach/${id}?case=${encodeURIComponent(name)}`,
    {
      width,
      height: 900,
    },
  );
  const { page } = opened;
  await page.getByLabel('Look again', { exact: true }).waitFor();
  await listen(page);
  await page.getByLabel('Look again', { exact: true }).check();
  await page.getByRole('button', { name: 'See what your ward’s rule says' }).click();
  await page.getByRole('region', { name: 'Your answer' }).waitFor();
  return opened;
}

async function mapOf(page: Page): Promise<Locator> {
  const map = page.getByRole('region', { name: 'On the map' });
  await map.scrollIntoViewIfNeeded();
  await map.locator('.map-plot svg').waitFor({ timeout: 60_000 });
  return map;
}

test('an answer is heard once, and the map that is drawn after it says nothing by itself', async () => {
  const { page, noise } = await answered('pressure_reading', newly);
  const map = await mapOf(page);
  await page.waitForTimeout(1000);
  expect(await heardOn(page)).toEqual([
    'Called too little. Your ward’s rule says: Call the doctor. You said: Look again.',
  ]);
  expect(await liveRegions(page)).toBe(1);
  expect(await map.locator('output').getAttribute('aria-live')).toBe('off');
  expect(noise).toEqual([]);
});

test('the case is marked on the map where its level is said; keys go on from there', async () => {
  const { page } = await answered('pressure_reading', newly);
  const map = await mapOf(page);
  expect(await map.locator('output').textContent()).toMatch(
    /^systolic pressure 108 mmHg, diastolic pressure 54 mmHg: Call the doctor, settled/,
  );
  expect(await map.locator('.map-legend').textContent()).toContain('This case');
  expect(await map.locator('.map-plot').textContent()).toContain('This case');
  expect(await map.locator('.map-held').textContent()).toContain('consciousness: newly confused');
  expect(await map.locator('.map-cross').count()).toBe(0);
  await map.getByRole('application').focus();
  await page.keyboard.press('ArrowLeft');
  expect(await map.locator('.map-cross').count()).toBe(1);
  expect(await map.locator('output').textContent()).toMatch(/^systolic pressure 107 mmHg/);
  expect(await map.locator('output').getAttribute('aria-live')).toBe('polite');
  expect(await accessibilityFaults(page)).toEqual([]);
});

test('of a series it is said that the map is of the last set alone', async () => {
  const { page } = await answered('pressure_reading', 'Slow rate, systolic up by 20, gap wider by 15');
  const map = await mapOf(page);
  expect(await map.textContent()).toContain('The map is drawn of its last set alone');
});

test('where there is no map it is said why', async () => {
  const { page } = await openPage(rooms.browser, `${rooms.site.origin}/#/teach/lessons/one_threshold`);
  await page.getByRole('tab', { name: 'Handout' }).click();
  const map = page.locator('.handout-map');
  await expect.poll(async () => map.textContent(), patient).toContain('reads fewer than two numbers');
  await page.goto(`${rooms.site.origin}/#/teach/alder_wing`);
  await page.getByRole('tab', { name: 'Handout' }).click();
  await expect.poll(async () => map.textContent(), patient).toContain('A map is drawn of one protocol');
});

test.each([1440, 1024, 390])('every word on the map is 11 pixels high or more, %i wide', async (width) => {
  const { page } = await answered('pressure_reading', newly, width);
  await mapOf(page);
  await page.waitForTimeout(300);
  await expectReadable(page, '.answer');
  await page.getByRole('tab', { name: 'Handout' }).click();
  await page.locator('.still-map .map-plot svg').waitFor(patient);
  await page.waitForTimeout(300);
  await expectReadable(page, '.handout');
  expect(await fitsItsWidth(page)).toBe(true);
});

/** Every word of the map that stands in some part of the page is large enough. */
async function expectReadable(page: Page, part: string): Promise<void> {
  const sizes = await page.evaluate<number[]>(`(() => {
    const svg = document.querySelector('${part} .map-plot svg');
    const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
    return [...svg.querySelectorAll('text')].map((each) => parseFloat(getComputedStyle(each).fontSize) * scale);
  })()`);
  expect(sizes.length).toBeGreaterThan(8);
  for (const size of sizes) expect(size).toBeGreaterThanOrEqual(11);
}

test('whoever wants no motion sees none', async () => {
  const { page } = await answered('pressure_reading', newly);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await mapOf(page);
  expect(await moving(page)).toEqual([]);
});

test.each(visions)(
  'neighbouring levels are told apart, in the answer and in the handout: %s',
  async (type) => {
    const { page } = await answered('pressure_reading', newly);
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setEmulatedVisionDeficiency', { type });
    const lights: number[] = [];
    for (const shade of [0, 1, 2, 3, 4]) {
      await page.evaluate(`document.querySelector('.level').dataset.shade = '${shade}'`);
      lights.push(await lightAt(page, page.locator('.level-head').first()));
    }
    expectApart(lights);
    await page.getByRole('tab', { name: 'Handout' }).click();
    const settled = page.locator('.still-map .map-legend li').filter({ hasText: /(?<!not) settled$/ });
    await settled.first().waitFor({ timeout: 60_000 });
    const greys: number[] = [];
    for (const row of await settled.all()) greys.push(await lightAt(page, row.locator('svg rect').first()));
    expect(greys).toHaveLength(5);
    expectApart(greys);
  },
);

/** From light to dark, each clearly darker than the one before. */
function expectApart(lights: readonly number[]): void {
  lights.slice(1).forEach((light, index) => {
    expect(((lights[index] ?? 0) + 0.05) / (light + 0.05)).toBeGreaterThan(1.3);
  });
}

test('the handout has the map in greys, with its legend in words, and no part of it that only a screen can use', async () => {
  const { page } = await openPage(rooms.browser, `${rooms.site.origin}/#/teach/pressure_reading`, {
    width: 794,
    height: 1123,
  });
  await page.getByRole('tab', { name: 'Handout' }).click();
  const map = page.locator('.handout-map');
  await map.locator('.map-plot svg').waitFor({ timeout: 60_000 });
  await page.emulateMedia({ media: 'print' });
  const fills = await page.evaluate<string[]>(
    `[...document.querySelectorAll('.handout-map .map-plot rect:not(clipPath rect)')].map((each) => getComputedStyle(each).fill)`,
  );
  expect(fills.length).toBeGreaterThan(10);
  const colours = fills.filter((fill) => fill.startsWith('rgb'));
  for (const fill of colours) expect(fill).toMatch(/^rgba?\((\d+), \1, \1\b/);
  const text = await map.innerText();
  for (const words of [
    'Usual round, settled',
    'Emergency call, settled',
    'At least: Look again, not settled',
    'Held: ',
  ])
    expect(text).toContain(words);
  expect(await map.locator('button, select, input, summary').count()).toBe(0);
  const box = await map.locator('.map-plot svg').boundingBox();
  expect(box?.width).toBeGreaterThan(500);
  expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(794);
});

test('the Bedside room loads neither what draws maps nor the editor', async () => {
  const marks = ['map-picture', 'monaco-editor'];
  const folder = join(rooms.site.built, 'assets');
  const holding = new Map(
    readdirSync(folder)
      .filter((name) => name.endsWith('.js'))
      .map((name) => {
        const text = readFileSync(join(folder, name), 'utf8');
        return [name, marks.filter((mark) => text.includes(mark))];
      }),
  );
  for (const mark of marks) expect([...holding.values()].flat()).toContain(mark);
  const { page, requests, enter } = await openRoom(
    rooms.browser,
    `${rooms.site.origin}/#/bedside/pressure_reading`,
  );
  await enter('Systolic pressure', '95');
  await page.getByRole('heading', { name: 'Look again' }).first().waitFor();
  const loaded = requests.map((url) => basename(new URL(url).pathname)).filter((name) => holding.has(name));
  expect(loaded.length).toBeGreaterThan(1);
  expect(loaded.filter((name) => (holding.get(name) ?? []).length > 0)).toEqual([]);
});
