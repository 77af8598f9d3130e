import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { addCase, readDocument, spliced } from '../../src/index.ts';
import { bundledNames, bundledText, lessonNames } from '../bundled.ts';

const proposed = [
  '  - case: A new one',
  '    given: { systolic: 88 }',
  '    expect:',
  '      level: { at_least: call_doctor }',
  '',
].join('\n');
const head = { protocol: 'drain_watch' };
const asData = { case: 'A new one', given: { systolic: 88 }, expect: { level: { at_least: 'call_doctor' } } };

function added(text: string): string | null {
  const splices = addCase(text, proposed, head);
  return splices && spliced(text, splices);
}

test.each([...bundledNames, ...lessonNames])(
  'a case is added to the cases of %s, and nothing else changes',
  (name) => {
    for (const end of ['\n', '\r\n']) {
      const text = bundledText(`${name}/cases.yaml`).replaceAll('\n', end);
      const splices = addCase(text, proposed, head) ?? [];
      expect(splices).toHaveLength(1);
      expect(splices[0]?.from).toBe(splices[0]?.to);
      const made = spliced(text, splices);
      const before = parse(text) as { cases: unknown[] };
      expect(parse(made)).toEqual({ ...before, cases: [...before.cases, asData] });
      expect(made.replaceAll(end, '').includes('\n')).toBe(false);
      expect(readDocument('cases.yaml', made).problems).toEqual([]);
    }
  },
);

const one = '- case: A new one';

test.each([
  ['an empty text', '', `protocol: drain_watch\ncases:\n  ${one}\n`],
  ['a comment alone', '# Ours', `# Ours\nprotocol: drain_watch\ncases:\n  ${one}\n`],
  ['a file without cases yet', 'protocol: drain_watch\ncases:\n', `cases:\n  ${one}\n`],
  ['an empty list', 'protocol: drain_watch\ncases: [] # none yet\n', `cases: # none yet\n  ${one}\n`],
  ['dashes below the key', 'cases:\n- case: a\n  expect: {}\n', `  expect: {}\n\n${one}\n  given:`],
  [
    'dashes far to the right',
    'cases:\n    - case: a\n      x: 1 # why\n',
    `x: 1 # why\n\n    ${one}\n      given:`,
  ],
  ['cases without empty lines between', 'cases:\n  - case: a\n  - case: b\n', `  - case: b\n  ${one}\n`],
  ['cases with empty lines between', 'cases:\n  - case: a\n\n  - case: b\n', `  - case: b\n\n  ${one}\n`],
  ['no end of the last line', 'cases:\n  - case: a', `  - case: a\n\n  ${one}\n`],
  ['something after the cases', 'cases:\n  - case: a\nunguarded: []\n', `  - case: a\n\n  ${one}\n`],
])('a case is added to %s', (_what, text, part) => {
  const made = added(text);
  expect(made).toContain(part);
  const { cases } = parse(made ?? '') as { cases: unknown[] };
  expect(cases.at(-1)).toEqual(asData);
});

test.each([
  ['cannot be read', 'cases: [\n'],
  ['has its cases in brackets', 'cases: [{ case: a }]\n'],
  ['has something else in their place', 'cases: none\n'],
  ['has no place for them', 'protocol: drain_watch\n'],
])('no case is added to a file that %s', (_what, text) => {
  expect(added(text)).toBeNull();
});

test('the cases of a ward have the ward at their head', () => {
  const splices = addCase('', proposed, { ward: 'small_wing' });
  expect(splices?.[0]?.text).toMatch(/^ward: small_wing\ncases:\n/);
});
