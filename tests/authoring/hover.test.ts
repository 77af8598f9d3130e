import { expect, test } from 'vitest';
import { hoverAt, type WrittenKind } from '../../src/index.ts';
import { bundledLadder, bundledText } from '../bundled.ts';

const ladder = bundledLadder();
const protocol = bundledText('pressure_reading/protocol.yaml');
const cases = bundledText('pressure_reading/cases.yaml');
const ladderText = bundledText('alder_ladder/ladder.yaml');
const texts: Readonly<Partial<Record<WrittenKind, string>>> = { protocol, cases, ladder: ladderText };

/** What is said of the word after some text, with the word itself. */
function hover(
  kind: WrittenKind,
  before: string,
  text = texts[kind] ?? '',
): { word: string; says: string } | null {
  const at = text.indexOf(before);
  if (at === -1) throw new Error(`"${before}" is not there`);
  const surroundings = { ladder, beside: protocol };
  const found = hoverAt({ kind, text, offset: at + before.length + 1, surroundings });
  return found && { word: text.slice(found.from, found.to), says: found.says.join(' ') };
}

const recorded: readonly (readonly [string, WrittenKind, string, string, readonly string[]])[] = [
  ['a key of the file', 'protocol', '\n', 'protocol', ["The protocol's own name"]],
  [
    'an observation that is needed',
    'protocol',
    'needs: [',
    'systolic',
    ['Systolic pressure, in mmHg, in steps of 1.', 'Possible: 1 to 500 mmHg', 'questioned outside'],
  ],
  ['an observation that is declared in place', 'protocol', '    - ', 'mean_pressure', ['in mmHg']],
  [
    'a yes or no',
    'protocol',
    '    - mean_pressure\n    - oxygen_saturation\n    - ',
    'vasodilator_last_6_h',
    ['yes or no'],
  ],
  ['a standing fact', 'protocol', 'standing:\n  ', 'usual_systolic', ['A standing fact', 'set by']],
  [
    'a limit',
    'protocol',
    'limits:\n  ',
    'systolic_floor',
    ['Lowest acceptable systolic.', 'The limit is 90 mmHg.', 'from 80 to 100 mmHg by: prescriber'],
  ],
  [
    'a measure',
    'protocol',
    'measures:\n  ',
    'pulse_pressure',
    ['Gap between systolic and diastolic.', 'Formula: systolic - diastolic, in mmHg.'],
  ],
  [
    'a curve',
    'protocol',
    'no pressure is ever without an expectation.\n  ',
    'expected_diastolic',
    ['A curve read at systolic, in mmHg.'],
  ],
  ['a name in a formula', 'protocol', 'formula: (systolic - ', 'diastolic', ['Diastolic pressure, in mmHg']],
  [
    'a number that an observation is compared with',
    'protocol',
    'age: { at_least: ',
    '16 y',
    ['Age', 'Possible'],
  ],
  ['a comparison', 'protocol', 'age: { ', 'at_least', ['This or higher.']],
  ['a choice', 'protocol', 'pregnancy: { is: ', 'not_pregnant', ['not pregnant']],
  ['a level', 'protocol', '    level: ', 'emergency_call', ['level 5 of 5', 'Tell: ']],
  [
    'the name of a rule',
    'protocol',
    '  - rule: ',
    'systolic_far_too_low',
    ['Calls for: ', 'Met when systolic'],
  ],
  ['a source', 'protocol', 'source: [', 'early_warning_2017', ['Royal College of Physicians']],
  ['what a case gives', 'cases', 'given: { ', 'age', ['Age']],
  ['a rule that a case expects', 'cases', 'not_met: [open', 'open_while_systolic_holds', ['Met when ']],
  ['a key of a ladder', 'ladder', '    ', 'title', ['read out']],
];

test.each(recorded)('of %s', (_what, kind, before, word, says) => {
  const found = hover(kind, before);
  expect(found?.word).toBe(word);
  for (const each of says) expect(found?.says).toContain(each);
});

test.each([
  ['a comment', 'protocol: a # the na', 'protocol: a # the name\n'],
  ['an empty line', 'a\n', 'protocol: a\n   \nedition: 1\n'],
  ['a sentence', 'says: Some', 'rules:\n  - rule: a\n    says: Some long sentence.\n'],
  ['a name that nothing has', 'when: { ban', 'rules:\n  - rule: a\n    when: { banana: { above: 1 } }\n'],
])('nothing is said of %s', (_what, before, text) => {
  expect(hover('protocol', before, text)).toBeNull();
});

test('what is half-typed has its words too', () => {
  const found = hover(
    'protocol',
    'when: { ',
    'rules:\n  - rule: a\n    when: { systolic: { bel\n    level: x\n',
  );
  expect(found).toMatchObject({ word: 'systolic' });
  expect(found?.says).toContain('Systolic pressure');
});
