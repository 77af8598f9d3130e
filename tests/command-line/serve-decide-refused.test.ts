import { afterAll, beforeAll, expect, test } from 'vitest';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { refusals, type Refusal } from '../../src/command-line/deciding/refusals.ts';
import { everything, openSite, type Heard, type SaveSite, type Sent } from './save-site.ts';
import { terminalAt } from './terminal-at.ts';

// What may neither decide nor seal, whatever it says: the same as may not save.

let site: SaveSite;
let untouched: Record<string, string>;
let sealings = 0;

beforeAll(async () => {
  site = await openSite({
    decides: terminalAt('2026-03-03T12:00:00Z'),
    seal: () => {
      sealings += 1;
      return Promise.resolve({ code: 0, out: 'Sealed.', err: '' });
    },
  });
  mkdirSync(join(site.folder, 'a_ward', 'record'));
  writeFileSync(join(site.folder, 'a_ward', 'record', '1.json'), '{}');
  untouched = everything(site.folder);
});

afterAll(async () => {
  await site.close();
});

const digest = `sha256:${'0'.repeat(64)}`;
const withdrawal = {
  what: 'withdraw',
  id: 'a_ward',
  head: null,
  at: null,
  jws: null,
  by: 'Dr Ash',
  because: 'Wrong.',
  instead: 'Paper.',
  from: '',
};
const sealing = { id: 'a_ward', authors: ['Dr Elm'], on_disk: digest };

/** Requests that are well in every way: each test changes one thing about them. */
const wellMeant = { '/decide': withdrawal, '/seal': sealing } as const;
const urls = ['/decide', '/seal'] as const;

function expectRefused({ status, headers, body }: Heard, why: Refusal): void {
  const [code, says] = refusals[why];
  expect({ status, body }).toEqual({ status: code, body: { says } });
  expect(headers['content-security-policy']).toContain(`default-src 'none'`);
  expect(everything(site.folder)).toEqual(untouched);
  expect(sealings).toBe(0);
}

const port = (text: string): string => text.replaceAll('PORT', String(site.port));

const heads: readonly (readonly [Refusal, string, string | undefined])[] = [
  ['not_this_server', 'host', 'example.org'],
  ['not_this_server', 'host', '127.0.0.1:1'],
  ['another_page', 'origin', undefined],
  ['another_page', 'origin', 'null'],
  ['another_page', 'origin', 'http://example.org'],
  ['another_page', 'origin', 'http://localhost:PORT'],
  ['another_page', 'sec-fetch-site', 'cross-site'],
  ['opened_before', 'cookie', undefined],
  ['opened_before', 'cookie', 'vitalwright_PORT=another'],
  ['not_json', 'content-type', undefined],
  ['not_json', 'content-type', 'text/plain'],
  ['not_json', 'content-encoding', 'gzip'],
];

test.each(heads.flatMap((head) => urls.map((url) => [...head, url] as const)))(
  '%s: %s is %s at %s',
  async (why, name, value, url) => {
    const headers = { [name]: value === undefined ? undefined : port(value) };
    expectRefused(await site.send({ url, headers, body: JSON.stringify(wellMeant[url]) }), why);
  },
);

test.each(['GET', 'PUT', 'DELETE', 'OPTIONS'].flatMap((method) => urls.map((url) => [method, url] as const)))(
  '%s decides nothing at %s',
  async (method, url) => {
    const answer = await site.send({ method, url });
    expect(answer.headers['allow']).toBe('POST');
    expectRefused(answer, 'only_post');
  },
);

test.each(['/decide/', '/decide?x', '//decide', '/%64ecide', '/seal/', '/seal?x'])(
  'nothing is decided at the address %s',
  async (url) => {
    const body = JSON.stringify(url.includes('seal') ? sealing : withdrawal);
    expect((await site.send({ url, body })).status).toBe(405);
    expect(sealings).toBe(0);
    expect(everything(site.folder)).toEqual(untouched);
  },
);

const decision = (change: Readonly<Record<string, unknown>>): string =>
  JSON.stringify({ ...withdrawal, ...change });
const seal = (change: Readonly<Record<string, unknown>>): string => JSON.stringify({ ...sealing, ...change });
const approval = (change: Readonly<Record<string, unknown>>): string =>
  JSON.stringify({
    what: 'approve',
    id: 'a_ward',
    head: null,
    at: null,
    jws: null,
    edition: 1,
    digest,
    by: 'Dr Ash',
    role: 'Doctor',
    minute: 'Minute 1',
    on: '2026-03-03',
    ...change,
  });

const bodies: readonly (readonly [Refusal, '/decide' | '/seal', Sent['body']])[] = [
  ['broken', '/decide', ''],
  ['broken', '/seal', '{'],
  ['broken', '/decide', Buffer.from(decision({}), 'utf16le')],
  ['other_keys', '/decide', 'null'],
  ['other_keys', '/seal', '[]'],
  ['other_keys', '/decide', '{}'],
  ['other_keys', '/decide', decision({ what: 'approvers' })],
  ['other_keys', '/decide', decision({ what: 'constructor' })],
  ['other_keys', '/decide', decision({ what: undefined })],
  ['other_keys', '/decide', decision({ force: true })],
  ['other_keys', '/decide', decision({ instead: undefined })],
  ['other_keys', '/decide', decision({ by: 7 })],
  ['other_keys', '/decide', decision({ by: ['Dr Ash'] })],
  ['other_keys', '/decide', decision({ from: null })],
  ['other_keys', '/decide', decision({ head: 'none' })],
  ['other_keys', '/decide', decision({ head: undefined })],
  ['other_keys', '/decide', decision({ at: '2026-03-03T12:00:00Z' })],
  ['other_keys', '/decide', decision({ jws: 'e30..AA' })],
  ['other_keys', '/decide', decision({}).replace('{', '{"by":"Dr Elm",')],
  ['other_keys', '/decide', approval({ edition: '1' })],
  ['other_keys', '/decide', approval({ edition: 0 })],
  ['other_keys', '/decide', approval({ edition: 1.5 })],
  ['other_keys', '/decide', approval({ edition: 10_000 })],
  ['other_keys', '/decide', approval({ digest: null })],
  ['other_keys', '/decide', approval({ digest: digest.toUpperCase() })],
  ['other_keys', '/seal', seal({ authors: 'Dr Elm' })],
  ['other_keys', '/seal', seal({ authors: [7] })],
  ['other_keys', '/seal', seal({ authors: Array.from({ length: 51 }, () => 'Dr Elm') })],
  ['other_keys', '/seal', seal({ authors: ['m'.repeat(1001)] })],
  ['other_keys', '/seal', seal({ on_disk: null })],
  ['other_keys', '/seal', seal({ more: 1 })],
  ['no_such_id', '/decide', decision({ id: '../outside' })],
  ['no_such_id', '/decide', decision({ id: '' })],
  ['no_such_id', '/seal', seal({ id: 'a_ward/../a_ward' })],
  ['no_such_id', '/seal', seal({ id: '.git' })],
  ['no_unicode', '/decide', decision({ because: 'half \uD83E' })],
  ['no_nul', '/decide', decision({ instead: 'a\0b' })],
  ['no_nul', '/seal', seal({ authors: ['a\0b'] })],
  ['no_unicode', '/seal', seal({ authors: ['half \uD83E'] })],
  ['no_protocol_yet', '/decide', decision({ id: 'nothing_here' })],
  ['no_protocol_yet', '/seal', seal({ id: 'nothing_here' })],
  ['other_draft', '/seal', seal({})],
  ['no_such_edition', '/decide', approval({})],
];

const short = (text: string): string => JSON.stringify(text.slice(0, 60));

test.each(
  bodies.map(([why, url, body = ''], index) => [why, url, index, short(body.toString()), body] as const),
)('%s at %s (%i): %s', async (why, url, _, __, body) => {
  // Looked at before the record is: that one holds no entry.
  if (why === 'no_such_edition') rmSync(join(site.folder, 'a_ward', 'record', '1.json'));
  const answer = await site.send({ url, body });
  if (why === 'no_such_edition') writeFileSync(join(site.folder, 'a_ward', 'record', '1.json'), '{}');
  expectRefused(answer, why);
});

test('what is well in every way is let through', async () => {
  expect((await site.send({ url: '/decide', body: decision({}) })).body).toMatchObject({
    says: 'Nothing was entered.',
    problems: expect.any(Array),
  });
});

test('rooms that save nothing, and rooms that are not told the time, decide nothing', async () => {
  for (const more of [{ saves: null }, { decides: null }]) {
    const other = await openSite({ decides: terminalAt('2026-03-03T12:00:00Z'), ...more });
    for (const url of urls)
      expect(await other.send({ url, body: JSON.stringify(wellMeant[url]) })).toMatchObject({
        status: 404,
        body: { says: refusals.decides_nothing[1] },
      });
    await other.close();
  }
});
