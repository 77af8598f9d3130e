import { cpSync, mkdtempSync, readFileSync, writeFileSync, mkdirSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ask } from './ask.ts';
import { bundledText } from '../bundled.ts';

const folder = (): string => mkdtempSync(join(tmpdir(), 'check-'));

/** A folder with the ladder and one protocol, changed. */
function changed(protocol: string, from: string, to: string): string {
  const place = folder();
  for (const name of ['alder_ladder', protocol]) mkdirSync(join(place, name));
  writeFileSync(join(place, 'alder_ladder/ladder.yaml'), bundledText('alder_ladder/ladder.yaml'));
  writeFileSync(join(place, protocol, 'cases.yaml'), bundledText(`${protocol}/cases.yaml`));
  const text = bundledText(`${protocol}/protocol.yaml`);
  expect(text).toContain(from);
  writeFileSync(join(place, protocol, 'protocol.yaml'), text.replace(from, to));
  return place;
}

test('the bundled protocols hold', async () => {
  const { exit, out, err } = await ask(['check']);
  expect(err).toBe('');
  expect(exit).toBe(0);
  expect(out).toContain('pressure_reading');
  expect(out).toContain('All is well');
  // Every case of every protocol, and every sealed edition.
}, 240_000);

test('a case that fails is shown at the line that expects otherwise, and ends with 1', async () => {
  const place = changed('early_warning_score', 'at_most: 8', 'at_most: 7');
  const { exit, err } = await ask(['check', place]);
  expect(exit).toBe(1);
  expect(err).toMatch(/cases\.yaml:\d+:\d+/);
});

test('a mistake is shown at its place with what was meant', async () => {
  const place = changed('early_warning_score', 'needs:', 'neds:');
  const { exit, err } = await ask(['check', place]);
  expect(exit).toBe(1);
  expect(err).toContain('Did you mean "needs"?');
});

test('a ward policy whose review is overdue is told so, and still holds', async () => {
  const place = folder();
  cpSync(new URL('../../protocols', import.meta.url), place, { recursive: true });
  const path = join(place, 'alder_wing/ward.yaml');
  const text = readFileSync(path, 'utf8');
  expect(text).toContain('review_by: 2027-09-30');
  writeFileSync(path, text.replace('review_by: 2027-09-30', 'review_by: 2020-01-31'));
  const { exit, err } = await ask(['check', join(place, 'alder_wing')]);
  expect(err).toMatch(/ward\.yaml:10:\d+.*\n?.*The review was due by 2020-01-31/);
  expect(exit).toBe(0);
});

test('--json prints one document', async () => {
  const { exit, out } = await ask(['check', 'protocols/lessons', '--json']);
  expect(exit).toBe(0);
  const report = JSON.parse(out) as { all_is_well: boolean; files: { cases: unknown[] }[] };
  expect(report.all_is_well).toBe(true);
  expect(report.files).toHaveLength(8);
  expect(report.files.every(({ cases }) => cases.length > 0)).toBe(true);
});

test('--junit writes a test for each case', async () => {
  const file = join(folder(), 'report.xml');
  const { exit } = await ask(['check', 'protocols/lessons/one_threshold', '--junit', file]);
  expect(exit).toBe(0);
  const xml = readFileSync(file, 'utf8');
  expect(xml).toMatch(/^<\?xml/);
  expect(xml.match(/<testcase /g)?.length).toBeGreaterThan(3);
});

test.each(['document', 'logic', 'bounds'])('--show %s prints that stage as JSON', async (stage) => {
  const { exit, out } = await ask(['check', 'protocols/lessons/one_threshold', '--show', stage]);
  expect(exit).toBe(0);
  expect(JSON.parse(out)).toBeTruthy();
});

test.each([
  ['a path that is not there', ['nowhere'], /nowhere/],
  ['a folder with nothing to check', ['schema/problems'], /There is no protocol/],
  ['an unknown stage', ['protocols/lessons/a_score', '--show', 'sausage'], /document, logic, bounds/],
  ['an unknown option', ['--jsom'], /--jsom/],
  [
    'a report that cannot be written',
    ['protocols/lessons/a_score', '--junit', '/nowhere/at/all.xml'],
    /nowhere/,
  ],
])('%s ends with 2', async (_, args, says) => {
  const { exit, err } = await ask(['check', ...args]);
  expect(exit).toBe(2);
  expect(err).toMatch(says);
});

test('a file that is much too large is refused before it is read', async () => {
  const file = join(folder(), 'protocol.yaml');
  writeFileSync(file, 'x'.repeat(2 * 1024 * 1024));
  const { exit, err } = await ask(['check', file]);
  expect(exit).toBe(2);
  expect(err).toContain('larger than 1 MiB');
});

test('a link to itself ends with 2', async () => {
  const file = join(folder(), 'protocol.yaml');
  symlinkSync(file, file);
  expect((await ask(['check', file])).exit).toBe(2);
});
