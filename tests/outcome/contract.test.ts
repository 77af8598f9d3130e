import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { readProtocol } from '../../src/index.ts';
import { bundledLadder } from '../bundled.ts';
import { outcome, ruleOf } from './ask.ts';

const example = fileURLToPath(new URL('../document/design-example.yaml', import.meta.url));

const { protocol } = readProtocol('protocol.yaml', readFileSync(example, 'utf8'), {
  ladder: bundledLadder(),
});
if (!protocol) throw new Error('the example is not a protocol');
const made = outcome(protocol, {
  systolic: 104,
  diastolic: 48,
  temperature: { value: 98.1, unit: '[degF]' },
});

test('the example set under the example protocol has the outcome of the contract', () => {
  expect(made).toMatchObject({
    protocol: 'alder_pressure',
    edition: 1,
    at: null,
    applies: 'unsure',
    level: { at_least: 'tell_nurse_in_charge', could_be: 'call_doctor', settled: false },
    take_first: ['respiratory_rate', 'heart_rate'],
    missing: ['age', 'pregnancy', 'heart_rate', 'respiratory_rate'],
    would_tell_more: ['vasodilator_last_6_h'],
    refused: [],
    questioned: [],
    unused: ['temperature'],
  });
  expect(made.digest).toMatch(/^sha256:[0-9a-f]{64}$/);
  expect(made.caution).toContain('paper policy wins');
});

test('its rules stand in the order of the file, each explained', () => {
  expect(made.rules.map(({ rule, state }) => [rule, state])).toEqual([
    ['wide_for_this_systolic', 'met'],
    ['wide_and_working_hard', 'undecided'],
    ['mean_too_low', 'not_met'],
  ]);
  expect(ruleOf(made, 'wide_for_this_systolic').decided_by).toEqual([
    'diastolic shortfall 20.56 mmHg (expected diastolic 68.56 − diastolic 48) is 6.56 above 14; the rule asks for 14 or more',
  ]);
  expect(ruleOf(made, 'wide_and_working_hard').waits_for).toEqual(['heart_rate', 'respiratory_rate']);
  expect(ruleOf(made, 'mean_too_low').decided_by).toEqual([
    'mean estimate 66.67 mmHg ([systolic 104 + 2 × diastolic 48] / 3) is 1.67 above the limit of 65 (mean floor); the rule asks for less than 65',
  ]);
});

test('its measures are exact, or the range that is left', () => {
  expect(made.measures).toMatchObject({
    pulse_pressure: { value: 56, unit: 'mm[Hg]' },
    mean_estimate: { value: 66.666667, exact: '200/3', unit: 'mm[Hg]' },
    expected_diastolic: { value: 68.56 },
    breathing_points: { low: 0, high: 3, waits_for: ['respiratory_rate'] },
  });
});

test('its advice is that of the rule that is met', () => {
  expect(made.advice).toEqual([
    {
      rule: 'wide_for_this_systolic',
      title: 'Wide for this systolic',
      level: 'tell_nurse_in_charge',
      says: 'The diastolic is low for this systolic; it suggests that the vessels are dilated.',
      because: 'Between beats only the tone of the vessels holds the pressure up.',
      ask: ['Is there a source of infection?'],
      do: ['Take a full set now (own authority)'],
    },
  ]);
});
