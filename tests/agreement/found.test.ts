import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keep, kept, report } from './found.ts';
import { examples, type Example } from './generators.ts';
import { judgedApart } from './judged.ts';
import { targetsApart } from './targets.ts';

test('what is kept is what is asked again', () => {
  const folder = mkdtempSync(join(tmpdir(), 'found-'));
  const [example] = fc.sample(examples(2), { numRuns: 1, seed: 1 });
  if (!example) throw new Error('no example');
  keep(example, 'one', folder);
  expect(kept(folder)).toEqual([['one.json', JSON.parse(JSON.stringify(example))]]);
});

test('a run that fails leaves its counterexample behind', () => {
  const folder = mkdtempSync(join(tmpdir(), 'found-'));
  const details = fc.check(
    fc.property(examples(1), (example: Example) => example.sets.length === 0),
    { numRuns: 1, seed: 1, endOnFailure: true },
  );
  expect(() => report(details, folder)).toThrow(/Kept in .*seed_1_1\.json/);
  expect(kept(folder)).toHaveLength(1);
});

test('every counterexample that was found is none any more', async () => {
  for (const [name, example] of kept()) {
    expect([name, judgedApart(example).wrong]).toEqual([name, []]);
    expect([name, await targetsApart(example)]).toEqual([name, []]);
  }
});
