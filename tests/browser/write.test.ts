import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { bundledText } from '../bundled.ts';
import { inBrowser } from './in-browser.ts';
import type { PageSize } from './room.ts';
import { openWrite, ready, type WriteRoom } from './write-room.ts';

const rooms = inBrowser();

const open = async (id: string, size?: PageSize): Promise<WriteRoom> =>
  openWrite(rooms.browser, `${rooms.site.origin}/#/write/${id}`, size);

const pathOf = (id: string, file: string): string => join(rooms.site.folder, id, file);
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
  await find('level: call_doctor');
  await page.keyboard.press('End');
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Escape');
  await problems.getByText('Did you mean “call_doctor”?').waitFor();
  await page.keyboard.press('Control+.');
  await page.locator('.action-widget').getByText('Put “call_doctor” for “call_docto”').waitFor();
  await page.keyboard.press('Enter');
  await problems.getByText('Nothing is wrong').waitFor();
  await page.locator('.case').first().waitFor();
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

test('mine is kept over theirs, knowingly; and as a new file where theirs is gone', async () => {
  const id = 'lessons/a_score';
  const { page, caretBehind, save } = await open(id);
  await caretBehind('edition: 1');
  await page.keyboard.type(' # mine');
  writeFileSync(pathOf(id, 'protocol.yaml'), `${onDisk(id)}# theirs\n`);
  await save.click();
  await page.getByRole('button', { name: 'Save mine over it' }).click();
  await page.getByText(/Saved: protocol\.yaml/).waitFor();
  const mine = bundledText(`${id}/protocol.yaml`).replace('edition: 1', 'edition: 1 # mine');
  expect(onDisk(id)).toBe(mine);
  await caretBehind('# mine');
  await page.keyboard.type('!');
  await page.getByText(/Not saved: protocol\.yaml/).waitFor();
  rmSync(pathOf(id, 'protocol.yaml'));
  await save.click();
  await page.getByText('The file that you opened is no longer there').waitFor();
  await page.getByRole('button', { name: 'Save mine as a new file' }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await expect.poll(() => existsSync(pathOf(id, 'protocol.yaml'))).toBe(true);
  expect(onDisk(id)).toBe(mine.replace('# mine', '# mine!'));
});

test('a file with mixed line ends is as it was to the byte, but for the line that was written', async () => {
  const id = 'lessons/a_curve';
  const lines = bundledText(`${id}/protocol.yaml`).split('\n');
  const mixed = lines.map((line, index) => line + ['\n', '\r\n', '\r\n'][index % 3]).join('');
  writeFileSync(pathOf(id, 'protocol.yaml'), mixed);
  const { page, caretBehind, save } = await open(id);
  expect(await page.locator('.part-state').allTextContents()).toEqual(['saved', 'saved']);
  await caretBehind('edition: 1');
  await page.keyboard.type(' # mine');
  await save.click();
  await page.getByText(/Saved: protocol\.yaml/).waitFor();
  expect(onDisk(id)).toBe(mixed.replace('edition: 1', 'edition: 1 # mine'));
  writeFileSync(pathOf(id, 'protocol.yaml'), bundledText(`${id}/protocol.yaml`));
});

test('a ward’s case shows what is observed, what each protocol calls for, and which rules decided it', async () => {
  const { page } = await open('alder_wing');
  const row = page.locator('.case').filter({ hasText: 'Each number nearly fine' });
  expect(await row.locator('.case-why').textContent()).toMatch(/Emergency call.*Tell: /);
  await row.getByRole('button').click();
  const detail = page.getByRole('region', { name: 'The chosen case' });
  await detail.locator('.deciding li').first().waitFor();
  expect(await detail.locator('.observed-table').textContent()).toContain('Systolic pressure');
  expect(await detail.locator('.case-outcome').textContent()).toContain('Emergency call');
  expect(await detail.textContent()).toContain('What each protocol calls for');
  const decided = detail.locator('.deciding li').filter({ hasText: 'Emergency call' });
  expect(await decided.first().textContent()).toContain('National Early Warning Score of 2017');
});

test('a draft outlives a reload; whoever leaves what is not saved is asked', async () => {
  const { page, caretBehind } = await open('lessons/a_curve');
  await caretBehind('edition: 1');
  await page.keyboard.type(' # half a thought');
  await page.getByText(/Not saved: protocol\.yaml/).waitFor();
  await expect
    .poll(async () => page.evaluate<string>('JSON.stringify({ ...localStorage })'))
    .toContain('half a thought');
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
  await page.getByText(/all \d+ pass/).waitFor();
  await save.click();
  await page.getByText(/Saved: protocol\.yaml and cases\.yaml/).waitFor();
  expect(onDisk('our_ward')).toContain('protocol: pressure_reading');
  expect(onDisk('our_ward', 'cases.yaml')).toContain('protocol: our_ward');
});

test.each([
  ['a copy of a lesson', 'copy lessons/two_signs_together', 'my_two_signs'],
  ['nothing', 'nothing', 'my_first'],
])('a new protocol begins from %s, passes its cases and names the schema', async (_, from, name) => {
  const { page, save } = await open('lessons/two_signs_together');
  await page.getByRole('button', { name: 'New protocol' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Title, as people will read it').fill('Our own: "quoted"');
  await dialog.getByLabel('Name of its folder').fill(name);
  await dialog.getByLabel('Begin from').selectOption(from);
  await dialog.getByRole('button', { name: 'Begin' }).click();
  await page.locator('.view-line').getByText(`protocol: ${name}`).waitFor();
  await page.getByText(/all \d+ pass/).waitFor();
  await save.click();
  await page.getByText(/Saved: protocol\.yaml and cases\.yaml/).waitFor();
  for (const part of ['protocol', 'cases'])
    expect(onDisk(name, `${part}.yaml`)).toMatch(
      new RegExp(`^# yaml-language-server: \\$schema=\\.\\./\\.\\./schema/${part}\\.schema\\.json\n`),
    );
  expect(onDisk(name)).toContain('title: "Our own: \\"quoted\\""');
});

test('whoever leaves can save on the way', async () => {
  const id = 'lessons/a_ward_adapts';
  const { page, caretBehind } = await open(id);
  await caretBehind('edition: 1');
  await page.keyboard.type(' # saved on leaving');
  await page.getByText(/Not saved: protocol\.yaml/).waitFor();
  await page.getByRole('link', { name: 'Bedside' }).click();
  await page.getByRole('alertdialog').getByRole('button', { name: 'Save and leave' }).click();
  await page.locator('#outcome').waitFor();
  expect(onDisk(id)).toContain('# saved on leaving');
  expect(await page.evaluate('localStorage.length')).toBe(0);
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
  expect(requests.filter((url) => !url.startsWith(rooms.site.origin))).toEqual([]);
});

test('the Bedside room loads nothing of the text field', async () => {
  const page = await rooms.browser.newPage();
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  await page.goto(`${rooms.site.origin}/#/bedside/pressure_reading`);
  await page.locator('#outcome').waitFor();
  expect(requests.filter((url) => /write|yaml|monaco|codicon/.test(url))).toEqual([]);
});
