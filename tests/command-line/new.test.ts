import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

// `new` writes below the folder that it is called in, so it is called as a person would: as a program of its own.

const main = fileURLToPath(new URL('../../src/command-line/main.ts', import.meta.url));
const tsx = fileURLToPath(new URL('../../node_modules/tsx/dist/cli.mjs', import.meta.url));

function call(cwd: string, ...args: string[]): { status: number | null; stdout: string; stderr: string } {
  return spawnSync(process.execPath, [tsx, main, ...args], { cwd, encoding: 'utf8' });
}

const folder = (): string => mkdtempSync(join(tmpdir(), 'new-'));

test('a new protocol in an empty folder passes the check', () => {
  const place = folder();
  expect(call(place, 'new', 'ward_pressure').status).toBe(0);
  expect(readdirSync(join(place, 'ward_pressure')).sort()).toEqual([
    'cases.yaml',
    'ladder.yaml',
    'protocol.yaml',
  ]);
  const { status, stdout, stderr } = call(place, 'check', 'ward_pressure');
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(stdout).toContain('7 of 7 cases as expected');
});

test('below protocols/ it is found by its name', () => {
  const place = folder();
  mkdirSync(join(place, 'protocols'));
  expect(call(place, 'new', 'ward_pressure').status).toBe(0);
  const { status, stdout } = call(place, 'read', 'ward_pressure', '--set', '{}', '--json');
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({ protocol: 'ward_pressure' });
});

test('beside the schemas each file names its own in its first line; elsewhere none does', () => {
  const [near, far] = [folder(), folder()];
  for (const name of ['protocols', 'schema']) mkdirSync(join(near, name));
  writeFileSync(join(near, 'schema', 'protocol.schema.json'), '{}');
  for (const place of [near, far]) expect(call(place, 'new', 'ward_pressure').status).toBe(0);
  for (const kind of ['protocol', 'cases', 'ladder']) {
    const [here, there] = [join(near, 'protocols', 'ward_pressure'), join(far, 'ward_pressure')].map((each) =>
      readFileSync(join(each, `${kind}.yaml`), 'utf8'),
    );
    const line = `# yaml-language-server: $schema=../../schema/${kind}.schema.json\n`;
    expect(here).toBe(`${line}${there}`);
  }
});

test('what is there already stays as it is', () => {
  const place = folder();
  mkdirSync(join(place, 'mine'));
  writeFileSync(join(place, 'mine', 'protocol.yaml'), 'mine');
  expect(call(place, 'new', 'mine').status).toBe(2);
  expect(readdirSync(join(place, 'mine'))).toEqual(['protocol.yaml']);
});

test.each(['', 'Ward', '../ward', 'ward-1', 'all'])('"%s" is no name', (name) => {
  const place = folder();
  expect(call(place, 'new', name).status).toBe(2);
  expect(readdirSync(place)).toEqual([]);
});
