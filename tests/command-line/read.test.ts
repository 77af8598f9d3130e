import { expect, test } from 'vitest';
import type { Outcome } from '../../src/shape/generated/types.ts';
import { ask } from './ask.ts';

const adult = '"age": { "value": 58, "unit": "a" }, "pregnancy": "not_pregnant"';

async function outcome(set: string, protocol = 'pressure_reading'): Promise<Outcome> {
  const { exit, out } = await ask(['read', protocol, '--set', set, '--json']);
  expect(exit).toBe(0);
  return JSON.parse(out) as Outcome;
}

test('an empty set is not settled at the lowest level', async () => {
  const { level } = await outcome('{}', 'protocols/pressure_reading');
  expect(level?.at_least).toBeNull();
  expect(level?.settled).toBe(false);
});

test('a systolic of 42 escalates, and is questioned before anything else is said', async () => {
  const { level, questioned } = await outcome(`{ ${adult}, "systolic": 42 }`);
  expect(level?.at_least).toBe('emergency_call');
  expect(questioned[0]?.observation).toBe('systolic');
  const { out } = await ask(['read', 'pressure_reading', '--set', `{ ${adult}, "systolic": 42 }`]);
  expect(out.indexOf('42')).toBeLessThan(out.indexOf('Emergency'));
});

test('a set on standard input is read as one in --set', async () => {
  const set = `{ ${adult}, "systolic": 104, "diastolic": 48 }`;
  const given = await ask(['read', 'pressure_reading', '--set', set, '--json']);
  expect(await ask(['read', 'pressure_reading', '--json'], set)).toEqual(given);
});

test.each([
  ['a key twice', '{ "systolic": 104, "systolic": 48 }', /twice/],
  ['an unknown key', '{ "systolik": 104 }', /Did you mean "systolic"/],
  ['text where a number belongs', '{ "systolic": "104" }', /systolic/],
  ['no JSON at all', 'systolic 104', /JSON/],
  ['nothing', '', /./],
  ['a list', '[104, 48]', /./],
  ['a comment', '{ "systolic": 104 /* left arm */ }', /./],
  ['an unknown choice', '{ "consciousness": "sleepy" }', /consciousness/],
  ['a unit in the trade’s words', '{ "temperature": { "value": 98.1, "unit": "°F" } }', /degF/],
])('%s ends with 2, says why, and gives no outcome', async (_, set, says) => {
  const { exit, out, err } = await ask(['read', 'pressure_reading', '--set', set]);
  expect(exit).toBe(2);
  expect(out).toBe('');
  expect(err).toMatch(says);
});

test('a value that no body has is refused in the outcome, first of all, and ends with 0', async () => {
  const { exit, out } = await ask(['read', 'pressure_reading', '--set', `{ ${adult}, "systolic": 940 }`]);
  expect(exit).toBe(0);
  expect(out.split('\n').slice(0, 6).join(' ')).toContain('940');
});

test.each([
  ['no protocol', [], /One protocol/],
  ['an unknown protocol', ['pressure_readin'], /no protocol "pressure_readin"/],
  ['two protocols', ['pressure_reading', 'early_warning_score'], /One protocol/],
  ['an unknown option', ['pressure_reading', '--jsno'], /--jsno/],
  ['a folder without a protocol', ['tests'], /no protocol "tests"/],
])('%s ends with 2', async (_, args, says) => {
  const { exit, err } = await ask(['read', ...args], '{}');
  expect(exit).toBe(2);
  expect(err).toMatch(says);
});
