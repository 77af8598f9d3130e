import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { openBrowser } from '../browser/room.ts';
import { buildSite } from '../browser/site.ts';

// `npm run pictures`: a picture of each room as it is now, for the README. What is entered is invented.

interface Picture {
  readonly name: string;
  readonly address: string;
  readonly width: number;
  readonly height: number;
  /** What is written in the folder that is served, before the room is opened. */
  readonly writes?: (folder: string) => void;
  /** What is done in the room before the picture is taken. */
  readonly does: (page: Page) => Promise<void>;
}

const set: readonly (readonly [string, string])[] = [
  ['Age', '71'],
  ['Respiratory rate', '24'],
  ['Heart rate', '98'],
  ['Systolic pressure', '108'],
  ['Diastolic pressure', '54'],
  ['Temperature', '36'],
];

async function enterSet(page: Page): Promise<void> {
  await page.getByText('Not pregnant', { exact: true }).click();
  await page.getByText('Newly confused', { exact: true }).click();
  for (const [title, value] of set) {
    await page.getByLabel(title, { exact: true }).fill(value);
    await page.keyboard.press('Enter');
  }
  await page
    .getByRole('heading', { name: /Call the doctor/ })
    .first()
    .waitFor();
}

/** A teaching case, by its name. */
const taught = 'A mean too low behind a systolic that looks fine';

const pictures: readonly Picture[] = [
  {
    name: 'bedside',
    address: '#/bedside/pressure_reading',
    width: 1440,
    height: 1000,
    does: async (page) => {
      await enterSet(page);
      await page.evaluate('scrollTo(0, 0)');
    },
  },
  {
    name: 'bedside_on_a_phone',
    address: '#/bedside/pressure_reading',
    width: 390,
    height: 844,
    does: async (page) => {
      await enterSet(page);
      await page.evaluate(`document.querySelector('#outcome').scrollIntoView()`);
    },
  },
  {
    name: 'write',
    address: '#/write/pressure_reading?axes=systolic,diastolic',
    width: 1440,
    height: 1150,
    does: async (page) => {
      await page.getByRole('tab', { name: 'Map' }).click();
      await page.getByText('Arrow keys move').waitFor();
    },
  },
  {
    name: 'teach',
    address: `#/teach/pressure_reading?case=${encodeURIComponent(taught)}`,
    width: 1440,
    height: 1000,
    does: async (page) => {
      await page.getByLabel('Usual round', { exact: true }).check();
      await page.getByRole('button', { name: 'See what your ward’s rule says' }).click();
      await page.getByRole('region', { name: 'Your answer' }).waitFor();
    },
  },
  {
    name: 'review',
    address: '#/review/pressure_reading?part=map',
    width: 1440,
    height: 1120,
    writes: (served) => {
      const file = `${served}/pressure_reading/protocol.yaml`;
      const text = readFileSync(file, 'utf8');
      const changed = text.replace(
        'lowest acceptable mean pressure\n    value: 65',
        'lowest acceptable mean pressure\n    value: 60',
      );
      if (changed === text) throw new Error('the limit that the picture changes is not there');
      writeFileSync(file, changed);
    },
    does: async (page) => {
      await page.getByRole('region', { name: 'Map of what changes' }).waitFor({ timeout: 180_000 });
      await page.getByText('The example').first().waitFor();
    },
  },
];

const folder = fileURLToPath(new URL('../../editor/pictures/', import.meta.url));
const [site, browser] = await Promise.all([buildSite(), openBrowser()]);
try {
  for (const { name, address, width, height, writes, does } of pictures) {
    writes?.(site.folder);
    const page = await browser.newPage({ viewport: { width, height }, reducedMotion: 'reduce' });
    await page.goto(`${site.origin}/${address}`);
    await does(page);
    await page.screenshot({ path: `${folder}${name}.png` });
    process.stdout.write(`editor/pictures/${name}.png\n`);
    await page.close();
  }
} finally {
  await browser.close();
  await site.close();
}
