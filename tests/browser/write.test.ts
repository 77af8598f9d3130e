import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { bundledText } from '../bundled.ts';
import { openBrowser } from './room.ts';
import { buildSite, type BuiltSite } from './site.ts';
import { openWrite, ready, type WriteRoom } from './write-room.ts';

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

const pathOf = (id: string, file: string): string => join(site.folder, id, file);
const onDisk = (id: string, file = 'protocol.yaml'): string => readFileSync(pathOf(id, file), 'utf8');

/** How many lines differ from the bundled file, as `git diff --numstat` counts them. */
function numstat(id: string, file: string): string {
  const bundled = new URL(`../../protocols/${id}/${file}`, import.meta.url).pathname;
  try {
    execFileSync('git', ['diff', '--no-index', '--numstat', bundled, pathOf(id, file)], { encoding: 'utf8' });
    return '0 0';
  } catch (error) {
    return String((error as { stdout?: unknown }).stdout)
      .split('\t')
      .slice(0, 2)
      .join(' ');
  }
}

/** Takes back until the text is that on disk again. */
async function undoAll(page: Page): Promise<void> {
  const state = page.locator('.part-tab[aria-pressed="true"] .part-state');
  for (let step = 0; step < 40 && (await state.textContent())?.startsWith('not saved') === true; step += 1)
    await page.keyboard.press('Control+z');
  await expect.poll(async () => state.textContent()).toBe('saved');
}

test('a mistake is marked and told in the command line’s words, and one click mends it', async () => {
  const { page, problems, find, noise } = await open('lessons/one_threshold');
  await problems.getByText('Nothing is wrong').waitFor();
  await find('level: call_doctor');
  await page.keyboard.press('End');
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await problems.getByText('Did you mean “call_doctor”?').waitFor();
  expect(await problems.textContent()).toMatch(/protocol\.yaml, line \d+/);
  await page.locator('.squiggly-error').first().waitFor();
  await page.getByRole('heading', { name: 'Mend the problems first' }).waitFor();
  expect(await page.locator('.case').count()).toBe(0);
  await problems.getByRole('button', { name: 'Put “call_doctor” for “call_docto”' }).click();
  await page.locator('.case').first().waitFor();
  await problems.getByText('Nothing is wrong').waitFor();
  expect(noise).toEqual([]);
});

test('the field offers words of the schema and names that the file declares, and tells what a word means', async () => {
  const { page, caretBehind, find } = await open('lessons/two_signs_together');
  await caretBehind('edition: 1');
  await page.keyboard.press('Enter');
  await page.keyboard.type('own');
  const offers = page.locator('.suggest-widget.visible');
  await offers.getByText('owners').first().waitFor();
  await page.keyboard.press('Escape');
  for (let key = 0; key < 4; key += 1) await page.keyboard.press('Backspace');
  await find('rules:');
  await page.keyboard.press('End');
  await page.keyboard.press('Enter');
  await page.keyboard.type('- rule: one_more');
  await page.keyboard.press('Enter');
  await page.keyboard.type('when: { rule: ');
  await page.keyboard.press('Control+Space');
  await offers.locator('.monaco-list-row').first().waitFor();
  const declared = [
    ...bundledText('lessons/two_signs_together/protocol.yaml').matchAll(/- rule: (\w+)/g),
  ].map(([, name]) => name ?? '');
  expect(declared).not.toEqual([]);
  await offers
    .getByText(declared[0] ?? '', { exact: true })
    .first()
    .waitFor();
  await page.keyboard.press('Escape');
  await page
    .locator('.view-line span')
    .filter({ hasText: /^heart_rate$/ })
    .first()
    .hover();
  await page.locator('.monaco-hover').getByText('/min').first().waitFor();
  expect(await page.locator('.monaco-hover').first().innerText()).toMatch(/heart rate/i);
});

test('an edit saved is one line on disk, a case fails at once and passes again, undo takes the edit back', async () => {
  const id = 'lessons/one_threshold';
  const { page, find, save } = await open(id);
  await find('at_most: 90 }');
  await page.keyboard.type('at_most: 80 }');
  await page.locator('.case-fails').first().waitFor();
  expect(await page.locator('.case-fails .case-why').first().textContent()).toMatch(/expect/);
  await undoAll(page);
  await page.getByText(/all \d+ pass/).waitFor();
  expect(await page.locator('.case-fails').count()).toBe(0);
  await find('at_most: 90 }');
  await page.keyboard.type('at_most: 91 }');
  await save.click();
  await page.getByText(/Saved: protocol\.yaml/).waitFor();
  expect(onDisk(id)).toBe(bundledText(`${id}/protocol.yaml`).replace('{ at_most: 90 }', '{ at_most: 91 }'));
  expect(numstat(id, 'protocol.yaml')).toBe('1 1');
});

test('a chosen case shows what decided it, in words and by lines marked in the text', async () => {
  const { page } = await open('pressure_reading');
  await page.locator('.case').filter({ hasText: 'Call the doctor' }).first().getByRole('button').click();
  await page.locator('.case-detail .deciding li').first().waitFor();
  expect(await page.locator('.case-detail .observed-table').textContent()).toContain('mmHg');
  await page.locator('.case-detail .deciding .link-button').first().click();
  await page.locator('.deciding-lines').first().waitFor();
  await page.getByText('decided the chosen case').first().waitFor();
  expect(await page.evaluate('location.hash')).toMatch(/case=/);
  await page.getByText(/Only those that meet the rule at the caret/).waitFor();
});

test('a change that no case would notice is found, and one click adds the case that is missing', async () => {
  const id = 'lessons/two_signs_together';
  const { page, part } = await open(id);
  await part('cases.yaml');
  await page.locator('.text-field').click({ position: { x: 300, y: 60 } });
  const text = onDisk(id, 'cases.yaml');
  const second = text.indexOf('  - case:', text.indexOf('  - case:') + 1);
  await page.keyboard.press('Control+Home');
  for (let line = text.slice(0, second).split('\n').length; line > 1; line -= 1)
    await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Home');
  await page.keyboard.press('Control+Shift+End');
  await page.keyboard.press('Delete');
  await page.getByRole('tab', { name: 'Rules' }).click();
  await page.getByText(/All \d+ small changes looked at/).waitFor();
  await page.locator('.rule-list details').evaluateAll((all) => {
    for (const each of all) (each as unknown as { open: boolean }).open = true;
  });
  const add = page.getByRole('button', { name: 'Add the missing case' });
  expect(await add.count()).toBeGreaterThan(0);
  await add.first().click();
  await page.getByText('The case was added at the end of cases.yaml').waitFor();
  await page.getByRole('tab', { name: 'Cases' }).click();
  await page
    .locator('.case-name')
    .getByText(/To be reviewed/)
    .waitFor();
});

test('somebody else changed the file: both versions are shown, and nothing is lost', async () => {
  const id = 'lessons/a_limit_to_change';
  const { page, caretBehind, save } = await open(id);
  await caretBehind('edition: 1');
  await page.keyboard.type(' # mine');
  const theirs = onDisk(id).replace('edition: 1', 'edition: 2');
  writeFileSync(pathOf(id, 'protocol.yaml'), theirs);
  await save.click();
  const dialog = page.getByRole('dialog');
  await dialog.getByText('protocol.yaml was changed on disk').waitFor();
  expect(await dialog.locator('.versions-differ').textContent()).toMatch(
    /edition: 1 # mine.*only in yours.*edition: 2.*only on disk/,
  );
  expect(onDisk(id)).toBe(theirs);
  await dialog.getByRole('button', { name: 'Take the one on disk' }).click();
  await page.locator('.view-line').getByText('edition: 2').waitFor();
  await page.locator('.text-field').click({ position: { x: 300, y: 60 } });
  await page.keyboard.press('Control+z');
  await page.locator('.view-line').getByText('# mine').waitFor();
  await save.click();
  await page.getByText(/Saved: protocol\.yaml/).waitFor();
  expect(onDisk(id)).toContain('edition: 1 # mine');
});

test('a draft outlives a reload; whoever leaves what is not saved is asked', async () => {
  const { page, caretBehind } = await open('lessons/a_curve');
  await caretBehind('edition: 1');
  await page.keyboard.type(' # half a thought');
  await page.getByText(/Not saved: protocol\.yaml/).waitFor();
  await page.waitForTimeout(400);
  page.on('dialog', (dialog) => void dialog.accept());
  await page.reload();
  await ready(page);
  await page.locator('.view-line').getByText('half a thought').waitFor();
  await page.getByRole('link', { name: 'Bedside' }).click();
  const asked = page.getByRole('alertdialog');
  await asked.getByRole('button', { name: 'Stay here' }).click();
  await page.locator('.view-line').getByText('half a thought').waitFor();
  expect(await page.evaluate('location.hash')).toContain('#/write/');
  await page.getByRole('link', { name: 'Bedside' }).click();
  await asked.getByRole('button', { name: 'Leave it as a draft' }).click();
  await page.locator('#outcome').waitFor();
  const kept = await page.evaluate<string>('JSON.stringify(Object.keys(localStorage))');
  expect(kept).toBe('["vitalwright.draft.lessons/a_curve"]');
});

test('a new protocol begins as a draft from another one, and the first save makes its folder', async () => {
  const { page, save } = await open('pressure_reading');
  await page.getByRole('button', { name: 'New protocol' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Begin' }).click();
  await dialog.getByText('A title is needed').waitFor();
  await dialog.getByLabel('Title, as people will read it').fill('Our ward: pressure');
  await dialog.getByLabel('Name of its folder').fill('our_ward');
  await dialog.getByLabel('Begin from').selectOption('based_on pressure_reading');
  await dialog.getByRole('button', { name: 'Begin' }).click();
  await page.locator('.view-line').getByText('based_on:').waitFor();
  await page.locator('.case').first().waitFor();
  expect(await page.locator('.case-fails').count()).toBe(0);
  await save.click();
  await page.getByText(/Saved: protocol\.yaml and cases\.yaml/).waitFor();
  expect(onDisk('our_ward')).toContain('protocol: pressure_reading');
  expect(onDisk('our_ward', 'cases.yaml')).toContain('protocol: our_ward');
});

test('a set of the bedside becomes a case only once it is said to be made up; it is never in an address or in storage', async () => {
  const { page } = await open('lessons/a_curve');
  await page.getByRole('link', { name: 'Bedside' }).click();
  await page.getByLabel('Systolic pressure', { exact: true }).fill('83');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Make a case of this set' }).click();
  const go = page.getByRole('button', { name: 'Go on in the Write room' });
  expect(await go.isDisabled()).toBe(true);
  await page.getByText('These values are made up').click();
  await go.click();
  const dialog = page.getByRole('dialog');
  await dialog.getByText('systolic: 83').waitFor();
  expect(await page.evaluate('location.hash + JSON.stringify({ ...localStorage })')).not.toContain('83');
  await dialog.getByRole('button', { name: 'This is right' }).click();
  await dialog.getByText('A case needs its story').waitFor();
  await dialog.getByLabel(/The story of a made-up patient/).fill('A made-up low pressure');
  await dialog.getByText('"A made-up low pressure"').waitFor();
  await dialog.getByRole('button', { name: 'This is right' }).click();
  await page.locator('.case-passes .case-name').getByText('A made-up low pressure').waitFor();
  await page.getByRole('link', { name: 'Bedside' }).click();
  await page.getByRole('button', { name: 'Leave it as a draft' }).click();
  expect(await page.getByLabel('Systolic pressure', { exact: true }).inputValue()).toBe('83');
});

test('nothing is loaded from elsewhere, no policy is offended, and the room works without a network', async () => {
  const { page, noise, requests, find } = await open('lessons/a_look_back');
  await page.context().setOffline(true);
  await find('edition: 1');
  await page.keyboard.press('End');
  await page.keyboard.type('x');
  await page.locator('.problem').first().waitFor();
  await page.keyboard.press('Backspace');
  await page.locator('.case').first().waitFor();
  expect(noise).toEqual([]);
  expect(requests.filter((url) => !url.startsWith(site.origin))).toEqual([]);
});

test('the Bedside room loads nothing of the text field', async () => {
  const page = await browser.newPage();
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  await page.goto(`${site.origin}/#/bedside/pressure_reading`);
  await page.locator('#outcome').waitFor();
  expect(requests.filter((url) => /write|yaml|monaco|codicon/.test(url))).toEqual([]);
});
