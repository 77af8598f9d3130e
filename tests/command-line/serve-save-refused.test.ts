import { afterAll, beforeAll, expect, test } from 'vitest';
import { refusals, type Refusal } from '../../src/command-line/saving/refusals.ts';
import { hasToken, newToken } from '../../src/command-line/saving/token.ts';
import { beforeDigest, everything, openSite, type Heard, type SaveSite, type Sent } from './save-site.ts';

let site: SaveSite;
let untouched: Record<string, string>;

beforeAll(async () => {
  site = await openSite();
  untouched = everything(site.folder);
});

afterAll(async () => site.close());

/** A save that is well in every way: each test changes one thing about it, and that one is the reason. */
const wellMeant = {
  id: 'lessons/a_curve',
  part: 'protocol',
  text: 'mine',
  on_disk: beforeDigest,
};

function expectRefused({ status, headers, body }: Heard, why: Refusal): void {
  const [code, says] = refusals[why];
  expect({ status, body }).toEqual({ status: code, body: { says } });
  expect(headers['content-security-policy']).toContain(`default-src 'none'`);
  expect(everything(site.folder)).toEqual(untouched);
}

const port = (text: string): string => text.replaceAll('PORT', String(site.port));

/** Headers in the place of those of a page of the rooms, with PORT for the port; undefined: not sent. */
const heads: readonly (readonly [Refusal, string, string | undefined])[] = [
  ['not_this_server', 'host', 'example.org'],
  ['not_this_server', 'host', 'example.org:PORT'],
  ['not_this_server', 'host', '127.0.0.1'],
  ['not_this_server', 'host', '127.0.0.1:1'],
  ['not_this_server', 'host', '127.0.0.1.example.org:PORT'],
  ['not_this_server', 'host', '[::1]:PORT'],
  ['another_page', 'origin', undefined],
  ['another_page', 'origin', 'null'],
  ['another_page', 'origin', 'http://example.org'],
  ['another_page', 'origin', 'http://127.0.0.1'],
  ['another_page', 'origin', 'http://127.0.0.1:1'],
  ['another_page', 'origin', 'https://127.0.0.1:PORT'],
  ['another_page', 'origin', 'http://127.0.0.1:PORT.example.org'],
  ['another_page', 'origin', 'http://127.0.0.1:PORT, http://example.org'],
  // The same server by its other name is another page's, to a browser as well.
  ['another_page', 'origin', 'http://localhost:PORT'],
  ['another_page', 'sec-fetch-site', 'cross-site'],
  ['another_page', 'sec-fetch-site', 'same-site'],
  ['another_page', 'sec-fetch-site', ''],
  ['opened_before', 'cookie', undefined],
  ['opened_before', 'cookie', 'vitalwright_PORT='],
  ['opened_before', 'cookie', 'vitalwright_PORT=token-of-this-star'],
  ['opened_before', 'cookie', 'vitalwright_PORT=token-of-this-start-'],
  ['opened_before', 'cookie', 'vitalwright_PORT=another'],
  ['opened_before', 'cookie', 'vitalwright_1=token-of-this-start'],
  ['opened_before', 'cookie', 'xvitalwright_PORT=token-of-this-start'],
  ['opened_before', 'cookie', 'token-of-this-start'],
  ['not_json', 'content-type', undefined],
  ['not_json', 'content-type', 'text/plain'],
  ['not_json', 'content-type', 'application/x-www-form-urlencoded'],
  ['not_json', 'content-type', 'application/json; charset=utf-16'],
  ['not_json', 'content-type', 'text/plain; application/json'],
  ['not_json', 'content-type', 'application/jsonp'],
  ['not_json', 'content-encoding', 'gzip'],
];

test.each(heads)('%s: %s is %s', async (why, name, value) => {
  const headers = { [name]: value === undefined ? undefined : port(value) };
  expectRefused(await site.send({ headers, body: JSON.stringify(wellMeant) }), why);
});

test.each([
  { headers: { host: 'localhost:PORT', origin: 'http://localhost:PORT' } },
  { headers: { 'sec-fetch-site': 'same-origin' } },
  { headers: { 'sec-fetch-site': 'none' } },
  { headers: { 'content-type': 'application/json; charset=utf-8' } },
  { headers: { cookie: 'vitalwright_PORT=another; a=b; vitalwright_PORT=token-of-this-start' } },
])('%j is let through: the same text is saved where it stands', async ({ headers }) => {
  const mine = Object.fromEntries(Object.entries(headers).map(([name, value]) => [name, port(value)]));
  const text = untouched['lessons/a_curve/protocol.yaml'];
  const { status } = await site.send({ headers: mine, body: JSON.stringify({ ...wellMeant, text }) });
  expect(status).toBe(200);
  expect(everything(site.folder)).toEqual(untouched);
});

test.each(['GET', 'HEAD', 'PUT', 'PATCH', 'DELETE', 'OPTIONS'])('%s saves nothing', async (method) => {
  const answer = await site.send({ method, ...(method.startsWith('P') ? { body: json({}) } : {}) });
  expect(answer.headers['allow']).toBe('POST');
  if (method === 'HEAD') expect(answer.status).toBe(405);
  else expectRefused(answer, 'only_post');
});

test.each([
  '/',
  '/save/',
  '/save?x',
  '//save',
  '/%73ave',
  '/protocols.json',
  '/lessons/a_curve/protocol.yaml',
])('nothing is saved at the address %s', async (url) => {
  expect((await site.send({ url, body: JSON.stringify(wellMeant) })).status).toBe(405);
  expect(everything(site.folder)).toEqual(untouched);
});

/** As much of a text as belongs into the name of a test. */
const short = (text: string): string => JSON.stringify(text.slice(0, 60));

const json = (change: Readonly<Record<string, unknown>>): string =>
  JSON.stringify({ ...wellMeant, ...change });

const bodies: readonly (readonly [Refusal, Sent['body']])[] = [
  ['broken', ''],
  ['broken', '{'],
  ['broken', `${json({})}}`],
  ['broken', `\uFEFF${json({})}`],
  ['broken', json({}).replace('"mine"', `'mine'`)],
  ['broken', Buffer.concat([Buffer.from('{"id":"'), Buffer.from([0xff]), Buffer.from('"}')])],
  ['broken', Buffer.from(json({}), 'utf16le')],
  ['other_keys', 'null'],
  ['other_keys', '[]'],
  ['other_keys', '"text"'],
  ['other_keys', '{}'],
  ['other_keys', json({ id: undefined })],
  ['other_keys', json({ on_disk: undefined })],
  ['other_keys', json({ force: true })],
  ['other_keys', json({}).replace('"part"', '"__proto__"')],
  ['other_keys', json({}).replace('{', '{"text":"theirs",')],
  ['other_keys', json({}).replace('{', `{"id":${'['.repeat(5000)}${']'.repeat(5000)},`)],
  ['other_keys', json({ id: 7 })],
  ['other_keys', json({ id: ['lessons/a_curve'] })],
  ['other_keys', json({ part: null })],
  ['other_keys', json({ text: null })],
  ['other_keys', json({ text: { toString: 'x' } })],
  ['other_keys', json({ on_disk: '' })],
  ['other_keys', json({ on_disk: beforeDigest.toUpperCase() })],
  ['other_keys', json({ on_disk: beforeDigest.slice(7) })],
  ['other_keys', json({ on_disk: `${beforeDigest}0` })],
  ['no_such_part', json({ part: 'ladder' })],
  ['no_such_part', json({ part: 'ward' })],
  ['no_such_part', json({ part: 'protocol.yaml' })],
  ['no_such_part', json({ part: '../protocol' })],
  ['no_such_part', json({ part: 'constructor' })],
  ['no_unicode', json({ text: 'half \uD83E' })],
  ['no_unicode', json({ text: '\uDE7A the other way round \uD83E' })],
  ['no_nul', json({ text: 'a\0b' })],
];

test.each(bodies.map(([why, body = '']) => [why, short(body.toString()), body] as const))(
  '%s: %s',
  async (why, _, body) => {
    expectRefused(await site.send({ body }), why);
  },
);

const names = [
  '',
  '.',
  '..',
  '/',
  '../outside',
  'lessons/../../outside',
  'lessons/..',
  'lessons/./a_curve',
  'lessons//a_curve',
  '/lessons/a_curve',
  'lessons/a_curve/',
  '%2e%2e/outside',
  '%2e%2e%2foutside',
  '..%2foutside',
  '%252e%252e/outside',
  '..\\outside',
  'lessons\\a_curve',
  '..%5coutside',
  'C:\\outside',
  'c:/outside',
  'c:outside',
  '\\\\host\\share',
  '//host/share',
  '/etc',
  'file:///outside',
  '~/outside',
  'lessons/a_curve\0',
  '\0',
  'lessons/a_curve\n',
  'lessons/a_curve/protocol.yaml',
  '．．/outside',
  '‥/outside',
  'Lessons/a_curve',
  'lessons/a-curve',
  '.git',
  'a b',
  'a'.repeat(61),
  'a'.repeat(10_000),
  'a/'.repeat(9).concat('a'),
  '../'.repeat(5000).concat('outside'),
  'con',
  'lessons/nul',
  'node_modules/a_curve',
];

test.each(names.map((id) => [short(id), id]))('the name %s is none', async (_, id) => {
  for (const on_disk of [null, beforeDigest]) {
    expectRefused(await site.send({ body: json({ id, on_disk }) }), 'no_such_id');
  }
});

test('a server that saves nothing says so', async () => {
  const other = await openSite({ saves: null });
  const { status, body } = await other.save({ text: 'mine' });
  expect([status, body]).toEqual([404, { says: refusals.saves_nothing[1] }]);
  await other.close();
});

test('the cookie of the page is what a save is let through with, for this start and this port alone', async () => {
  const page = await site.send({ method: 'GET', url: '/', headers: { cookie: undefined } });
  const [cookie = ''] = page.headers['set-cookie'] as string[];
  expect(cookie).toBe(`${site.cookie}; SameSite=Strict; HttpOnly; Path=/`);
  expect([newToken(), newToken()].every((token) => /^[\w-]{43}$/.test(token))).toBe(true);
  expect(newToken()).not.toBe(newToken());
  expect(hasToken(undefined, 4710, '')).toBe(false);
  expect(hasToken('vitalwright_4710=a', 4710, 'a')).toBe(true);
  expect(hasToken('vitalwright_4711=a', 4710, 'a')).toBe(false);
});
