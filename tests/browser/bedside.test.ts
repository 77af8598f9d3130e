import { expect, test } from 'vitest';
import { evaluate, readSet } from '../../src/index.ts';
import { askable, bundled } from '../bundled.ts';
import { inBrowser } from './in-browser.ts';
import { openRoom, type Room } from './room.ts';

const rooms = inBrowser();

const address = (): string => `${rooms.site.origin}/#/bedside/pressure_reading`;
const pressureRoom = async (): Promise<Room> => openRoom(rooms.browser, address());

/** A whole set by keys alone, from the first field of the form on. */
const wholeSet = [
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
  '36.0',
  'Enter',
];

async function typeWholeSet({ page }: Room): Promise<void> {
  await page.getByLabel('Age', { exact: true }).focus();
  for (const key of wholeSet) {
    if (/\d/.test(key)) await page.keyboard.type(key);
    else await page.keyboard.press(key);
  }
}

test('a whole set is entered by keyboard alone, quickly, and is read as the library reads it', async () => {
  const room = await pressureRoom();
  const start = performance.now();
  await typeWholeSet(room);
  const set = {
    age: { value: 71, unit: 'a' },
    pregnancy: 'not_pregnant',
    consciousness: 'new_confusion',
    respiratory_rate: 24,
    heart_rate: 98,
    systolic: 108,
    diastolic: 54,
    temperature: 36,
  };
  const { series } = readSet('set.json', JSON.stringify(set), askable('pressure_reading'));
  const expected = series && evaluate(askable('pressure_reading'), series).level;
  const level = bundled('pressure_reading').ladder.levels.find(({ name }) => name === expected?.at_least);
  await room.page.getByRole('heading', { name: level?.title ?? '', exact: true }).waitFor();
  expect(performance.now() - start).toBeLessThan(15_000);
  expect(expected?.settled).toBe(true);
  expect(await room.page.locator('.level').getAttribute('class')).toContain('level-settled');
});

test('nothing that was observed is in the address, kept, logged or sent', async () => {
  const room = await pressureRoom();
  const loaded = room.requests.length;
  await typeWholeSet(room);
  await room.page.getByLabel('Bed label').fill('4-B2');
  await room.page.getByRole('button', { name: 'Handoff' }).click();
  await room.page.getByLabel('Allergies').fill('penicillin');
  await room.page.waitForTimeout(600);
  expect(room.page.url()).toBe(address());
  expect(room.requests.slice(loaded)).toEqual([]);
  expect(
    room.requests.every((url) => url.startsWith(`${rooms.site.origin}/`) || url.startsWith('data:,')),
  ).toBe(true);
  expect(room.noise).toEqual([]);
  const kept = 'JSON.stringify([{ ...localStorage }, { ...sessionStorage }, document.cookie, history.state])';
  expect(await room.page.evaluate(kept)).toBe('[{},{},"",null]');
  expect(await room.page.evaluate('indexedDB.databases().then((all) => all.length)')).toBe(0);
});

test('a value is taken when its field is left, never while it is typed', async () => {
  const room = await pressureRoom();
  await room.enter('Systolic pressure', '118');
  await room.page.getByText('What would change this').waitFor();
  const before = await room.outcome.textContent();
  await room.page.getByLabel('Systolic pressure', { exact: true }).fill('');
  for (const digit of '78') {
    await room.page.keyboard.type(digit);
    await room.page.waitForTimeout(150);
    expect(await room.outcome.textContent()).toBe(before);
  }
  expect(await room.page.locator('.typing').textContent()).toMatch(/being written/);
  await room.page.keyboard.press('Enter');
  await room.page.getByRole('heading', { name: 'Act now on: Emergency call' }).waitFor();
  expect(await room.page.locator('.typing').count()).toBe(0);
});

test('what is not settled is shown as such, in words and not by colour alone', async () => {
  const room = await pressureRoom();
  expect(await room.outcome.textContent()).toBe('No result yet: complete the set');
  await room.enter('Systolic pressure', '95');
  await room.page.getByText('Not settled', { exact: true }).waitFor();
  expect(await room.outcome.textContent()).toMatch(/^Act now on: /);
  expect(await room.page.locator('.level-could').textContent()).toBe('It could be as high as Emergency call');
  expect(await room.page.evaluate(`getComputedStyle(document.querySelector('.level')).borderTopStyle`)).toBe(
    'dashed',
  );
  expect(await room.page.locator('.rung-open').count()).toBeGreaterThan(0);
  expect(await room.page.locator('.level-words').textContent()).not.toContain(
    'Nothing in this set calls for more',
  );
});

test('a questioned value is questioned at once, under its field and before everything, and still counts', async () => {
  const room = await pressureRoom();
  await room.enter('Age', '58');
  await room.enter('Systolic pressure', '42');
  await room.page.getByRole('heading', { name: 'Act now on: Emergency call' }).waitFor();
  const under = room.page.locator('[data-observation="systolic"] .remark');
  expect(await under.textContent()).toMatch(/Is it right\?.*42 mmHg is lower than 50/);
  const before = await room.page.locator('.before').boundingBox();
  const level = await room.page.locator('.level').boundingBox();
  expect(await room.page.locator('.before').textContent()).toContain('42 mmHg is lower');
  expect((before?.y ?? 0) + (before?.height ?? 0)).toBeLessThanOrEqual(level?.y ?? 0);
  const described = await room.page
    .getByLabel('Systolic pressure', { exact: true })
    .getAttribute('aria-describedby');
  expect(await room.page.locator(`[id="${described ?? ''}"]`).textContent()).toContain('42 mmHg');
});

test('a refused value, a contradiction and what is no number are said, and gone once they are mended', async () => {
  const room = await pressureRoom();
  const side = room.page.locator('.before');
  await room.enter('Systolic pressure', '60');
  await room.enter('Diastolic pressure', '90');
  await side.getByText('both are refused').waitFor();
  await room.enter('Diastolic pressure', '940');
  await side.getByText('940 mmHg is higher than 400').waitFor();
  expect(await side.getByText('both are refused').count()).toBe(0);
  await room.enter('Heart rate', 'fast');
  await side.getByText('“fast” is not a number').waitFor();
  await room.enter('Heart rate', '80');
  await room.enter('Diastolic pressure', '40');
  await side.waitFor({ state: 'detached' });
});

test('not taken, unobtainable and declined are one letter or one touch away', async () => {
  const room = await pressureRoom();
  await room.page.getByLabel('Respiratory rate', { exact: true }).focus();
  await room.page.keyboard.press('d');
  const row = room.page.locator('[data-observation="respiratory_rate"]');
  await row.getByRole('radio', { name: 'Declined', checked: true }).waitFor();
  await room.page
    .locator('.gap-list')
    .filter({ hasText: /^Declined/ })
    .getByText('Respiratory rate')
    .waitFor();
  await room.page
    .getByRole('radiogroup', { name: 'Systolic pressure: no value' })
    .getByText('Unobtainable')
    .click();
  await room.page.getByLabel('Systolic pressure: why it was unobtainable').fill('cold hands');
  await room.page.getByText('Systolic pressure (cold hands)').waitFor();
  await room.enter('Systolic pressure', '104');
  await expect.poll(() => room.page.locator('body').textContent()).not.toContain('cold hands');
  expect(await row.getByRole('radio', { name: 'Declined', checked: true }).count()).toBe(1);
});

test('what would raise the level is told for each observation, and nothing that would lower it', async () => {
  const room = await pressureRoom();
  await typeWholeSet(room);
  const table = room.page.locator('.raise-table');
  await room.page.getByText('18 mmHg lower').waitFor();
  expect(await table.innerText()).toMatch(/Systolic pressure\s+18 mmHg lower, at 90 mmHg\s+Emergency call/);
  expect(await table.innerText()).not.toMatch(/Usual round|Look again/);
});

test('a limit that a prescriber changed counts once it is said who changed it', async () => {
  const room = await pressureRoom();
  await room.page.locator('.stated > summary').click();
  await room.enter('Lowest acceptable mean pressure', '80');
  await room.page.locator('.outcome-side').getByText('not used until it is said who stated it').waitFor();
  await room.page.getByLabel(/Who stated it/).fill('Dr Ash');
  await room.enter('Systolic pressure', '118');
  await room.enter('Diastolic pressure', '60');
  await room.page.locator('.numbers > summary').click();
  await room.page.getByText('80 mmHg, by Dr Ash').waitFor();
  expect(await room.page.getByText('not used until').count()).toBe(0);
});

test('a limit holds until the time that is said; after that it is not used, which is said', async () => {
  const { page, enter } = await pressureRoom();
  await page.getByLabel('Set taken at').fill('2026-03-04T20:10');
  await page.locator('.stated > summary').click();
  await enter('Lowest acceptable mean pressure', '80');
  await page.getByLabel(/Who stated it/).fill('Dr Ash');
  const until = page.getByLabel('Lowest acceptable mean pressure: until when');
  await until.fill('2026-03-04T20:11');
  await enter('Systolic pressure', '118');
  await enter('Diastolic pressure', '60');
  await page.locator('.numbers > summary').click();
  const stated = page.locator('.numbers').getByText('80 mmHg, by Dr Ash, until 2026-03-04 20:11');
  await stated.waitFor();
  await until.fill('2026-03-04T20:10');
  await page.locator('.before').getByText('what was stated ended before this set was taken').waitFor();
  await stated.waitFor({ state: 'detached' });
  expect(await page.locator('.numbers').textContent()).not.toContain('by Dr Ash');
});

test('a pressure in kPa is taken as what it is in mmHg, which is said, and the unit stays for the next one', async () => {
  const { page, enter } = await pressureRoom();
  await page.getByLabel('Systolic pressure: unit', { exact: true }).selectOption({ label: 'kPa' });
  await enter('Systolic pressure', '11.7');
  await page.getByRole('heading', { name: 'Act now on: Call the doctor' }).waitFor();
  await page.locator('.numbers > summary').click();
  await page.getByText('11.7 kPa is taken as 88 mmHg').waitFor();
  expect(await page.getByLabel('Diastolic pressure: unit', { exact: true }).inputValue()).toBe('kPa');
});

test('earlier sets are pasted as a table, drawn, and what is wrong in a table is told with its line', async () => {
  const room = await pressureRoom();
  await typeWholeSet(room);
  await room.page.locator('.earlier > summary').click();
  const box = room.page.locator('.table-input');
  await box.fill('time,rr,bp,hart rate\n08:00,16,128/74,78');
  await room.page.getByRole('button', { name: 'Add these sets' }).click();
  await room.page.getByText('Did you mean “heart_rate”?').waitFor();
  expect(await room.page.locator('.earlier [role="alert"]').textContent()).toContain('Line 1');
  await box.fill(
    'date\ttime\trr\tbp\thr\ttemp (°F)\n2026-03-04\t08:00\t16\t128/74\t78\t98.1\n2026-03-04\t12:00\t25\t119/66\t88\t97.3',
  );
  await room.page.getByRole('button', { name: 'Add these sets' }).click();
  await room.page.locator('.chart').first().waitFor();
  const systolic = room.page.getByRole('img', {
    name: /^Systolic pressure: 128 mmHg at 2026-03-04 08:00.*108 mmHg.*the present set$/,
  });
  expect(await systolic.count()).toBe(1);
  expect(await systolic.locator('circle').count()).toBe(3);
  expect(await systolic.locator('.dot-now').count()).toBe(1);
});

test('a set is kept as an earlier one, and the way down from its level is counted', async () => {
  const room = await openRoom(rooms.browser, `${rooms.site.origin}/#/bedside/lessons/one_threshold`);
  await room.enter('Systolic pressure', '88');
  await room.page.getByRole('heading', { name: 'Call the doctor', exact: true }).waitFor();
  await room.page.locator('.earlier > summary').click();
  await room.page.getByRole('button', { name: /Keep this set/ }).click();
  expect(await room.page.getByLabel('Systolic pressure', { exact: true }).inputValue()).toBe('');
  await room.enter('Systolic pressure', '120');
  await room.page.getByText('Better sets in a row: 1 of 2').waitFor();
});
