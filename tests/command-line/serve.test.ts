import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { siteAnswer } from '../../src/command-line/site-answer.ts';
import type { SiteAnswer } from '../../src/command-line/site-headers.ts';
import { protocolsBelow, siteBelow } from '../../src/command-line/site-protocols.ts';
import { ask } from './ask.ts';

let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'vitalwright-serve-'));
  mkdirSync(join(folder, 'site', 'assets'), { recursive: true });
  writeFileSync(join(folder, 'site', 'index.html'), '<!doctype html>');
  writeFileSync(join(folder, 'site', 'assets', 'page-1.js'), 'export {};');
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  symlinkSync(join(folder, 'secret.txt'), join(folder, 'site', 'link.txt'));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const get = async (
  url: string,
  more: { method?: string; host?: string | undefined } = {},
): Promise<SiteAnswer> =>
  siteAnswer(
    { method: 'GET', url, host: '127.0.0.1:4710', ...more },
    {
      folder: join(folder, 'site'),
      port: 4710,
      token: 'secret of this start',
      protocols: () => Promise.resolve('[]'),
      edition: (address) => Promise.resolve(address === 'editions/a_ward/1.yaml' ? 'seal: …' : null),
    },
  );

test('the page, its files and the protocols are answered, each with its type and the strict policy', async () => {
  const answers = await Promise.all(['/', '/assets/page-1.js', '/protocols.json'].map((url) => get(url)));
  expect(answers.map(({ status }) => status)).toEqual([200, 200, 200]);
  expect(answers.map(({ headers }) => headers['Content-Type']?.split(';')[0])).toEqual([
    'text/html',
    'text/javascript',
    'application/json',
  ]);
  for (const { headers } of answers) {
    const policy = headers['Content-Security-Policy'] ?? '';
    expect(policy).toMatch(/^default-src 'none'; script-src 'self'; worker-src 'self'; /);
    expect(policy).not.toMatch(/unsafe-eval|blob:|https?:|\*/);
  }
});

test('a sealed edition is answered as plain text, and what is none is not there', async () => {
  const [edition, none] = [await get('/editions/a_ward/1.yaml'), await get('/editions/a_ward/2.yaml')];
  expect([edition.status, edition.body, edition.headers['Content-Type']]).toEqual([
    200,
    'seal: …',
    'text/plain; charset=utf-8',
  ]);
  expect(none.status).toBe(404);
});

test('the page alone comes with the cookie of this start, which no script reads and no other site sends', async () => {
  const cookies = await Promise.all(
    ['/', '/index.html', '/assets/page-1.js', '/protocols.json', '/nothing.js'].map(
      async (url) => (await get(url)).headers['Set-Cookie'],
    ),
  );
  const cookie = 'vitalwright_4710=secret of this start; SameSite=Strict; HttpOnly; Path=/';
  expect(cookies).toEqual([cookie, cookie, undefined, undefined, undefined]);
});

test.each([
  '/../secret.txt',
  '/assets/../../secret.txt',
  '/%2e%2e/secret.txt',
  '/..%2fsecret.txt',
  '/%252e%252e/secret.txt',
  '/..\\secret.txt',
  '//secret.txt',
  '/link.txt',
  '/assets',
  '/%00',
  '/%',
  'http://example.org/',
  '/nothing.js',
])('%s gives nothing', async (url) => {
  const { status, body } = await get(url);
  expect([400, 404]).toContain(status);
  expect(body.toString()).not.toContain('secret');
});

test.each(['example.org', 'example.org:4710', '127.0.0.1:4711', '127.0.0.1', undefined, ''])(
  'a request for the host %s is refused, whatever it asks for',
  async (host) => {
    expect((await get('/', { host })).status).toBe(421);
    expect((await get('/', { host: 'localhost:4710' })).status).toBe(200);
  },
);

test.each(['POST', 'PUT', 'DELETE', 'OPTIONS', 'TRACE'])('%s is refused', async (method) => {
  const { status, headers } = await get('/', { method });
  expect(status).toBe(405);
  expect(headers['Allow']).toBe('GET, HEAD');
});

test('protocols below a folder come with their ladders, those at the top first', async () => {
  const all = await protocolsBelow('protocols');
  // A ward policy is what a nurse acts on: it comes before the protocols that it reads with.
  expect(all.slice(0, 3).map(({ id }) => id)).toEqual(['alder_wing', 'bleeding_watch', 'child_low_pressure']);
  expect(all[0]?.kind).toBe('ward');
  expect(all.some(({ id }) => id === 'lessons/a_curve')).toBe(true);
  expect(all.every(({ ladder }) => ladder?.text.includes('ladder: alder_ladder'))).toBe(true);
});

test('protocols come with their cases and every ladder there is; only a server says that it saves', async () => {
  const site = await siteBelow('protocols', true);
  expect([site.saves, (await siteBelow('protocols', false)).saves]).toEqual([true, false]);
  expect(site.protocols.map(({ cases }) => cases?.file)).toContain('lessons/a_curve/cases.yaml');
  expect(site.protocols.find(({ id }) => id === 'alder_wing')?.cases?.text).toContain('ward: alder_wing');
  expect(site.ladders.map(({ file }) => file)).toEqual(['alder_ladder/ladder.yaml']);
  // A ladder that stands above the folder is one that a new protocol can call on too.
  const lessons = await siteBelow('protocols/lessons', true);
  expect(lessons.ladders).toEqual(site.ladders);
});

test('cases that are not there, or are behind a link, are null, and what a killed save leaves is no protocol', async () => {
  const own = join(folder, 'protocols');
  for (const name of ['without', 'linked']) mkdirSync(join(own, name), { recursive: true });
  writeFileSync(join(own, 'without', 'protocol.yaml'), 'protocol: without');
  writeFileSync(join(own, 'without', '.cases.yaml.0011223344556677.part'), 'cases: []');
  writeFileSync(join(own, 'without', '.protocol.yaml.0011223344556677.part'), 'protocol: half');
  writeFileSync(join(own, 'linked', 'protocol.yaml'), 'protocol: linked');
  symlinkSync(join(folder, 'secret.txt'), join(own, 'linked', 'cases.yaml'));
  const { protocols, ladders } = await siteBelow(own, true);
  expect(protocols.map(({ id, text, cases }) => [id, text, cases])).toEqual([
    ['linked', 'protocol: linked', null],
    ['without', 'protocol: without', null],
  ]);
  expect(ladders).toEqual([]);
});

test('a port that is taken is said, with another one to take', async () => {
  const other = createServer();
  await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
  const address = other.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  const { exit, out, err } = await ask(['serve', '--port', String(port)]);
  other.close();
  expect({ exit, out }).toEqual({ exit: 2, out: '' });
  expect(err).toContain(`Port ${port} is taken`);
  expect(err).toContain(`--port ${port + 1}`);
});

test.each([
  [['serve', '--port', '70000'], /between 0 and 65535/],
  [['serve', '--port', 'x'], /between 0 and 65535/],
  [['serve', 'a', 'b'], /At most one folder/],
  [['serve', 'not_there', '--port', '0'], /there is no such file or folder/],
])('%j is refused with its reason', async (args, says) => {
  const { exit, err } = await ask(args);
  expect(exit).toBe(2);
  expect(err).toMatch(says);
});
