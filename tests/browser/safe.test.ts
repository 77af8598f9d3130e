import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { draftSaid, emptyBackground, handoffText, protocolReader, readSet } from '../../src/index.ts';
import { siteBelow } from '../../src/command-line/site-protocols.ts';
import { askable, bundledText } from '../bundled.ts';
import { ask } from '../command-line/ask.ts';
import { terminalAt } from '../command-line/terminal-at.ts';
import { inBrowser } from './in-browser.ts';
import { accessibilityFaults, fitsItsWidth, openRoom, type Room, type PageSize } from './room.ts';

const rooms = inBrowser();

const room = async (size?: PageSize): Promise<Room> =>
  openRoom(rooms.browser, `${rooms.site.origin}/#/bedside/pressure_reading`, size);

const fieldsWithText = `[...document.querySelectorAll('input:not([type=radio]):not([type=checkbox]), textarea')]
  .filter((each) => each.value !== '').map((each) => each.value)`;

async function fillIn({ page, enter }: Room): Promise<void> {
  await enter('Age', '58');
  await page.getByText('Not pregnant', { exact: true }).click();
  await enter('Systolic pressure', '118');
  await enter('Heart rate', '91');
  await page.getByRole('group', { name: 'Faults of technique' }).getByText('Talking').click();
  await page.getByLabel('Bed label').fill('4-B2');
}

test('New patient clears everything, the fields and the outcome', async () => {
  const { page, outcome, ...rest } = await room();
  await fillIn({ page, outcome, ...rest });
  await page.getByText('Act now on: Look again').first().waitFor();
  await page.getByRole('button', { name: 'New patient' }).click();
  await page.getByText('Nothing has been entered yet').waitFor();
  expect(await page.evaluate(fieldsWithText)).toEqual([]);
  expect(
    await page
      .locator('.choice[data-selected]:not(.choice-unknown), .no-value-button[data-selected]')
      .count(),
  ).toBe(0);
  expect(await outcome.textContent()).toBe('No result yet: complete the set');
  expect(await page.locator('body').textContent()).not.toContain('118');
});

test('a room that nobody touches asks, and then clears itself; a touch keeps it', async () => {
  const context = await rooms.browser.newContext();
  const page = await context.newPage();
  await page.clock.install();
  await page.goto(`${rooms.site.origin}/#/bedside/pressure_reading`);
  await page.locator('#outcome').waitFor();
  expect(await page.locator('.nothing-kept').textContent()).toContain('10 minutes');
  await page.getByLabel('Systolic pressure', { exact: true }).fill('118');
  await page.keyboard.press('Enter');
  await page.clock.fastForward('09:30');
  await page.getByRole('alertdialog').waitFor();
  await page.keyboard.press('Shift');
  await page.clock.fastForward('00:02');
  await page.getByRole('alertdialog').waitFor({ state: 'detached' });
  expect(await page.getByLabel('Systolic pressure', { exact: true }).inputValue()).toBe('118');
  await page.clock.fastForward('10:01');
  await page.getByText('Nothing has been entered yet').waitFor();
  expect(await page.evaluate(fieldsWithText)).toEqual([]);
});

test('the handoff looks unfinished until it is filled in, is the library’s text, and prints alone', async () => {
  const { page, enter } = await room();
  await page.getByLabel('Set taken at').fill('2026-03-04T20:10');
  await enter('Systolic pressure', '88');
  await page.getByRole('button', { name: 'Handoff' }).click();
  const text = page.getByRole('region', { name: 'The text of the handoff' });
  await text.getByText('systolic pressure: 88 mmHg').waitFor();
  expect(await text.locator('.blank').count()).toBe(6);
  expect(await text.locator('.unfinished').textContent()).toBe(
    'UNFINISHED: 6 blanks are still to be filled in.',
  );
  const shown = await text.locator('p').allTextContents();
  const offset = await page.evaluate<string>(`document.querySelector('.sheet-of').textContent.slice(-6)`);
  const set = `{ "patient": {}, "at": "2026-03-04T20:10:00${offset}", "sets": [{ "at": "2026-03-04T20:10:00${offset}", "systolic": 88 }] }`;
  const { series } = readSet('set.json', set, askable('pressure_reading'));
  const [reading] = series ? protocolReader(askable('pressure_reading')).read(series) : [];
  if (!reading) throw new Error('the set cannot be read');
  expect(shown).toEqual(
    handoffText(reading.sheet, reading.facts, emptyBackground, draftSaid).trimEnd().split('\n'),
  );
  for (const box of await page.locator('.handoff-blanks textarea').all()) await box.fill('known');
  expect(await text.locator('.blank').count()).toBe(0);
  expect(await text.textContent()).not.toContain('UNFINISHED');
  await page.emulateMedia({ media: 'print' });
  expect(await text.isVisible()).toBe(true);
  expect(await page.locator('#rooms').isVisible()).toBe(false);
  expect(await page.locator('.handoff-blanks').isVisible()).toBe(false);
});

test('the handoff is copied as it is shown, and what the browser does not let the page do is said', async () => {
  const { page, enter } = await room();
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await enter('Systolic pressure', '88');
  await page.getByRole('button', { name: 'Handoff' }).click();
  const text = page.getByRole('region', { name: 'The text of the handoff' });
  await text.getByText('systolic pressure: 88 mmHg').waitFor();
  await page.getByLabel('Allergies').fill('penicillin');
  await page.getByRole('button', { name: 'Copy' }).click();
  await page.getByText('Copied. It now also stands in the clipboard').waitFor();
  const copied = await page.evaluate<string>('navigator.clipboard.readText()');
  expect(copied).toContain('Allergies: penicillin');
  expect(copied.trimEnd().split(/\r?\n/)).toEqual(await text.locator('p').allTextContents());
  await page.evaluate(`navigator.clipboard.writeText = () => Promise.reject(new Error('not allowed'))`);
  await page.getByRole('button', { name: 'Copy' }).click();
  await page.getByText('The browser does not let this page copy').waitFor();
});

test('an overdue review is said on the screen, in the handoff and on paper, as the command line says it', async () => {
  const late = '2031-01-01T00:00:00Z';
  rooms.site.serveProtocols((await siteBelow('protocols', true, terminalAt(late))).protocols);
  const { page, enter } = await openRoom(rooms.browser, `${rooms.site.origin}/#/bedside/alder_wing`);
  rooms.site.serveProtocols(null);
  const overdue = /The review of this policy was due by 2027-09-30 and is overdue/;
  const said = page.getByRole('complementary', { name: 'About this policy' });
  expect(await said.textContent()).toMatch(overdue);
  await page.getByLabel('Set taken at').fill('2026-03-04T20:10');
  await enter('Systolic pressure', '88');
  await page.getByRole('heading', { name: /^Act now on: / }).waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await said.isVisible()).toBe(true);
  await page.emulateMedia({ media: 'screen' });
  await page.getByRole('button', { name: 'Handoff' }).click();
  const text = page.getByRole('region', { name: 'The text of the handoff' });
  await text.getByText('systolic pressure: 88 mmHg').waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await text.isVisible()).toBe(true);
  const shown = await text.locator('p').allTextContents();
  expect(shown[0]).toMatch(overdue);
  const offset = await page.evaluate<string>(`document.querySelector('.sheet-of').textContent.slice(-6)`);
  const set = `{ "at": "2026-03-04T20:10:00${offset}", "sets": [{ "at": "2026-03-04T20:10:00${offset}", "systolic": 88 }] }`;
  const { out } = await ask(['read', 'alder_wing', '--in-force', '--handoff', '--at', late], set);
  expect(shown).toEqual(out.trimEnd().split('\n'));
});

test('what is printed holds the set, the outcome, the edition and the caution, and none of the fields', async () => {
  const { page, enter } = await room();
  await enter('Systolic pressure', '88');
  await page.getByText('Act now on: Call the doctor').first().waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.observed').innerText()).toMatch(/Systolic pressure\s+88 mmHg/);
  expect(await page.locator('.observed').innerText()).toMatch(/Heart rate\s+not taken/);
  expect(await page.locator('.caution').isVisible()).toBe(true);
  const { edition } = askable('pressure_reading').protocol;
  expect(await page.locator('.edition').innerText()).toContain(`edition ${edition}`);
  expect(await page.locator('.entry').isVisible()).toBe(false);
});

test('a unit is remembered and nothing else; a value keeps the unit that stands beside it', async () => {
  const { page, enter } = await room();
  await page.getByLabel('Temperature: unit').selectOption({ label: '°F' });
  await enter('Temperature', '98.1');
  await page.locator('.numbers > summary').click();
  await page.getByText('98.1 °F is taken as 36.7 °C').waitFor();
  await page.reload();
  await page.locator('#outcome').waitFor();
  expect(await page.getByLabel('Temperature: unit').inputValue()).toBe('[degF]');
  expect(await page.getByLabel('Temperature', { exact: true }).inputValue()).toBe('');
  expect(await page.evaluate('JSON.stringify({ ...localStorage })')).toBe(
    '{"vitalwright.units":"{\\"°C\\":\\"°F\\"}"}',
  );
});

test('a screen reader hears the outcome once it rests, and only when it changes', async () => {
  const { page, enter, heard } = await room();
  await enter('Systolic pressure', '118');
  await expect.poll(async () => (await heard()).length, { timeout: 20_000 }).toBe(1);
  const first = await heard();
  expect(first).toHaveLength(1);
  expect(first[0]).toMatch(/^No result yet: complete the set/);
  await enter('Heart rate', '72');
  await page.waitForTimeout(1200);
  expect(await heard()).toHaveLength(1);
  await enter('Systolic pressure', '42');
  await expect.poll(async () => (await heard()).length, { timeout: 20_000 }).toBe(2);
  await page.waitForTimeout(1200);
  expect((await heard()).slice(1)).toEqual([expect.stringMatching(/Act now on: Emergency call/)]);
});

// One state at a time is looked at in bedside-states.test.ts; here are those that come together.
const states: Readonly<Record<string, (here: Room) => Promise<void>>> = {
  'refused and questioned': async ({ page, enter }) => {
    await enter('Age', '58');
    await enter('Systolic pressure', '42');
    await enter('Heart rate', '940');
    await page.getByText('940 /min is higher').first().waitFor();
  },
  'unsettled, with earlier sets': async ({ page, enter }) => {
    await enter('Systolic pressure', '95');
    await page.locator('.earlier > summary').click();
    await page.locator('.table-input').fill('time,sys\n00:00,120');
    await page.getByRole('button', { name: 'Add these sets' }).click();
    await page.locator('.chart').waitFor();
  },
};

test.each(Object.keys(states))('nothing stands in the way of anybody: %s', async (name) => {
  const here = await room();
  await states[name]?.(here);
  await here.page.waitForTimeout(500);
  expect(await accessibilityFaults(here.page)).toEqual([]);
});

test.each([
  ['390 pixels wide', 390, 844],
  ['at 200 %', 720, 450],
  ['1024 pixels wide', 1024, 768],
])('nothing is cut off or in the way: %s', async (_, width, height) => {
  const here = await room({ width, height });
  await fillIn(here);
  await here.page.waitForTimeout(500);
  expect(await fitsItsWidth(here.page)).toBe(true);
  expect(await smallTargets(here.page)).toEqual([]);
  expect(await accessibilityFaults(here.page)).toEqual([]);
});

/** What can be touched and is lower than 44 pixels. */
const smallTargets = async (page: Page): Promise<string[]> =>
  page.evaluate<
    string[]
  >(`[...document.querySelectorAll('button, select, input:not([type=radio]):not([type=checkbox]), .choice, summary')]
    .filter((each) => each.checkVisibility() && each.getBoundingClientRect().height < 44)
    .map((each) => each.outerHTML.slice(0, 80))`);

test('the shades of the levels grow darker step by step, so that they tell levels apart in grey', async () => {
  const { page } = await room();
  const shades = await page.evaluate<string[]>(
    `[0, 1, 2, 3, 4].map((each) => getComputedStyle(document.documentElement).getPropertyValue('--shade-' + each).trim())`,
  );
  const lights = shades.map(lightness);
  lights.slice(1).forEach((light, index) => expect((lights[index] ?? 0) - light).toBeGreaterThan(8));
});

/** Perceived lightness of a colour, 0 black to 100 white (CIE L*). */
function lightness(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.040_45 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  const luminance = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  return luminance <= 0.008_856 ? luminance * 903.3 : 116 * Math.cbrt(luminance) - 16;
}

test('the text of a protocol never becomes markup or script', async () => {
  const attack = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
  const text = bundledText('lessons/one_threshold/protocol.yaml')
    .replace(/says: .*/, `says: '${attack}'`)
    .replace(/title: Systolic low/, `title: '${attack}'`);
  const ladder = { file: 'ladder.yaml', text: bundledText('alder_ladder/ladder.yaml') };
  rooms.site.serveProtocols([
    { kind: 'protocol', id: 'hostile', title: attack, file: 'protocol.yaml', text, ladder, cases: null },
  ]);
  const { page, enter, noise } = await openRoom(rooms.browser, `${rooms.site.origin}/`);
  await enter('Systolic pressure', '88');
  await page.locator('.why').getByText('onerror').first().waitFor();
  expect(await page.title()).toBe('Vitalwright');
  expect(await page.locator('img').count()).toBe(0);
  expect(noise).toEqual([]);
  rooms.site.serveProtocols([
    {
      kind: 'protocol',
      id: 'broken',
      title: 'Broken',
      file: 'protocol.yaml',
      text: 'protocol: x',
      ladder,
      cases: null,
    },
  ]);
  const broken = await rooms.browser.newPage();
  await broken.goto(`${rooms.site.origin}/`);
  await broken.getByText('cannot be read with').waitFor();
  expect(await broken.locator('#outcome').count()).toBe(0);
  rooms.site.serveProtocols(null);
});

test('the rooms work below a path of another server, and once loaded without any network', async () => {
  const { page, enter, noise } = await openRoom(rooms.browser, rooms.site.below);
  await page.context().setOffline(true);
  await enter('Systolic pressure', '88');
  await page.getByText('Act now on: Call the doctor').first().waitFor();
  expect(noise).toEqual([]);
});
