import { expect, test } from 'vitest';
import { runCases } from '../../src/index.ts';
import { askable } from '../bundled.ts';

// A case may say which faults of technique it expects: at least these.

const protocol = askable('reading_technique');

/** One case about an adult at 118/74, with what is given beside it and the faults that it expects. */
const run = (given: string, faults: string): ReturnType<typeof runCases> =>
  runCases(
    'cases.yaml',
    `protocol: reading_technique
cases:
  - case: One
    given: { age: 45 y, pregnancy: not_pregnant, systolic: 118, diastolic: 74, ${given} }
    expect: { faults: ${faults} }
`,
    protocol,
  );

const differences = (given: string, faults: string): unknown =>
  run(given, faults).results.flatMap((each) => each.differences.map(({ what, found }) => [what, found]));

test.each([
  ['technique_faults: [talking]', '[talking]'],
  ['technique_faults: [talking, legs_crossed]', '[talking]'],
  ['technique_faults: []', '[]'],
])('%s comes out as expected with %s', (given, faults) => {
  expect(differences(given, faults)).toEqual([]);
});

test.each([
  ['technique_faults: []', '[talking]'],
  ['technique_faults: [legs_crossed]', '[talking]'],
  // What is not known is no fault.
  ['heart_rate: 72', '[talking]'],
])('%s does not have %s', (given, faults) => {
  expect(differences(given, faults)).toEqual([['"talking" a fault that is there', 'no']]);
});

test('the difference stands at the fault that is not there', () => {
  const { problems } = run('technique_faults: [legs_crossed]', '[legs_crossed, talking]');
  expect(problems.map(({ code, line, column }) => [code, line, column])).toEqual([['case_fails', 5, 38]]);
});

test('a fault that the protocol does not have is refused, with the one that was meant', () => {
  const { problems, results } = run('technique_faults: [talking]', '[talkin]');
  expect(problems.map(({ code, says, near_miss }) => [code, says, near_miss])).toEqual([
    ['unknown_fault', 'There is no fault "talkin" in this protocol.', 'talking'],
  ]);
  expect(results).toEqual([]);
});
