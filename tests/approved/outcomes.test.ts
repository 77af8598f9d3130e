import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { showOutcome } from '../../src/command-line/show-outcome.ts';
import { showWard } from '../../src/command-line/show-ward.ts';
import { evaluateWard, readSet } from '../../src/index.ts';
import { askable, bundledWard } from '../bundled.ts';
import { outcome } from '../outcome/ask.ts';
import { outcomes, type Approved } from './outcomes.ts';
import { wardOutcomes } from './ward-outcomes.ts';

const pathOf = (name: string): string => fileURLToPath(new URL(`${name}.txt`, import.meta.url));

/** `APPROVE=1` writes what is printed now over what was approved; read what changed before you keep it. */
const approving = process.env['APPROVE'] === '1';

/** What is printed. The digest is left out: it changes with every word of a protocol. */
function printed({ protocol, set, width = 80 }: Approved): string {
  const compiled = askable(protocol);
  const text = showOutcome(outcome(compiled, set), compiled.protocol, { width, colour: false });
  return text.replace(/sha256:[0-9a-f]{12}/, 'sha256:(digest)');
}

test.each(outcomes)('$name reads as it was approved', (approved) => {
  const path = pathOf(approved.name);
  const text = printed(approved);
  if (approving) writeFileSync(path, text);
  expect(existsSync(path) ? readFileSync(path, 'utf8') : 'nobody has approved this yet').toBe(text);
});

const ward = bundledWard();

test.each(wardOutcomes)('$name reads as it was approved', ({ name, set, width = 80 }) => {
  const { series } = readSet('set.json', JSON.stringify(set), ward);
  if (!series) throw new Error('the set has problems');
  const shown = showWard(evaluateWard(ward, series), ward, { width, colour: false });
  const text = shown.replace(/sha256:[0-9a-f]{12}/, 'sha256:(digest)');
  const path = pathOf(name);
  if (approving) writeFileSync(path, text);
  expect(existsSync(path) ? readFileSync(path, 'utf8') : 'nobody has approved this yet').toBe(text);
});

test('no approved text is left over', () => {
  const folder = fileURLToPath(new URL('.', import.meta.url));
  const approved = readdirSync(folder).filter((file) => file.endsWith('.txt'));
  const names = [...outcomes, ...wardOutcomes].map(({ name }) => `${name}.txt`);
  expect(approved.toSorted()).toEqual(names.toSorted());
});

test('at least thirty outcomes have been read', () => {
  expect(new Set(outcomes.map(({ name }) => name)).size).toBeGreaterThanOrEqual(30);
});

test('every line fits the terminal', () => {
  for (const approved of outcomes) {
    const long = printed(approved)
      .split('\n')
      .filter((line) => [...line].length > (approved.width ?? 80));
    expect(long, approved.name).toEqual([]);
  }
});
