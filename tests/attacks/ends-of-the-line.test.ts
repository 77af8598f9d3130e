import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildProgram, type Program } from './program.ts';

// What only a real process has: pipes that close, disks that are full, signals. Whatever happens, it ends soon, without a trace of the
// code, and never with a code that stands for an answer that nobody got.

let program: Program;
const place = mkdtempSync(join(tmpdir(), 'ends-'));
const lesson = 'protocols/lessons/one_threshold';

beforeAll(async () => {
  program = await buildProgram();
});

afterAll(() => {
  program.remove();
  rmSync(place, { recursive: true, force: true });
});

/** Runs a line of the shell, in which `vitalwright` is the program. */
function shell(line: string): { code: number | null; out: string; err: string } {
  const script = `vitalwright() { "${process.execPath}" "${program.file}" "$@"; }\n${line}`;
  const { status, stdout, stderr } = spawnSync('bash', ['-c', script], { encoding: 'utf8', timeout: 50_000 });
  return { code: status, out: stdout, err: stderr };
}

const noTrace = (text: string): void => expect(text).not.toMatch(/^\s+at |Error:|node:|\.js:\d/m);

test.each([
  ['read', `read ${lesson} --set '{}'`],
  ['check', `check ${lesson}`],
  ['check --json', `check ${lesson} --json`],
  ['check --show', `check ${lesson} --show logic`],
  ['build', `build ${lesson} --to typescript`],
  ['read --handoff', `read ${lesson} --set '{}' --handoff`],
  ['--help', '--help'],
  ['--version', '--version'],
])('%s: an answer that a full disk does not take ends with 2 and is said', (_, args) => {
  const { code, err } = shell(`vitalwright ${args} > /dev/full`);
  expect([code, err]).toEqual([
    2,
    'The answer could not be written (ENOSPC): what there is of it is not whole.\n',
  ]);
});

test.each([
  ['read', 'read no_such'],
  ['check', 'check no_such'],
  ['build', 'build no_such --to typescript'],
  ['new', 'new Ward'],
  ['serve', 'serve no_such --port 0'],
  ['seal', 'seal no_such'],
  ['approvers', 'approvers no_such --agreed-by A --minute 7'],
  ['approve', 'approve no_such@1 --as A --role R --minute 7'],
  ['put-in-force', 'put-in-force no_such@1 --by A --because B'],
  ['withdraw', 'withdraw no_such --by A --because B --instead C'],
  ['key', 'key new README.md'],
  ['an unknown call', 'chekc'],
])('%s: a problem that a full disk does not take ends with 2', (_, args) => {
  expect(shell(`vitalwright ${args} 2> /dev/full`)).toEqual({ code: 2, out: '', err: '' });
  expect(shell(`vitalwright ${args} > /dev/full 2>&1`).code).toBe(2);
});

test('a pipe that is closed before the answer is silent, and its code stands for no answer', () => {
  const { out, err } = shell(`vitalwright build ${lesson} --to typescript | true; echo \${PIPESTATUS[0]}`);
  expect(['0\n', '2\n']).toContain(out);
  expect(err).toBe('');
  // A reader that is surely gone.
  const gone = shell(`(sleep 3; vitalwright check ${lesson}; echo $? >&2) | true`);
  expect(gone.err).toBe('2\n');
});

test('the first line of a long answer can be had', () => {
  const { out, err } = shell(`vitalwright check ${lesson} --show document | head -1`);
  expect([out, err]).toEqual(['{\n', '']);
});

test('a set without end is refused when it is longer than any that is read', () => {
  const { code, out, err } = shell(`vitalwright read ${lesson} < /dev/zero`);
  expect([code, out]).toEqual([2, '']);
  expect(err).toMatch(/^NOTHING HAS BEEN READ[^]*longer than 1 MiB/);
});

test.each(['< protocols', '0<&-', '< /dev/null'])('read %s ends with 2 and in words', (from) => {
  const { code, out, err } = shell(`vitalwright read ${lesson} ${from}`);
  expect([code, out]).toEqual([2, '']);
  expect(err).toContain('NOTHING HAS BEEN READ');
  noTrace(err);
});

test('a file that may not grow is not written by half, nor is the old one lost', () => {
  const file = join(place, 'out.ts');
  expect(shell(`vitalwright build ${lesson} --to typescript --out ${file}`).code).toBe(0);
  const before = readFileSync(file, 'utf8');
  for (const args of [
    `build pressure_reading --to typescript --out ${file}`,
    `check ${lesson} --junit ${file}`,
    `build pressure_reading --to json-logic --out ${join(place, 'new.json')}`,
  ]) {
    const { code, out, err } = shell(`ulimit -f 0; vitalwright ${args} 2>&1 | cat; exit \${PIPESTATUS[0]}`);
    expect([code, err]).toEqual([2, '']);
    expect(out).toMatch(/was not written: it cannot be \(EFBIG\)/);
    noTrace(out);
  }
  expect(readFileSync(file, 'utf8')).toBe(before);
  expect(readdirSync(place)).toEqual(['out.ts']);
});

test('a first protocol that finds no room leaves nothing behind', () => {
  const { code, out } = shell(
    `cd ${place}; ulimit -f 0; vitalwright new ward_one 2>&1 | cat; exit \${PIPESTATUS[0]}`,
  );
  expect(code).toBe(2);
  noTrace(out);
  expect(existsSync(join(place, 'ward_one'))).toBe(false);
  expect(readdirSync(place).filter((name) => name.startsWith('.'))).toEqual([]);
});

test.each(['SIGINT', 'SIGTERM'] as const)(
  'read that waits for a set ends on %s without a word',
  async (signal) => {
    const child = spawn(process.execPath, [program.file, 'read', lesson]);
    const said = listen(child);
    await new Promise((resolve) => setTimeout(resolve, 1500));
    child.kill(signal);
    expect(await ended(child)).toEqual([null, signal]);
    expect(said).toEqual({ out: '', err: '' });
  },
);

test.each(['SIGINT', 'SIGTERM'] as const)('serve closes the rooms on %s, and ends with 0', async (signal) => {
  const child = spawn(process.execPath, [program.file, 'serve', `${lesson}/protocol.yaml`, '--port', '0']);
  const said = listen(child);
  await new Promise<void>((resolve) => child.stdout.once('data', () => resolve()));
  const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(said.out)?.[0] ?? '';
  const body = (await (await fetch(`${address}protocols.json`)).json()) as { protocols: { id: string }[] };
  expect(body.protocols.map(({ id }) => id)).toEqual(['one_threshold']);
  child.kill(signal);
  expect(await ended(child)).toEqual([0, null]);
  expect(said.err).toBe('');
});

type Child = ReturnType<typeof spawn>;

function listen(child: Child): { out: string; err: string } {
  const said = { out: '', err: '' };
  child.stdout?.on('data', (part) => (said.out += String(part)));
  child.stderr?.on('data', (part) => (said.err += String(part)));
  return said;
}

const ended = async (child: Child): Promise<unknown[]> =>
  new Promise((resolve) => child.once('close', (code, signal) => resolve([code, signal])));
