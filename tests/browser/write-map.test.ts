import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { caution } from '../../src/index.ts';
import { askable } from '../bundled.ts';
import { inBrowser } from './in-browser.ts';
import { openWrite } from './write-room.ts';

// The map of the Write room: what it is drawn of, as a picture, and as the beginning of a case.

const rooms = inBrowser();

async function openMap(): Promise<{ page: Page; map: Locator; noise: readonly string[] }> {
  const { page, noise } = await openWrite(rooms.browser, `${rooms.site.origin}/#/write/pressure_reading`);
  await page.getByRole('tab', { name: 'Map' }).click();
  const map = page.getByRole('region', { name: 'Map', exact: true });
  await map.locator('.map-plot svg').waitFor();
  return { page, map, noise };
}

/** All words of a picture, whatever lines they stand on. */
const wordsOf = (svg: string): string =>
  [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)]
    .map(([, words = '']) => words.replaceAll('&#39;', "'"))
    .join(' ');

test('the axes and what is held are chosen, and the picture that is saved is of just that', async () => {
  const { page, map, noise } = await openMap();
  const axes = (across: string, up: string): Locator =>
    map.getByRole('application', { name: `${across} across, ${up} up`, exact: true });
  await axes('systolic pressure', 'diastolic pressure').waitFor();
  await map.getByLabel('Across', { exact: true }).selectOption({ label: 'Heart rate' });
  await axes('heart rate', 'diastolic pressure').waitFor();
  await map.getByLabel('Up', { exact: true }).selectOption({ label: 'Heart rate' });
  await axes('diastolic pressure', 'heart rate').waitFor();
  expect(await page.evaluate('location.hash')).toContain('axes=diastolic');
  await map.getByText('Everything else is held').click();
  const held = map.locator('.map-held');
  expect(await held.textContent()).toContain('systolic pressure: 120 mmHg');
  expect(await map.locator('output').textContent()).not.toContain('Call the doctor');
  await map.getByLabel('Systolic pressure', { exact: true }).fill('88');
  await held.getByText('systolic pressure: 88 mmHg').waitFor();
  await expect.poll(async () => map.locator('output').textContent()).toContain('Call the doctor');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    map.getByRole('button', { name: 'Save as a picture (SVG)' }).click(),
  ]);
  expect(file.suggestedFilename()).toBe('pressure_reading-diastolic-heart_rate-at_least.svg');
  const words = wordsOf(readFileSync(await file.path(), 'utf8'));
  const { title, edition, digest } = askable('pressure_reading').protocol;
  expect(words).toContain(title);
  expect(words).toContain(
    `Edition ${edition}, digest ${digest.slice('sha256:'.length, 'sha256:'.length + 12)}.`,
  );
  expect(words).toContain('diastolic pressure (mmHg)');
  expect(words).toContain('heart rate (/min)');
  const legend = await map.locator('.map-legend li').allInnerTexts();
  expect(legend.length).toBeGreaterThan(2);
  for (const each of legend) expect(words).toContain(each.trim());
  expect(words).toContain('systolic pressure: 88 mmHg');
  expect(words).toContain(caution);
  await map.getByLabel('Systolic pressure', { exact: true }).fill('');
  await held.getByText('systolic pressure: not taken').waitFor();
  expect(noise).toEqual([]);
});

test('a point of the map becomes a case, which then stands on the map', async () => {
  const { page, map } = await openMap();
  await map.getByRole('application').focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowUp');
  await map.getByText(/^systolic pressure 121 mmHg, diastolic pressure 90 mmHg: /).waitFor();
  await map
    .getByRole('button', { name: 'Make a case of systolic pressure 121 mmHg and diastolic pressure 90 mmHg' })
    .click();
  const dialog = page.getByRole('dialog');
  await dialog
    .locator('.draft-yaml')
    .getByText(/systolic: 121.*diastolic: 90|diastolic: 90.*systolic: 121/)
    .waitFor();
  await dialog.getByLabel(/The story of a made-up patient/).fill('A made-up point');
  await dialog.getByText('"A made-up point"').waitFor();
  await dialog.getByRole('button', { name: 'This is right' }).click();
  await expect
    .poll(async () => map.locator('output').textContent())
    .toContain('Case, passes: A made-up point.');
  await page.getByRole('tab', { name: 'Cases' }).click();
  await page.getByText(/all \d+ pass/).waitFor();
});
