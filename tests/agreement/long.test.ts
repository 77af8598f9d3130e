import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { drawFrom } from './draw.ts';
import { kept } from './found.ts';
import { longRun, type LongRun } from './long.ts';
import { drawAgain, noting, smallest, wholeFrom, type Drawn } from './seeded.ts';

/** A short run of the long loop, and what it prints. */
function run(more: Partial<LongRun>): { readonly done: Promise<boolean>; readonly printed: string[] } {
  const printed: string[] = [];
  const folder = mkdtempSync(join(tmpdir(), 'found-'));
  let now = 0;
  const clock = (): number => (now += 1000);
  const print = (text: string): void => void printed.push(text);
  const done = longRun({ seed: 11, protocols: 3, sets: 30, folder, shrinkFor: 20, print, clock, ...more });
  return { done, printed };
}

test('the long run goes through every protocol and set, and says how it goes', async () => {
  const { done, printed } = run({});
  expect(await done).toBe(true);
  expect(printed.at(0)).toMatch(/^0 protocols, \d+ sets, 1 sets a second, 0 excused\n$/);
  expect(printed.at(-1)).toContain('3 protocols, 90 sets, ');
});

test('what differs ends it; it is made small, told and kept', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'found-'));
  // A planted fault: whatever is asked of a protocol with a curve.
  const also: LongRun['also'] = ({ made }) => (made.text.includes('curve:') ? ['a curve is there'] : []);
  const { done, printed } = run({ protocols: 40, sets: 2, folder, also });
  expect(await done).toBe(false);
  const [[name, example] = []] = kept(folder);
  expect(name).toMatch(/^seed_11_protocol_\d+\.json$/);
  expect(example?.made.text).toContain('curve:');
  expect(example?.made.subjects.length).toBeLessThanOrEqual(2);
  expect(example?.made.protocol.rules).toHaveLength(2);
  expect(printed.join('')).toContain('a curve is there');
});

test('the same seed draws the same, another draws something else', () => {
  const draws = (seed: number): number[] => Array.from({ length: 50 }, () => whole(seed)(0, 99));
  const made = new Map<number, ReturnType<typeof wholeFrom>>();
  const whole = (seed: number): ReturnType<typeof wholeFrom> => {
    const known = made.get(seed) ?? wholeFrom(seed);
    made.set(seed, known);
    return known;
  };
  const first = draws(1);
  made.clear();
  expect(draws(1)).toEqual(first);
  expect(draws(2)).not.toEqual(first);
});

test('every whole number between two comes, about as often as any other', () => {
  const whole = wholeFrom(5);
  const seen = new Map<number, number>();
  for (let count = 0; count < 7000; count += 1) {
    const value = whole(-3, 3);
    seen.set(value, (seen.get(value) ?? 0) + 1);
  }
  expect([...seen.keys()].sort((a, b) => a - b)).toEqual([-3, -2, -1, 0, 1, 2, 3]);
  for (const times of seen.values()) expect(Math.abs(times - 1000)).toBeLessThan(150);
});

test('draws that are noted are drawn again, and made as small as they still fail', async () => {
  const noted: Drawn[] = [];
  const sum = (draw: ReturnType<typeof drawFrom>): number => draw.whole(0, 50) + draw.whole(10, 60);
  const first = sum(drawFrom(noting(wholeFrom(7), noted)));
  expect(noted).toHaveLength(2);
  expect(sum(drawAgain(noted.map(({ value }) => value)))).toBe(first);
  const values = await smallest(
    [
      { first: 0, last: 50, value: 40 },
      { first: 10, last: 60, value: 55 },
    ],
    (draw) => Promise.resolve(sum(draw) > 30),
    20,
  );
  expect(sum(drawAgain(values))).toBe(31);
});
