import { expect, test } from 'vitest';
import { ask } from './ask.ts';

const set = '{ "at": "2026-03-04T20:10:00Z", "systolic": 88, "heart_rate": { "declined": "asleep" } }';

test('a handoff has its four parts in order, and looks unfinished while only a person knows the rest', async () => {
  const { exit, out } = await ask(['read', 'pressure_reading', '--handoff'], set);
  expect(exit).toBe(0);
  const parts = [
    'UNFINISHED: 6 blanks',
    'SITUATION',
    'BACKGROUND',
    'ASSESSMENT',
    'RECOMMENDATION',
    'paper policy wins',
  ];
  const places = parts.map((part) => out.indexOf(part));
  expect(places).toEqual(places.toSorted((left, right) => left - right));
  expect(places[0]).toBe(0);
  expect(out.match(/\[TO FILL IN: /g)).toHaveLength(6);
});

test('what is not settled is never handed over as settled, and what is missing stands in it', async () => {
  const { out } = await ask(['read', 'pressure_reading', '--handoff'], set);
  expect(out).toContain(
    'Level, not settled: ACT NOW ON: CALL THE DOCTOR. It could be as high as Emergency call.',
  );
  expect(out).toContain('- heart rate: declined (asleep)');
  expect(out).toContain('- temperature: not taken');
  expect(out).toContain('- take: temperature');
  expect(out).toContain('- ask again, as it was declined: heart rate (asleep)');
});

test('a refused value stands first in the assessment', async () => {
  const { out } = await ask(['read', 'pressure_reading', '--handoff'], '{ "systolic": 940 }');
  expect(out).toMatch(/ASSESSMENT\n- NOT USED: .*940/);
});

test('a draft is never handed over as what is in force; of a sealed edition nothing is said that is not known', async () => {
  const draft = await ask(['read', 'pressure_reading', '--handoff'], set);
  expect(draft.out).toMatch(/^A draft, not in force: read as its text stands here/m);
  const sealed = await ask(['read', 'pressure_reading@1', '--handoff'], set);
  expect(sealed.exit).toBe(0);
  expect(sealed.out).not.toContain('in force');
});

test('either JSON or a handoff is printed, not both', async () => {
  const { exit, out } = await ask(['read', 'pressure_reading', '--handoff', '--json'], set);
  expect({ exit, out }).toEqual({ exit: 2, out: '' });
});
