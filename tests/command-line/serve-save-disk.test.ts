import { chmodSync, mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import type { FileHandle } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { refusalOf, refusals, type Refusal } from '../../src/command-line/saving/refusals.ts';
import { realDisk, type Disk } from '../../src/command-line/saving/write-whole.ts';
import { before, beforeDigest, digest, everything, openSite, type SaveSite } from './save-site.ts';

/** The disk of the site; each test puts its own in its place. */
let disk: Partial<Disk> = {};
let site: SaveSite;

beforeEach(async () => {
  disk = {};
  site = await openSite({
    disk: {
      open: async (...given) => (disk.open ?? realDisk.open)(...given),
      rename: async (...given) => (disk.rename ?? realDisk.rename)(...given),
      link: async (...given) => (disk.link ?? realDisk.link)(...given),
    },
  });
});

afterEach(async () => site.close());

const fault = (code: string): NodeJS.ErrnoException => Object.assign(new Error(code), { code });
const curve = (): string => join(site.folder, 'lessons', 'a_curve', 'protocol.yaml');

/** A file that can be opened, and of which half is written before the disk is full. */
const fullDisk = (code: string): Disk['open'] =>
  async function open(...given) {
    const handle = await realDisk.open(...given);
    const writeFile: FileHandle['writeFile'] = async (bytes) => {
      const half = (bytes as Buffer).subarray(0, 2);
      await handle.write(half);
      throw fault(code);
    };
    return Object.assign(handle, { writeFile });
  };

test.each<[string, Refusal]>([
  ['ENOSPC', 'no_room'],
  ['EDQUOT', 'no_room'],
  ['EROFS', 'may_not_write'],
  ['EIO', 'failed'],
])(
  'when writing ends with %s, the old file is there, the half one is not, and it is said: %s',
  async (code, why) => {
    const untouched = everything(site.folder);
    disk = { open: fullDisk(code) };
    const { status, body } = await site.save({ text: 'mine' });
    expect([status, body]).toEqual([refusals[why][0], { says: refusals[why][1] }]);
    expect(everything(site.folder)).toEqual(untouched);
    // A new protocol leaves no folder behind either.
    expect((await site.save({ id: 'a/b', text: 'mine', on_disk: null })).status).toBe(refusals[why][0]);
    expect(readdirSync(site.folder).toSorted()).toEqual(['a_ladder', 'a_ward', 'lessons']);
    disk = {};
    expect((await site.save({ text: 'mine' })).status).toBe(200);
  },
);

test('when the last step does not come about, the old file is there and the new one is not', async () => {
  const untouched = everything(site.folder);
  disk = { rename: () => Promise.reject(fault('EPERM')) };
  const { status, body } = await site.save({ text: 'mine' });
  expect([status, body]).toEqual([403, { says: refusals.may_not_write[1] }]);
  expect(everything(site.folder)).toEqual(untouched);
});

test('when something else stands there, not even a draft is written', async () => {
  const opened: string[] = [];
  disk = {
    open: async (...given) => {
      opened.push(given[0]);
      return realDisk.open(...given);
    },
  };
  expect((await site.save({ text: 'mine', on_disk: digest('another') })).status).toBe(409);
  expect((await site.save({ id: 'not_there', text: 'mine' })).status).toBe(409);
  expect(opened).toEqual([]);
  expect((await site.save({ text: 'mine' })).status).toBe(200);
  expect(opened).not.toEqual([]);
});

test('a change between the first look and the last moment is seen, and what stands there is answered', async () => {
  const meanwhile = (text: string, file: string): Disk['open'] =>
    async function open(...given) {
      const handle = await realDisk.open(...given);
      if (given[1] === 'wx') writeFileSync(file, text);
      return handle;
    };
  disk = { open: meanwhile('theirs', curve()) };
  const { status, body } = await site.save({ text: 'mine' });
  expect([status, body]).toEqual([409, { digest: digest('theirs'), text: 'theirs' }]);
  const made = join(site.folder, 'made', 'protocol.yaml');
  disk = { open: meanwhile('theirs', made) };
  const other = await site.save({ id: 'made', text: 'mine', on_disk: null });
  expect([other.status, other.body]).toEqual([409, { digest: digest('theirs'), text: 'theirs' }]);
  expect(everything(site.folder)).toMatchObject({
    'lessons/a_curve/protocol.yaml': 'theirs',
    'made/protocol.yaml': 'theirs',
  });
  expect(Object.keys(everything(site.folder))).toHaveLength(6);
});

test('a new file never takes the place of one that comes at the very last moment', async () => {
  disk = {
    link: async (from, to) => {
      writeFileSync(to, 'theirs');
      return realDisk.link(from, to);
    },
  };
  const { status, body } = await site.save({ id: 'made', text: 'mine', on_disk: null });
  expect([status, body]).toEqual([409, { digest: digest('theirs'), text: 'theirs' }]);
});

test('on a disk that knows no second names a new file is made all the same', async () => {
  disk = { link: () => Promise.reject(fault('ENOTSUP')) };
  expect((await site.save({ id: 'made', text: 'mine', on_disk: null })).status).toBe(200);
  expect(everything(join(site.folder, 'made'))).toEqual({ 'protocol.yaml': 'mine' });
});

/** As somebody who is not the owner of the machine, for whom nothing is forbidden. */
async function asSomebody<T>(task: () => Promise<T>): Promise<T> {
  if (process.getuid?.() !== 0) return task();
  process.seteuid?.(65_534);
  try {
    return await task();
  } finally {
    process.seteuid?.(0);
  }
}

test('a folder or a file that may not be written is said, and nothing is left in it', async () => {
  const untouched = everything(site.folder);
  for (const path of [join(site.folder, '..'), site.folder, join(site.folder, 'lessons')])
    chmodSync(path, 0o755);
  chmodSync(curve(), 0o666);
  chmodSync(join(site.folder, 'lessons', 'a_curve'), 0o555);
  const folder = await asSomebody(async () => site.save({ text: 'mine' }));
  chmodSync(site.folder, 0o555);
  const made = await asSomebody(async () => site.save({ id: 'made', text: 'mine', on_disk: null }));
  chmodSync(site.folder, 0o755);
  chmodSync(join(site.folder, 'lessons', 'a_curve'), 0o777);
  // Others may read it, but not write; for whoever runs this, who owns it, that is another mode.
  chmodSync(curve(), process.getuid?.() === 0 ? 0o644 : 0o000);
  const file = await asSomebody(async () => site.save({ text: 'mine' }));
  chmodSync(curve(), 0o644);
  for (const { status, body } of [folder, made, file]) {
    expect([status, body]).toEqual([403, { says: refusals.may_not_write[1] }]);
  }
  expect(everything(site.folder)).toEqual(untouched);
});

test('a file that nobody may write is not replaced, not even by the owner of the machine', async () => {
  chmodSync(curve(), 0o444);
  const { status, body } = await site.save({ text: 'mine' });
  expect([status, body]).toEqual([403, { says: refusals.may_not_write[1] }]);
  expect(everything(site.folder)['lessons/a_curve/protocol.yaml']).toBe(before);
  expect(statSync(curve()).mode & 0o777).toBe(0o444);
});

test('a file that is too large to be a protocol is not read, and not replaced', async () => {
  writeFileSync(curve(), 'a'.repeat(1_048_577));
  const { status, body } = await site.save({ text: 'mine', on_disk: beforeDigest });
  expect([status, body]).toEqual([403, { says: refusals.too_large_there[1] }]);
  expect(statSync(curve()).size).toBe(1_048_577);
});

test('a served folder that is gone is said, and comes back with nobody’s text lost', async () => {
  const gone = await openSite({ saves: join(site.folder, 'not_there') });
  const { status, body } = await gone.save({ text: 'mine' });
  expect([status, body]).toEqual([500, { says: refusals.failed[1] }]);
  mkdirSync(join(site.folder, 'not_there'));
  expect((await gone.save({ id: 'new', text: 'mine', on_disk: null })).status).toBe(200);
  await gone.close();
});

test('every reason of the system has words, and one that is not known is none that we made up', () => {
  expect(refusalOf(fault('ELOOP'))).toBe('a_link');
  expect(refusalOf(fault('ENOTDIR'))).toBe('not_a_file');
  expect(refusalOf(new Error('x'))).toBe('failed');
  expect(refusalOf('x')).toBe('failed');
});
