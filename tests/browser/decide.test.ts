import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { loadRecord } from '../../src/command-line/record-files.ts';
import { approval, steps } from '../command-line/policy.ts';
import { approve, entered, listedWard, now, signedWard } from './decide-ward.ts';
import { inBrowser } from './in-browser.ts';
import { accessibilityFaults, fitsItsWidth, openPage } from './room.ts';

// Deciding about a policy without a terminal, in a real browser over a real server and folder.

const rooms = inBrowser();

const decidePage = '/#/review/small_ward?part=decide';

const button = async (page: Page, name: string): Promise<void> => page.getByRole('button', { name }).click();

const seal = async (page: Page, author: string): Promise<void> => {
  await button(page, 'Seal the draft…');
  await page.getByLabel('Who wrote it').fill(author);
  await button(page, 'Seal it');
};

test('seal, approve by two, put in force: the Bedside room reads with it; withdraw: it says what applies instead', async () => {
  const { origin, made } = await listedWard(rooms.site.built);
  const { page, noise, requests } = await openPage(rooms.browser, `${origin}${decidePage}`);
  await seal(page, 'Dr Elm');
  expect(await entered(page)).toMatch(/^Sealed: small_ward, edition 1, sha256:[0-9a-f]{12}$/);
  await page.getByText('Approvals still needed: 1 × Doctor, 1 × Nurse.').waitFor();
  expect(await page.getByText('Put in force: not now, no edition has all approvals').count()).toBe(1);
  await approve(page, 'Dr Ash', 'Minute 2');
  expect(await entered(page)).toContain('by Dr Ash (Doctor). Still needed: 1 × Nurse.');
  await approve(page, 'Sister Birch', 'Minute 2');
  expect(await entered(page)).toContain('It has all approvals that it needs.');
  await button(page, 'Put in force…');
  await page.getByLabel('Who puts it in force').selectOption('Dr Ash');
  await page.getByRole('textbox', { name: 'Why' }).fill('Agreed by the council.');
  await page.getByText(/^From this moment on, patients are read with edition 1 \(sha256:/).waitFor();
  await button(page, 'Put it in force');
  expect(await entered(page)).toMatch(/^In force from .*: small_ward, edition 1, sha256:/);
  await page.locator('.decide-now').getByText('Edition 1', { exact: true }).waitFor();

  await page.getByRole('link', { name: 'Bedside' }).click();
  await page.getByText('Edition 1 is in force since').waitFor();
  await page.getByLabel('Systolic pressure', { exact: true }).fill('88');
  await page.keyboard.press('Enter');
  await page.locator('#outcome').getByText('Call the doctor').first().waitFor();

  await page.getByRole('link', { name: 'Review' }).click();
  await page.getByRole('tab', { name: 'Decide' }).click();
  await button(page, 'Withdraw…');
  await page.getByLabel('Who withdraws it').selectOption('Sister Birch');
  await page.getByRole('textbox', { name: 'Why' }).fill('A limit is misprinted.');
  await page.getByLabel('What applies instead').fill('The red folder.');
  await page.getByText('It was withdrawn: A limit is misprinted. Instead: The red folder.').waitFor();
  await button(page, 'Withdraw it');
  expect(await entered(page)).toMatch(/^Withdrawn from .*: small_ward\. Instead: The red folder\.$/);
  await page.getByRole('link', { name: 'Bedside' }).click();
  for (const says of ['No policy in force: use the paper policy.', 'Instead: The red folder.'])
    await page.getByText(says).first().waitFor();

  const { record } = await loadRecord(made.ward);
  expect(
    record?.entries.map(({ approvers, approved, in_force: put, withdrawn }) =>
      approvers ? 'list' : (approved ?? put ?? withdrawn)?.by,
    ),
  ).toEqual(['list', 'Dr Ash', 'Sister Birch', 'Dr Ash', 'Sister Birch']);
  expect(noise).toEqual([]);
  expect(requests.filter((url) => !url.startsWith(origin))).toEqual([]);
}, 120_000);

test('what is refused is said beside its field, and nothing typed is lost; nor when somebody else was first', async () => {
  const { origin, made } = await listedWard(rooms.site.built);
  const { page } = await openPage(rooms.browser, `${origin}${decidePage}`);
  await seal(page, 'Dr Elm');
  await entered(page);
  await button(page, 'Approve…');
  await button(page, 'Approve it');
  const by = page.getByLabel('Who approves');
  await page.getByText('Still to be given: who approves.').waitFor();
  expect(await by.evaluate('document.activeElement.closest("[data-field]").dataset.field')).toBe('by');
  await by.selectOption('Dr Elm');
  await page.getByLabel('Where the decision stands in the minutes').fill('Minute 7');
  await button(page, 'Approve it');
  await page.getByText('wrote this edition; whoever wrote it cannot approve it').waitFor();
  expect(await by.getAttribute('aria-invalid')).toBe('true');

  // Closed and opened again, what was typed is still there.
  await page.keyboard.press('Escape');
  await button(page, 'Approve…');
  const minute = page.getByLabel('Where the decision stands in the minutes');
  expect([await by.inputValue(), await minute.inputValue()]).toEqual(['Dr Elm', 'Minute 7']);
  await by.selectOption('Dr Ash');

  // In between somebody else approves.
  await steps(now(), approval(made.ward, 1, 'Sister Birch', 'Nurse'));
  await button(page, 'Approve it');
  await page.getByText('Somebody else made an entry since this page looked.').waitFor();
  expect([await by.inputValue(), await minute.inputValue()]).toEqual(['Dr Ash', 'Minute 7']);
  await page.getByText('Approvals still needed: 1 × Doctor.').first().waitFor();
  await button(page, 'Approve it');
  expect(await entered(page)).toContain('It has all approvals that it needs.');
  expect((await loadRecord(made.ward)).record?.entries).toHaveLength(3);

  // A later time that is not given is never taken for at once.
  await button(page, 'Put in force…');
  await page.getByLabel('From when').selectOption('later');
  await page.getByLabel('Who puts it in force').selectOption('Dr Ash');
  await page.getByRole('textbox', { name: 'Why' }).fill('Agreed.');
  await button(page, 'Put it in force');
  await page.getByText('Still to be given: the day and the time.').waitFor();
  await page.getByLabel('Day and time, by the clock of this machine').fill('2020-01-01T08:00');
  await button(page, 'Put it in force');
  await page.getByText('what was in force before cannot be changed').waitFor();
  await page.getByLabel('Day and time, by the clock of this machine').fill('2099-01-01T08:00');
  await button(page, 'Put it in force');
  await entered(page);
  await page.getByText(/^Edition 1 begins at 2099-01-01 08:00/).waitFor();
}, 120_000);

test('where entries are signed, the page signs: the key stays in it, and another key is refused', async () => {
  const { origin, made, ash, files } = await signedWard(rooms.site.built);
  const { page } = await openPage(rooms.browser, `${origin}${decidePage}`);
  const sent: string[] = [];
  page.on('request', (request) => sent.push(`${request.url()} ${request.postData() ?? ''}`));
  await approve(page, 'Dr Ash', 'Minute 2');
  await page.getByText('Still to be given: the file with the private key.').waitFor();
  const key = page.getByLabel('File with your private key');
  await key.setInputFiles(files[1]);
  await button(page, 'Approve it');
  await page.getByText('This is not the key of Dr Ash: another one stands on the list.').waitFor();
  await key.setInputFiles(join(made.ward, 'ward.yaml'));
  await button(page, 'Approve it');
  await page.getByText('“ward.yaml” holds no private key.').waitFor();
  expect((await loadRecord(made.ward)).record?.entries).toHaveLength(1);
  await key.setInputFiles(files[0]);
  await button(page, 'Approve it');
  expect(await entered(page)).toContain('Approved: small_ward, edition 1');
  expect((await loadRecord(made.ward)).record?.entries[1]?.signatures).toMatchObject([{ by: 'Dr Ash' }]);
  await page.getByText('Signed by Dr Ash.', { exact: true }).waitFor();
  expect(sent.filter((each) => each.includes('jws'))).not.toEqual([]);
  expect(sent.filter((each) => each.includes(ash.d))).toEqual([]);
}, 120_000);

test('a draft that does not hold is not sealed, and the dialog says what holds and what does not', async () => {
  const { origin, made } = await listedWard(rooms.site.built);
  const path = join(made.ward, 'cases.yaml');
  await writeFile(path, (await readFile(path, 'utf8')).replace('call_doctor', 'usual_round'));
  const { page } = await openPage(rooms.browser, `${origin}${decidePage}`);
  await button(page, 'Seal the draft…');
  await button(page, 'Seal it');
  await page.getByText('Still to be given: who wrote it.').waitFor();
  await page.getByLabel('Who wrote it').fill('Dr Elm');
  await button(page, 'Seal it');
  await page.getByRole('heading', { name: 'It was not sealed' }).waitFor();
  expect(await page.getByRole('alert', { name: 'Why it was not sealed' }).innerText()).toContain('Low');
  expect(await page.getByLabel('Who wrote it').inputValue()).toBe('Dr Elm');
}, 120_000);

test('by keyboard alone a policy is withdrawn, at 390 pixels, and nothing lies beside the page', async () => {
  const { origin, made } = await listedWard(rooms.site.built);
  await steps(
    now(),
    ['seal', made.ward, '--author', 'Dr Elm'],
    approval(made.ward, 1, 'Dr Ash', 'Doctor'),
    approval(made.ward, 1, 'Sister Birch', 'Nurse'),
    ['put-in-force', `${made.ward}@1`, '--by', 'Dr Ash', '--because', 'Agreed.'],
  );
  const { page } = await openPage(rooms.browser, `${origin}${decidePage}`, { width: 390, height: 844 });
  await page.getByRole('button', { name: 'Withdraw…' }).waitFor();
  expect(await fitsItsWidth(page)).toBe(true);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole('tab', { name: 'Decide' }).focus();
  await page.keyboard.press('Tab');
  for (let press = 0; press < 4 && !(await focused(page)).includes('Withdraw'); press += 1)
    await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.keyboard.press('Tab');
  await page.keyboard.type('Sister');
  await page.keyboard.press('Tab');
  await page.keyboard.type('Wrong.');
  await page.keyboard.press('Tab');
  await page.keyboard.type('Paper.');
  expect(await fitsItsWidth(page)).toBe(true);
  for (let press = 0; press < 6 && (await focused(page)) !== 'Withdraw it'; press += 1)
    await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  expect(await entered(page)).toContain('Withdrawn from');
  expect((await loadRecord(made.ward)).record?.entries.at(-1)?.withdrawn).toMatchObject({
    by: 'Sister Birch',
    because: 'Wrong.',
    instead: 'Paper.',
  });
}, 120_000);

const focused = async (page: Page): Promise<string> =>
  page.evaluate('(document.activeElement?.textContent ?? "").trim()');
