import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { ask } from './ask.ts';

const folder = (): string => mkdtempSync(join(tmpdir(), 'build-'));
const lesson = 'lessons/one_threshold';
const to = (...more: string[]): string[] => ['build', lesson, '--to', 'json-logic', ...more];

test('without --out it goes to standard output', async () => {
  const { exit, out, err } = await ask(to());
  expect([exit, err]).toEqual([0, '']);
  expect(JSON.parse(out)).toMatchObject({ logic: 1, protocol: 'one_threshold' });
});

test('with --out the file holds the same, and nothing is left beside it', async () => {
  const place = folder();
  const file = join(place, 'one.json');
  expect(await ask(to('--out', file))).toEqual({ exit: 0, out: '', err: '' });
  expect(readFileSync(file, 'utf8')).toBe((await ask(to())).out);
  expect(readdirSync(place)).toEqual(['one.json']);
});

test('a file that is there is replaced whole, with the rights that it has', async () => {
  const file = join(folder(), 'one.json');
  writeFileSync(file, 'x'.repeat(100_000));
  chmodSync(file, 0o600);
  expect((await ask(to('--out', file))).exit).toBe(0);
  expect(JSON.parse(readFileSync(file, 'utf8'))).toMatchObject({ logic: 1 });
  expect(statSync(file).mode & 0o777).toBe(0o600);
});

test('a link stays a link, and what it leads to is replaced', async () => {
  const place = folder();
  const [file, link] = [join(place, 'one.json'), join(place, 'link.json')];
  writeFileSync(file, 'old');
  symlinkSync(file, link);
  expect((await ask(to('--out', link))).exit).toBe(0);
  expect(readFileSync(file, 'utf8')).toContain('"logic": 1');
  expect(readdirSync(place).sort()).toEqual(['link.json', 'one.json']);
});

test.each([
  [['build'], 'One protocol is to be named'],
  [['build', lesson, 'second', '--to', 'json-logic'], 'One protocol is to be named'],
  [['build', 'no_such', '--to', 'json-logic'], 'There is no protocol "no_such"'],
  [['build', lesson], '--to takes json-logic'],
  [['build', lesson, '--to', 'yaml'], '--to takes json-logic'],
  [['build', lesson, '--to', 'toString'], '--to takes json-logic'],
  [['build', lesson, '--into', 'x'], "Unknown option '--into'"],
  [['build', lesson, '--to', 'json-logic', '--out'], '--out'],
  [['build', 'alder_wing', '--to', 'json-logic'], 'is a ward policy'],
  [
    ['build', lesson, '--to', 'json-logic', '--out', 'protocols'],
    'protocols was not written: it is a folder',
  ],
  [['build', lesson, '--to', 'json-logic', '--out', 'no/such/place.json'], 'its folder is not there'],
  [['build', lesson, '--to', 'json-logic', '--out', 'README.md/x.json'], 'is a file'],
  [['build', lesson, '--to', 'json-logic', '--out', '/dev/null'], 'neither a file nor free'],
  [['build', lesson, '--to', 'json-logic', '--out', ''], 'was not written'],
])('%j cannot be asked, and says why', async (args, why) => {
  const { exit, out, err } = await ask(args);
  expect(err).toContain(why);
  expect([exit, out]).toEqual([2, '']);
});

test('of a protocol with errors nothing is written', async () => {
  const place = folder();
  writeFileSync(join(place, 'protocol.yaml'), 'protocol: broken\n');
  const out = join(place, 'out.json');
  expect((await ask(['build', place, '--to', 'json-logic', '--out', out])).exit).toBe(2);
  expect(existsSync(out)).toBe(false);
});

test('the page about JSON Logic shows what runs', async () => {
  const place = folder();
  await ask(to('--out', join(place, 'one_threshold.json')));
  const script = fileURLToPath(new URL('../targets/json-logic/as-documented.mjs', import.meta.url));
  const { stdout, stderr } = spawnSync(process.execPath, [script], { cwd: place, encoding: 'utf8' });
  expect(stderr).toBe('');
  expect(JSON.parse(stdout)).toMatchObject({
    refused: [],
    level: { at_least: 'call_doctor', settled: true },
  });
});

test('a protocol with look backs and faults of technique is not built: one set does not tell which earlier ones had a fault', async () => {
  const place = folder();
  const text = readFileSync('protocols/lessons/a_look_back/protocol.yaml', 'utf8');
  copyFileSync('protocols/alder_ladder/ladder.yaml', join(place, 'ladder.yaml'));
  const fault = `faults:
  - { fault: rough, when: { systolic: { above: 200 } }, reads_high: { systolic: 20 }, says: It may be lower., source: [lesson] }
rules:`;
  writeFileSync(join(place, 'protocol.yaml'), text.replace(/^rules:/m, fault));
  const { exit, out, err } = await ask(['build', place, '--to', 'typescript']);
  expect([exit, out]).toEqual([2, '']);
  expect(err).toContain('looks back over sets that may have faults of technique');
});
