import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { expect, test } from 'vitest';
import { completionsAt, type Completion, type WrittenKind } from '../../src/index.ts';
import { spliced } from '../../src/authoring/splice.ts';
import { bundledLadder, bundledText } from '../bundled.ts';

// Recorded half-typed files: each with a caret in it, and beside them what is offered there.

interface Expected {
  readonly kind: WrittenKind;
  readonly offers: readonly string[];
  readonly none: readonly string[];
  readonly first?: string;
  readonly insert?: string;
}

const caret = '‸';
const folder = new URL('half-typed/', import.meta.url);
const typed = (name: string): string => readFileSync(new URL(`${name}.yaml`, folder), 'utf8');
const expected = parse(
  readFileSync(new URL('half-typed.expected.yaml', import.meta.url), 'utf8'),
) as Readonly<Record<string, Expected>>;

const ladder = bundledLadder();
const parents = new Map(
  ['a_limit_to_change', 'two_signs_together'].map((name) => {
    const file = `lessons/${name}/protocol.yaml`;
    return [name, { file, text: bundledText(file) }];
  }),
);
const beside = typed('beside.protocol');

function completions(kind: WrittenKind, marked: string): readonly Completion[] {
  const offset = marked.indexOf(caret);
  const text = marked.replace(caret, '');
  return completionsAt({ kind, text, offset, surroundings: { ladder, parents, beside } });
}

test('every recorded file says what is offered in it', () => {
  const names = readdirSync(folder).map((file) => file.replace('.yaml', ''));
  expect(names.filter((name) => name !== 'beside.protocol').sort()).toEqual(Object.keys(expected).sort());
});

test.each(Object.entries(expected))('at the caret of %s', (name, { kind, offers, none, first, insert }) => {
  const found = completions(kind, typed(name));
  const labels = found.map(({ label }) => label);
  expect(labels).toEqual(expect.arrayContaining([...offers]));
  expect(labels.filter((label) => none.includes(label))).toEqual([]);
  if (offers.length === 0) expect(labels).toEqual([]);
  if (first !== undefined) expect(labels[0]).toBe(first);
  if (insert !== undefined) expect(found[0]?.insert).toBe(insert);
  expect(new Set(labels).size).toBe(labels.length);
  expect(found.filter(({ says }) => says === '')).toEqual([]);
});

test('a half-typed word is replaced whole', () => {
  const marked = typed('formula_in_quotes');
  const [first] = completions('protocol', marked);
  const text = marked.replace(caret, '');
  const made = first && spliced(text, [{ from: first.from, to: first.to, text: first.insert }]);
  expect(made).toContain('formula: "(systolic + 2 * diastolic) / 3"\n');
});

test.each([
  [
    'of a number',
    'comparison_of_number',
    'systolic',
    ['in mmHg', 'in steps of 1', 'Possible: 1 to 500 mmHg', 'questioned outside'],
  ],
  [
    'of a limit',
    'limit_on_the_right',
    'mean_floor',
    ['The limit is 65 mmHg.', 'from 55 to 85 mmHg by: prescriber'],
  ],
  ['of a level', 'level_of_rule', 'call_doctor', ['Call the doctor: level 4 of 5', 'Tell: ']],
  [
    'of a rule',
    'rule_in_condition',
    'mean_low',
    [
      'The mean is low.',
      'Calls for: Call the doctor.',
      'Met when estimated mean below lowest mean that is accepted (65 mmHg).',
    ],
  ],
  ['of a choice', 'choice_after_is', 'new_confusion', ['newly confused']],
  ['of a key', 'keys_of_rule', 'because', ['the reasoning that a learner should see']],
])('what is said %s', (_of, name, label, says) => {
  const marked = name === 'comparison_of_number' ? typed('condition_subjects') : typed(name);
  const found = completions('protocol', marked).find((each) => each.label === label);
  for (const part of says) expect(found?.says).toContain(part);
});

test('a key that has its colon already gets no second one', () => {
  const marked = 'protocol: x\nrules:\n  - rule: a\n    lev‸: call_doctor\n';
  expect(completions('protocol', marked)[0]).toMatchObject({ label: 'level', insert: 'level' });
});

test('whatever is typed, and wherever the caret stands, something is answered', () => {
  const text = bundledText('pressure_reading/protocol.yaml');
  for (let at = 0; at < text.length; at += 397) {
    const cut = text.slice(0, at);
    for (const marked of [`${cut}${caret}${text.slice(at)}`, `${cut}${caret}`])
      for (const { from, to } of completions('protocol', marked)) {
        expect(from).toBeLessThanOrEqual(at);
        expect(to).toBeGreaterThanOrEqual(at);
      }
  }
});
