import { mkdirSync, readFileSync, renameSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { compareAndSwap } from '../../src/command-line/saving/compare-and-swap.ts';
import { placeOf } from '../../src/command-line/saving/place.ts';
import { refusals } from '../../src/command-line/saving/refusals.ts';
import { realDisk } from '../../src/command-line/saving/write-whole.ts';
import { before, beforeDigest, digest, everything, openSite, type SaveSite } from './save-site.ts';

let site: SaveSite;
let outside: string;

beforeEach(async () => {
  site = await openSite();
  outside = join(site.folder, '..', 'outside');
});

afterEach(async () => site.close());

const path = (...names: string[]): string => join(site.folder, ...names);

/** Refused whatever the page started from: even who knows the digest of what the link leads to. */
async function expectLinkRefused(id: string, part = 'protocol'): Promise<void> {
  for (const on_disk of [null, beforeDigest, digest('outside')]) {
    const { status, body } = await site.save({ id, part, text: 'mine', on_disk });
    expect([status, body]).toEqual([403, { says: refusals.a_link[1] }]);
  }
  expect(everything(outside)).toEqual({ 'protocol.yaml': 'outside' });
}

test('a folder that is a link out is refused, at every depth', async () => {
  symlinkSync(outside, path('linked'));
  symlinkSync(outside, path('lessons', 'linked'));
  mkdirSync(join(outside, 'deeper'));
  await expectLinkRefused('linked');
  await expectLinkRefused('lessons/linked');
  await expectLinkRefused('linked/deeper');
  await expectLinkRefused('linked/new_one');
});

test('a folder that is a link inside is refused too: what stands there has its own name', async () => {
  symlinkSync(path('lessons'), path('linked'));
  await expectLinkRefused('linked/a_curve');
  expect(readFileSync(path('lessons', 'a_curve', 'protocol.yaml'), 'utf8')).toBe(before);
});

test('a file that is a link is neither followed nor replaced, wherever it leads', async () => {
  const file = path('lessons', 'a_curve', 'protocol.yaml');
  rmSync(file);
  symlinkSync(join(outside, 'protocol.yaml'), file);
  await expectLinkRefused('lessons/a_curve');
  mkdirSync(path('another'));
  symlinkSync(path('a_ward', 'cases.yaml'), path('another', 'protocol.yaml'));
  await expectLinkRefused('another');
  mkdirSync(path('nowhere'));
  symlinkSync(join(outside, 'not_there'), path('nowhere', 'protocol.yaml'));
  await expectLinkRefused('nowhere');
  const cases = path('lessons', 'a_curve', 'cases.yaml');
  rmSync(cases);
  symlinkSync(join(outside, 'protocol.yaml'), cases);
  await expectLinkRefused('lessons/a_curve', 'cases');
});

test('a ward policy that is a link is one all the same: no protocol is made beside it', async () => {
  mkdirSync(path('linked_ward'));
  symlinkSync(path('a_ward', 'ward.yaml'), path('linked_ward', 'ward.yaml'));
  const { status, body } = await site.save({ id: 'linked_ward', text: 'mine', on_disk: null });
  expect([status, body]).toEqual([403, { says: refusals.ward_cases_only[1] }]);
});

test('the served folder itself may be reached by a link', async () => {
  const link = join(outside, '..', 'link_to_protocols');
  symlinkSync(site.folder, link);
  const other = await openSite({ saves: link });
  expect((await other.save({ text: 'mine' })).status).toBe(200);
  expect(readFileSync(path('lessons', 'a_curve', 'protocol.yaml'), 'utf8')).toBe('mine');
  await other.close();
});

test('what is neither a file nor a folder is refused, and nobody waits for it', async () => {
  mkdirSync(path('lessons', 'a_socket'));
  const socket = createServer();
  const its = path('lessons', 'a_socket', 'protocol.yaml');
  await new Promise<void>((resolve) => socket.listen(its, resolve));
  mkdirSync(path('lessons', 'a_folder', 'protocol.yaml'), { recursive: true });
  for (const id of ['lessons/a_socket', 'lessons/a_folder']) {
    const { status, body } = await site.save({ id, text: 'mine', on_disk: null });
    expect([id, status, body]).toEqual([id, 403, { says: refusals.not_a_file[1] }]);
  }
  writeFileSync(path('lessons', 'a_file'), 'no folder');
  const { status } = await site.save({ id: 'lessons/a_file/inside', text: 'mine', on_disk: null });
  expect(status).toBe(403);
  await new Promise((resolve) => socket.close(resolve));
});

test('a folder that becomes a link while something is saved into it is not followed', async () => {
  const found = await placeOf(site.folder, { id: 'lessons/a_curve', part: 'protocol' });
  if (!('file' in found)) throw new Error('no place');
  const disk = {
    ...realDisk,
    open: async (file: string, flags: string, mode?: number) => {
      const handle = await realDisk.open(file, flags, mode);
      if (flags === 'wx') {
        renameSync(path('lessons', 'a_curve'), path('lessons', 'moved'));
        symlinkSync(outside, path('lessons', 'a_curve'));
      }
      return handle;
    },
  };
  expect(await compareAndSwap(found, 'mine', beforeDigest, disk)).toEqual({ refused: 'a_link' });
  expect(everything(outside)).toEqual({ 'protocol.yaml': 'outside' });
  expect(readFileSync(path('lessons', 'moved', 'protocol.yaml'), 'utf8')).toBe(before);
});
