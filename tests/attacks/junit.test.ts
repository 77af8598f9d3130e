import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import type { FileReport } from '../../src/command-line/file-report.ts';
import { reportToJunit } from '../../src/command-line/report-to-junit.ts';
import type { Problem } from '../../src/problems/problem.ts';
import { refusedTexts, takenTexts } from './texts.ts';

interface Element {
  readonly name: string;
  readonly attr: Readonly<Record<string, string>>;
  readonly val: string;
  childrenNamed(name: string): Element[];
}

/** A strict reader of XML, which comes with the judge of units: it throws at anything that is not well formed. */
const ownersRequire = createRequire(createRequire(import.meta.url).resolve('@lhncbc/ucum-lhc'));
const { XmlDocument } = ownersRequire('xmldoc') as { XmlDocument: new (xml: string) => Element };

/** What XML cannot hold: half a character, and control characters other than tab and line end. */
const isHeld = (letter: string): boolean =>
  !/^[\p{Surrogate}\uffff]$/u.test(letter) && (letter >= ' ' || '\t\n\r'.includes(letter));

const held = (text: string): string => [...text].filter(isHeld).join('');

const problem = (says: string): Problem => ({
  code: 'text_empty',
  severity: 'error',
  file: says,
  line: 1,
  column: 1,
  source: says,
  length: 1,
  says,
  expected: null,
  near_miss: null,
});

const report = (text: string): FileReport => ({
  file: text,
  kind: 'protocol',
  name: text,
  edition: 1,
  rules: 1,
  problems: [problem(text)],
  cases: [
    { name: text, differences: [] },
    { name: text, differences: [{ what: text, path: [], expected: text, found: text }] },
  ],
});

test.each([...takenTexts, ...refusedTexts, 'a\ud800b', 'a\uffffb', 'a\nb\tc'])(
  '%j stays the text that it is',
  (text) => {
    const xml = reportToJunit([report(text)]);
    const root = new XmlDocument(xml);
    // The one thing that the reader forgives.
    expect(xml).not.toMatch(/="[^"]*</);
    expect(root.name).toBe('testsuites');
    const [suite, ...others] = root.childrenNamed('testsuite');
    expect(others).toEqual([]);
    const whole = held(text);
    expect(suite?.attr).toEqual({ name: whole, tests: '3', failures: '2' });
    const cases = suite?.childrenNamed('testcase') ?? [];
    expect(cases.map(({ attr }) => attr['name'])).toEqual(['the file itself', whole, whole]);
    const failures = cases.map((each) => each.childrenNamed('failure').map(({ val }) => val));
    expect(failures).toEqual([[`line 1: ${whole}`], [], [`${whole}: expected ${whole}, found ${whole}`]]);
  },
);

test.each([
  ['<a><b></a>', 'Unexpected close tag'],
  ['<a>&nothing;</a>', 'Invalid character entity'],
  ['<a x=1/>', 'Unquoted attribute value'],
])('the reader is strict: %s', (xml, says) => {
  expect(() => new XmlDocument(xml)).toThrow(says);
});
