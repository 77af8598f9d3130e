import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { digestOf, save, type Saved } from '../../editor/src/common/save.ts';
import { refusals } from '../../src/command-line/saving/refusals.ts';
import { before, beforeDigest, digest, openSite, type SaveSite } from '../command-line/save-site.ts';

let site: SaveSite;

/** A page of the rooms: what a browser adds to a request by itself, and the real server behind it. */
async function pageFetch(url: string, { method, headers, body }: RequestInit): Promise<Response> {
  const sent = { url: `/${url}`, headers: headers as Record<string, string>, body: body as string };
  const heard = await site.send(method === undefined ? sent : { ...sent, method });
  return Response.json(heard.body, { status: heard.status });
}

beforeEach(async () => {
  site = await openSite();
  vi.stubGlobal('fetch', pageFetch);
});

afterEach(async () => {
  vi.unstubAllGlobals();
  await site.close();
});

const file = (): string => join(site.folder, 'lessons', 'a_curve', 'protocol.yaml');
const saved = async (
  text: string,
  onDisk: string | null = beforeDigest,
  id = 'lessons/a_curve',
): Promise<Saved> => save({ id, part: 'protocol', text, onDisk });

/** An answer in the place of the server's. */
const answers = (make: () => Promise<Response>): void => void vi.stubGlobal('fetch', make);

test('the digest of a text in a page is that of the file which holds it', () => {
  for (const text of ['', before, 'Größe\r\n🩺', '\uFEFFa', 'a'.repeat(100_000)]) {
    expect(digestOf(text)).toBe(digest(text));
  }
  expect(digestOf('abc')).toBe('sha256:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
});

test('what is saved is told by its digest, which the next save starts from', async () => {
  expect(await saved('mine')).toEqual({ kind: 'saved', digest: digestOf('mine') });
  expect(await saved('again', digestOf('mine'))).toEqual({ kind: 'saved', digest: digestOf('again') });
  expect(readFileSync(file(), 'utf8')).toBe('again');
  expect((await saved('new', null, 'a_new_one')).kind).toBe('saved');
});

test('what somebody else has changed comes back with their text, and a file that is gone with none', async () => {
  writeFileSync(file(), 'theirs');
  expect(await saved('mine')).toEqual({
    kind: 'changed_on_disk',
    digest: digestOf('theirs'),
    text: 'theirs',
  });
  expect(await saved('mine', beforeDigest, 'not_there')).toEqual({
    kind: 'changed_on_disk',
    digest: null,
    text: null,
  });
});

test('a save whose answer was lost is saved when it is asked for once more', async () => {
  await saved('mine');
  expect(await saved('mine')).toEqual({ kind: 'saved', digest: digestOf('mine') });
});

test('a refusal is told in the words of the server', async () => {
  expect(await saved('mine', null, '../outside')).toEqual({ kind: 'refused', says: refusals.no_such_id[1] });
  expect(await saved('half \uD83E')).toEqual({ kind: 'refused', says: refusals.no_unicode[1] });
});

test.each<[string, () => Promise<Response>]>([
  ['no answer', () => Promise.reject(new TypeError('network'))],
  ['no JSON', () => Promise.resolve(new Response('<html>'))],
  ['nothing', () => Promise.resolve(Response.json(null))],
  ['well, without a digest', () => Promise.resolve(Response.json({}))],
  ['a list', () => Promise.resolve(Response.json([], { status: 409 }))],
  ['changed, without a text', () => Promise.resolve(Response.json({ digest: 'sha256:0' }, { status: 409 }))],
  ['another status', () => Promise.resolve(Response.json({ digest: 'sha256:0' }, { status: 201 }))],
])('%s from the server is never taken for saved', async (_, make) => {
  answers(make);
  const { kind, ...rest } = await saved('mine');
  expect(kind).toBe('refused');
  expect(rest).toEqual({ says: expect.stringContaining('Nothing is lost') });
});
