import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { bundledText } from '../bundled.ts';
import { inBrowser } from './in-browser.ts';
import {
  accessibilityFaults,
  fitsItsWidth,
  liveRegions,
  moving,
  openRoom,
  type PageSize,
  type Room,
} from './room.ts';
import { lightAt, visions } from './light.ts';

// Each state of the Bedside room: reached by keys alone, heard once, and with nothing in the way of anybody.

const rooms = inBrowser();

/** What has the focus, as a screen reader names it. */
const focused = async (page: Page): Promise<string> =>
  page.evaluate<string>(`(() => {
    const at = document.activeElement;
    return at?.getAttribute('aria-label') ?? at?.labels?.[0]?.textContent ?? at?.textContent ?? '';
  })()`);

/** Presses Tab until something has the focus. */
async function tabTo(page: Page, name: string): Promise<void> {
  for (let presses = 0; presses < 250; presses += 1) {
    if ((await focused(page)) === name) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`No Tab leads to “${name}”`);
}

const typed = (title: string, value: string) => async (page: Page) => {
  await tabTo(page, title);
  await page.keyboard.type(value);
};
const entered = (title: string, value: string) => async (page: Page) => {
  await typed(title, value)(page);
  await page.keyboard.press('Enter');
};

interface State {
  readonly size?: PageSize;
  readonly keys: (page: Page) => Promise<void>;
  /** All that is heard, in order. */
  readonly heard: readonly RegExp[];
}

const low = entered('Systolic pressure', '95');
const unsettled = /^Act now on: Look again\. It could be as high as Emergency call$/;

const states: Readonly<Record<string, State>> = {
  empty: { keys: async (page) => tabTo(page, 'Age'), heard: [] },
  typing: { keys: typed('Systolic pressure', '10'), heard: [] },
  'a refused value': {
    keys: entered('Heart rate', '940'),
    heard: [/^Not used: .*940 \/min is higher.*No result yet: complete the set/],
  },
  'a questioned value': {
    keys: async (page) => {
      await entered('Age', '58')(page);
      await page.locator('[data-testid=said]').getByText('No result yet').waitFor({ state: 'attached' });
      await entered('Systolic pressure', '42')(page);
    },
    heard: [/^No result yet/, /^Questioned: .*42 mmHg is lower.*Act now on: Emergency call/],
  },
  unsettled: { keys: low, heard: [unsettled] },
  'a dialog open': {
    keys: async (page) => {
      await low(page);
      await tabTo(page, 'Handoff');
      await page.keyboard.press('Enter');
      await page.getByRole('dialog').waitFor();
    },
    heard: [unsettled],
  },
  'at 200 %': { size: { width: 720, height: 450 }, keys: low, heard: [unsettled] },
  '390 pixels wide': { size: { width: 390, height: 844 }, keys: low, heard: [unsettled] },
};

async function expectOpenToAll({ page, heard }: Room, expected: readonly RegExp[]): Promise<void> {
  await expect.poll(async () => (await heard()).length, { timeout: 20_000 }).toBe(expected.length);
  await page.waitForTimeout(1500);
  const all = await heard();
  expect(all).toHaveLength(expected.length);
  expected.forEach((each, index) => expect(all[index]).toMatch(each));
  expect(await liveRegions(page)).toBe(1);
  expect(await fitsItsWidth(page)).toBe(true);
  expect(await accessibilityFaults(page)).toEqual([]);
}

test.each(Object.entries(states))('%s: by keys alone, heard once, open to all', async (_, state) => {
  const room = await openRoom(rooms.browser, `${rooms.site.origin}/#/bedside/pressure_reading`, state.size);
  await state.keys(room.page);
  await expectOpenToAll(room, state.heard);
});

test('a dialog is left by Escape, and the focus is where it was', async () => {
  const { page } = await openRoom(rooms.browser, `${rooms.site.origin}/#/bedside/pressure_reading`);
  await states['a dialog open']?.keys(page);
  expect(await page.evaluate(`document.activeElement.closest('[role=dialog]') !== null`)).toBe(true);
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await expect.poll(async () => focused(page)).toBe('Handoff');
});

test.each([1440, 390])(
  'long names, %i pixels wide: by keys alone, heard once, open to all',
  async (width) => {
    const word = 'Kreislaufueberwachungsverordnungsentwurf';
    const long = `${word} and a good many words after it`;
    const text = bundledText('lessons/one_threshold/protocol.yaml').replaceAll(
      /title: .*/g,
      `title: ${long}`,
    );
    const ladder = bundledText('alder_ladder/ladder.yaml').replace(
      'title: Call the doctor',
      `title: ${long}`,
    );
    rooms.site.serveProtocols([
      {
        kind: 'protocol',
        id: 'long',
        title: long,
        file: 'protocol.yaml',
        text,
        ladder: { file: 'ladder.yaml', text: ladder },
        cases: null,
      },
    ]);
    const room = await openRoom(rooms.browser, `${rooms.site.origin}/`, { width, height: 900 });
    rooms.site.serveProtocols(null);
    await entered('Systolic pressure', '88')(room.page);
    await room.page.getByRole('heading', { name: long }).first().waitFor();
    await room.page.getByLabel('Bed label').fill(word);
    await expectOpenToAll(room, [new RegExp(`^${long}$`)]);
  },
);

test('an outcome that is older than the last value says so', async () => {
  const { page, enter, outcome } = await openRoom(
    rooms.browser,
    `${rooms.site.origin}/#/bedside/pressure_reading`,
  );
  await page.evaluate(`(() => {
    const post = Worker.prototype.postMessage;
    Worker.prototype.postMessage = function (asked) { setTimeout(() => post.call(this, asked), 2000); };
  })()`);
  await enter('Systolic pressure', '78');
  await page.locator('.typing').getByText('The last value is being read').waitFor();
  expect(await outcome.textContent()).toBe('No result yet: complete the set');
  await page.getByRole('heading', { name: 'Act now on: Emergency call' }).waitFor();
  expect(await page.locator('.typing').count()).toBe(0);
});

test('a sign that the page has not been told of yet outlives whatever is drawn meanwhile', async () => {
  const { page, enter } = await openRoom(rooms.browser, `${rooms.site.origin}/#/bedside/pressure_reading`);
  const rate = page.getByLabel('Heart rate', { exact: true });
  // As a keyboard on a screen does it: first the signs stand there, then the page is told.
  const stand = `Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')
    .set.call(document.querySelector('[aria-label="Heart rate"]'), '112')`;
  await page.evaluate(stand);
  await enter('Systolic pressure', '88');
  await page.getByRole('heading', { name: 'Act now on: Call the doctor' }).waitFor();
  expect(await rate.inputValue()).toBe('112');
  await rate.focus();
  await rate.dispatchEvent('input');
  await page.keyboard.press('Enter');
  await expect.poll(async () => page.locator('.observed').textContent()).toContain('112 /min');
});

test('whoever wants no motion sees none', async () => {
  const { page } = await openRoom(rooms.browser, `${rooms.site.origin}/#/bedside/pressure_reading`);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await states['a dialog open']?.keys(page);
  expect(await moving(page)).toEqual([]);
});

test.each(visions)('neighbouring levels are told apart: %s', async (type) => {
  const { page, enter } = await openRoom(
    rooms.browser,
    `${rooms.site.origin}/#/bedside/lessons/one_threshold`,
  );
  await enter('Systolic pressure', '88');
  await page.getByRole('heading', { name: 'Call the doctor', exact: true }).waitFor();
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setEmulatedVisionDeficiency', { type });
  const lights: number[] = [];
  for (const shade of [0, 1, 2, 3, 4]) {
    await page.evaluate(`document.querySelector('.level').dataset.shade = '${shade}'`);
    lights.push(await lightAt(page, '.level-head'));
  }
  const contrasts = lights.slice(1).map((light, index) => ((lights[index] ?? 0) + 0.05) / (light + 0.05));
  for (const contrast of contrasts) expect(contrast).toBeGreaterThan(1.3);
  // Colour only adds: each rung has its words, and the one that is reached says so.
  const rungs = await page.locator('.rung').allInnerTexts();
  expect(rungs.every((words) => words.trim() !== '')).toBe(true);
  expect(rungs.filter((words) => /here/.test(words))).toHaveLength(1);
});

test.each([1, 6, 20])(
  'no number is lost, however fast it is typed: a machine %i times slower',
  async (rate) => {
    const { page } = await openRoom(rooms.browser, `${rooms.site.origin}/#/bedside/pressure_reading`);
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate });
    await page.getByLabel('Age', { exact: true }).focus();
    const keys = [
      '71',
      'Enter',
      '1',
      'Enter',
      '2',
      'Enter',
      '24',
      'Enter',
      '98',
      'Enter',
      '108/',
      '54',
      'Enter',
    ];
    const presses = keys.flatMap((each) => (each === 'Enter' ? [each] : [...each]));
    // All at once: none waits until the one before has been answered.
    await Promise.all([...presses, '3', '6', 'Enter'].map(async (key) => page.keyboard.press(key)));
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    const values = await Promise.all(
      ['Age', 'Respiratory rate', 'Heart rate', 'Systolic pressure', 'Diastolic pressure', 'Temperature'].map(
        async (title) => page.getByLabel(title, { exact: true }).inputValue(),
      ),
    );
    expect(values).toEqual(['71', '24', '98', '108', '54', '36']);
    await expect
      .poll(async () => page.locator('.observed').textContent(), { timeout: 20_000 })
      .toMatch(/newly confused.*24 \/min.*98 \/min.*108 mmHg.*54 mmHg.*36 °C/i);
  },
);
