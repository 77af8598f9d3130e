import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { siteBelow } from '../../src/command-line/site-protocols.ts';
import { steps, textOf } from './save-and-die.ts';

let folder: string;
let file: string;
const programs = mkdtempSync(join(tmpdir(), 'vitalwright-kill-program-'));

// One file of plain JavaScript starts in a twentieth of the time.
beforeAll(async () => {
  const ssr = fileURLToPath(new URL('save-and-die.ts', import.meta.url));
  await build({
    configFile: false,
    logLevel: 'error',
    build: { ssr, outDir: programs, rolldownOptions: { output: { entryFileNames: 'save-and-die.mjs' } } },
  });
});

afterAll(() => rmSync(programs, { recursive: true, force: true }));

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'vitalwright-kill-'));
  file = join(folder, 'protocol.yaml');
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the program until it is killed: by itself at a step, or from here after some milliseconds of saving. */
async function killed(step: string, after: number | null): Promise<void> {
  const program = join(programs, 'save-and-die.mjs');
  const child = spawn(process.execPath, [program, file, step], { stdio: ['ignore', 'pipe', 'inherit'] });
  child.stdout.once('data', () => {
    if (after !== null) setTimeout(() => child.kill('SIGKILL'), after);
  });
  const signal = await new Promise((resolve) => child.once('close', (_code, found) => resolve(found)));
  expect(signal).toBe('SIGKILL');
}

/** Which of the texts stands in the file; throws when it is none of them whole. */
function whole(): number {
  const text = readFileSync(file, 'utf8');
  const number = Number.parseInt(text, 10);
  // A comparison that fails would print all of it.
  expect({ number, isWhole: text === textOf(number) }).toEqual({ number, isWhole: true });
  return number;
}

/** Files that a killed save left beside the one that counts. */
const left = (): string[] => readdirSync(folder).filter((name) => name !== 'protocol.yaml');

test.each(steps.filter((step) => !step.startsWith('link')))(
  'a save that is killed when it is %s leaves the old file or the new one, and nothing else is read',
  async (step) => {
    writeFileSync(file, textOf(0));
    await killed(step, null);
    expect(whole()).toBe(step === 'renamed' ? 1 : 0);
    expect(left()).toHaveLength(step === 'renamed' ? 0 : 1);
    const { protocols } = await siteBelow(folder, true);
    expect(protocols.map(({ text }) => text === textOf(step === 'renamed' ? 1 : 0))).toEqual([true]);
    // The next save does not stumble over what is left.
    await killed('renamed', null);
    expect(whole()).toBe(1);
  },
);

test.each(['linking', 'linked'])(
  'a first save that is killed when it is %s leaves no half file',
  async (step) => {
    await killed(step, null);
    expect(existsSync(file)).toBe(step === 'linked');
    expect(left()).toHaveLength(1);
    const { protocols } = await siteBelow(folder, true);
    expect(protocols.map(({ text }) => text === textOf(1))).toEqual(step === 'linked' ? [true] : []);
  },
);

test('a save that is killed at any moment leaves a whole file', async () => {
  writeFileSync(file, textOf(0));
  const found: number[] = [];
  for (const after of [0, 1, 2, 3, 4, 6, 8, 11, 15, 20, 26, 33, 41, 50, 60, 75, 90, 110, 140, 180]) {
    await killed('none', after);
    found.push(whole());
  }
  // Some of them had saved before they were killed; else this would show nothing.
  expect(Math.max(...found)).toBeGreaterThan(1);
}, 120_000);
