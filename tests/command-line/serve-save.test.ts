import { chmodSync, existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { before, beforeDigest, digest, everything, openSite, type SaveSite } from './save-site.ts';

let site: SaveSite;

beforeEach(async () => {
  site = await openSite();
});

afterEach(async () => site.close());

const curve = (): string => join(site.folder, 'lessons', 'a_curve', 'protocol.yaml');

test('a text takes the place of the one that the page started from, byte for byte, and its digest is told', async () => {
  const text = '\uFEFFprotocol: a_curve\r\ntitle: "Größe 🩺 \\ \\"quoted\\""\n\n  \t';
  const { status, headers, body } = await site.save({ text });
  expect([status, body]).toEqual([200, { digest: digest(text) }]);
  expect(readFileSync(curve())).toEqual(Buffer.from(text));
  expect(headers['content-security-policy']).toContain(`default-src 'none'`);
  expect(headers['content-type']).toBe('application/json; charset=utf-8');
  // What was just saved is what the next save starts from.
  expect((await site.save({ text: 'next', on_disk: digest(text) })).status).toBe(200);
  expect(Object.keys(everything(site.folder))).toHaveLength(5);
});

test('a text with problems of the language, or an empty one, is saved as the draft that it is', async () => {
  expect((await site.save({ text: 'rules: [[[ \u200b\u0001' })).status).toBe(200);
  expect((await site.save({ text: '', on_disk: digest('rules: [[[ \u200b\u0001') })).status).toBe(200);
  expect(readFileSync(curve(), 'utf8')).toBe('');
});

test('a file that was changed since is left as it is, and what stands there is answered', async () => {
  writeFileSync(curve(), 'changed by somebody else');
  const { status, body } = await site.save({ text: 'mine' });
  expect(status).toBe(409);
  expect(body).toEqual({ digest: digest('changed by somebody else'), text: 'changed by somebody else' });
  expect(readFileSync(curve(), 'utf8')).toBe('changed by somebody else');
});

test('a file that is gone is not made again unasked; a new file never takes the place of one', async () => {
  rmSync(curve());
  const gone = await site.save({ text: 'mine' });
  expect([gone.status, gone.body]).toEqual([409, { digest: null, text: null }]);
  expect(existsSync(curve())).toBe(false);
  expect((await site.save({ text: 'mine', on_disk: null })).status).toBe(200);
  const there = await site.save({ text: 'another', on_disk: null });
  expect([there.status, there.body]).toEqual([409, { digest: digest('mine'), text: 'mine' }]);
});

test('bytes that are no UTF-8 are answered as what they look like, and with the digest of what they are', async () => {
  const bytes = Buffer.from([0x61, 0xff, 0x62]);
  writeFileSync(curve(), bytes);
  const { status, body } = await site.save({ text: 'mine', on_disk: digest('a\uFFFDb') });
  expect(status).toBe(409);
  expect(body).toMatchObject({ text: 'a\uFFFDb' });
  const { digest: theirs } = body as { digest: string };
  expect(theirs).not.toBe(digest('a\uFFFDb'));
  expect((await site.save({ text: 'mine', on_disk: theirs })).status).toBe(200);
});

test('a new protocol gets its folder, and those around it; then it can have cases', async () => {
  const early = await site.save({ id: 'ward_5/a_new_one', part: 'cases', text: 'cases', on_disk: null });
  expect(early.status).toBe(403);
  expect(early.body).toMatchObject({ says: expect.stringContaining('Save the protocol first') });
  expect(existsSync(join(site.folder, 'ward_5'))).toBe(false);
  for (const part of ['protocol', 'cases']) {
    const { status } = await site.save({ id: 'ward_5/a_new_one', part, text: part, on_disk: null });
    expect(status).toBe(200);
  }
  expect(everything(join(site.folder, 'ward_5'))).toEqual({
    'a_new_one/cases.yaml': 'cases',
    'a_new_one/protocol.yaml': 'protocol',
  });
});

test('of a ward policy only the cases are saved', async () => {
  const policy = await site.save({ id: 'a_ward', part: 'protocol', text: 'x', on_disk: null });
  expect([policy.status, policy.body]).toEqual([403, { says: expect.stringContaining('only its cases') }]);
  const cases = await site.save({
    id: 'a_ward',
    part: 'cases',
    text: 'x',
    on_disk: digest('ward: a_ward\n'),
  });
  expect(cases.status).toBe(200);
  expect(everything(join(site.folder, 'a_ward'))).toEqual({
    'cases.yaml': 'x',
    'ward.yaml': 'ward: a_ward\n',
  });
});

test('cases are saved beside a protocol alone: not in a folder of folders, nor beside a ladder', async () => {
  for (const id of ['lessons', 'a_ladder', 'nothing_here']) {
    const { status } = await site.save({ id, part: 'cases', text: 'x', on_disk: null });
    expect([id, status]).toEqual([id, 403]);
  }
});

test('what may be done with a file stays as it was, whatever is usual for a new one', async () => {
  const usual = process.umask(0o077);
  try {
    chmodSync(curve(), 0o664);
    expect((await site.save({ text: 'mine' })).status).toBe(200);
    expect(statSync(curve()).mode & 0o777).toBe(0o664);
    chmodSync(curve(), 0o600);
    process.umask(0o022);
    expect((await site.save({ text: 'again', on_disk: digest('mine') })).status).toBe(200);
    expect(statSync(curve()).mode & 0o777).toBe(0o600);
    expect((await site.save({ id: 'new', text: 'new', on_disk: null })).status).toBe(200);
    expect(statSync(join(site.folder, 'new', 'protocol.yaml')).mode & 0o777).toBe(0o644);
  } finally {
    process.umask(usual);
  }
});

test('a folder that is a protocol itself is saved into by its own name, unless two have that name', async () => {
  const own = await openSite({ saves: join(site.folder, 'lessons', 'a_curve') });
  expect((await own.save({ id: 'a_curve', text: 'mine' })).status).toBe(200);
  expect(readFileSync(curve(), 'utf8')).toBe('mine');
  mkdirSync(join(site.folder, 'lessons', 'a_curve', 'a_curve'));
  writeFileSync(join(site.folder, 'lessons', 'a_curve', 'a_curve', 'protocol.yaml'), before);
  const { status, body } = await own.save({ id: 'a_curve', text: 'mine', on_disk: beforeDigest });
  expect([status, body]).toEqual([403, { says: expect.stringContaining('Two protocols') }]);
  await own.close();
});

test('of fifty saves at once one wins, and the file is whole, round after round', async () => {
  let onDisk: string | null = beforeDigest;
  for (const round of [1, 2, 3, 4]) {
    const texts = Array.from({ length: 50 }, (_, index) => `${round}.${index} `.repeat(2000 + index));
    const found = await Promise.all(texts.map(async (text) => site.save({ text, on_disk: onDisk })));
    const won = found.flatMap(({ status }, index) => (status === 200 ? [texts[index] ?? ''] : []));
    expect(won).toHaveLength(1);
    expect(found.filter(({ status }) => status === 409)).toHaveLength(49);
    expect(readFileSync(curve(), 'utf8')).toBe(won[0]);
    onDisk = digest(won[0] ?? '');
  }
  expect(Object.keys(everything(site.folder))).toHaveLength(5);
}, 120_000);

test('of fifty new protocols of one name one is made, and of two in one new folder both are', async () => {
  const texts = Array.from({ length: 50 }, (_, index) => `new ${index}`);
  const found = await Promise.all(texts.map(async (text) => site.save({ id: 'a/b', text, on_disk: null })));
  expect(found.filter(({ status }) => status === 200)).toHaveLength(1);
  expect(found.filter(({ status }) => status === 409)).toHaveLength(49);
  const both = await Promise.all(
    ['x/one', 'x/two'].map(async (id) => site.save({ id, text: id, on_disk: null })),
  );
  expect(both.map(({ status }) => status)).toEqual([200, 200]);
});
