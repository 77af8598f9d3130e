import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { download } from '../../editor/src/common/download.ts';
import { digestOf } from '../../editor/src/common/save.ts';
import { refusals } from '../../src/command-line/saving/refusals.ts';
import { siteBelow } from '../../src/command-line/site-protocols.ts';
import { inBrowser } from './in-browser.ts';

const rooms = inBrowser();

const id = 'lessons/a_curve';
const onDisk = (): string => readFileSync(join(rooms.site.folder, id, 'protocol.yaml'), 'utf8');
const asked = (text: string): string =>
  JSON.stringify({ id, part: 'protocol', text, on_disk: digestOf(onDisk()) });

/** Asks for a save from the script of a page, as the page's own client does it. */
const fromPage = async (page: Page, body: string, more = ''): Promise<{ status: number; answer: unknown }> =>
  page.evaluate(`fetch('${rooms.site.origin}/save', {
    method: 'POST', headers: { 'Content-Type': 'application/json' }, body: ${JSON.stringify(body)}, ${more}
  }).then(async (response) => ({ status: response.status, answer: await response.json() }), (error) => ({ status: 0, answer: String(error) }))`);

async function openPage(url: string): Promise<Page> {
  const page = await rooms.browser.newPage();
  await page.goto(url);
  return page;
}

test('a page of the rooms saves, by either name of this machine; its cookie is not for scripts', async () => {
  for (const origin of [rooms.site.origin, rooms.site.origin.replace('127.0.0.1', 'localhost')]) {
    const page = await openPage(origin);
    const text = `# ${origin}\n`;
    const body = JSON.stringify(asked(text));
    expect(
      await page.evaluate(
        `fetch('save', { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: ${body} }).then((response) => response.json())`,
      ),
    ).toEqual({ digest: digestOf(text) });
    expect(onDisk()).toBe(text);
    expect(await page.evaluate('document.cookie')).toBe('');
    await page.close();
  }
});

test('the static site holds the same protocols, with what was in force when it was made; it cannot save', async () => {
  const body = readFileSync(join(rooms.site.built, 'protocols.json'), 'utf8');
  const { protocols, ...more } = JSON.parse(body) as Awaited<ReturnType<typeof siteBelow>>;
  const drafts = protocols.map(({ in_force: _, record: __, ...draft }) => draft);
  expect({ ...more, protocols: drafts }).toEqual(await siteBelow('protocols', false));
  expect(protocols.find((each) => each.id === 'alder_wing')?.in_force).toMatchObject({
    kind: 'policy',
    warnings: [expect.stringContaining('These rooms are files')],
  });
});

test('a text that is too large is refused in words that reach the page', async () => {
  const page = await openPage(rooms.site.origin);
  const { status, answer } = await fromPage(page, asked('a'.repeat(5_000_000)));
  expect({ status, answer }).toEqual({ status: 413, answer: { says: refusals.too_large[1] } });
  await page.close();
});

test('a page of another server on this machine saves nothing, whatever it sends', async () => {
  const other = createServer((_, response) => {
    response.writeHead(200, { 'Content-Type': 'text/html' }).end('<!doctype html><title>Elsewhere</title>');
  });
  await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
  const address = other.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  const untouched = onDisk();
  const context = await rooms.browser.newContext();
  // The rooms are open beside it, so the browser holds the cookie.
  await (await context.newPage()).goto(rooms.site.origin);
  for (const name of ['127.0.0.1', 'localhost']) {
    const page = await context.newPage();
    await page.goto(`http://${name}:${port}/`);
    for (const more of [
      '',
      `credentials: 'include'`,
      `mode: 'no-cors', credentials: 'include'`,
      `mode: 'no-cors', credentials: 'include', headers: { 'Content-Type': 'text/plain' }`,
    ]) {
      expect((await fromPage(page, asked('theirs'), more)).status).toBe(0);
    }
    await page.evaluate(`{
      const form = document.createElement('form');
      Object.assign(form, { method: 'post', action: '${rooms.site.origin}/save', enctype: 'text/plain' });
      const field = document.createElement('input');
      Object.assign(field, { name: ${JSON.stringify(asked('theirs').slice(0, -1))}, value: '"}' });
      form.append(field);
      document.body.append(form);
      form.submit();
    }`);
    await page.waitForURL(`${rooms.site.origin}/save`);
    expect(await page.locator('body').textContent()).toContain(refusals.another_page[1]);
    expect(onDisk()).toBe(untouched);
  }
  await context.close();
  await new Promise((resolve) => {
    other.closeAllConnections();
    other.close(resolve);
  });
});

test('a text is downloaded under the policy of the rooms, byte for byte, and large ones too', async () => {
  const page = await openPage(rooms.site.origin);
  const noise: string[] = [];
  page.on('console', (message) => noise.push(message.text()));
  for (const text of ['title: "Größe 🩺 #1 % %41 \\" "\r\n', `# ${'ä'.repeat(500_000)}`]) {
    const waiting = page.waitForEvent('download');
    await page.evaluate(`(${download.toString()})('protocol.yaml', ${JSON.stringify(text)}, document)`);
    const given = await waiting;
    expect(given.suggestedFilename()).toBe('protocol.yaml');
    expect(readFileSync(await given.path(), 'utf8') === text).toBe(true);
  }
  expect(noise).toEqual([]);
  expect(page.url()).toBe(`${rooms.site.origin}/`);
  await page.close();
});
