import { expect, test } from 'vitest';
import { mendsOf } from '../../src/authoring/mends-of.ts';
import { spliced } from '../../src/authoring/splice.ts';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import type { Problem } from '../../src/problems/problem.ts';
import { readLadder } from '../../src/index.ts';
import { examples, problemsOf, wholeText } from '../problems/pages.ts';

interface Mended {
  readonly name: string;
  readonly before: readonly Problem[];
  readonly problem: Problem;
  readonly after: readonly Problem[];
  readonly text: string;
}

/** Every mend of every example of a problem, made. */
const mended: readonly Mended[] = examples
  .filter(({ found }) => found)
  .flatMap(({ name, of, parents, text: example }) => {
    const text = wholeText(of, example);
    const before = problemsOf(of, text, parents);
    return before.flatMap((problem) =>
      mendsOf(problem, text, (made) => problemsOf(of, made, parents)).map(({ splices }) => {
        const made = spliced(text, splices);
        return {
          name: `${name}, ${problem.code}`,
          before,
          problem,
          text: made,
          after: problemsOf(of, made, parents),
        };
      }),
    );
  });

const keyOf = ({ code, says }: Problem): string => `${code}: ${says}`;

/** Problems of which there are more than before. */
function added(before: readonly Problem[], after: readonly Problem[]): string[] {
  const left = before.map(keyOf);
  return after.map(keyOf).filter((each) => {
    const at = left.indexOf(each);
    if (at !== -1) left.splice(at, 1);
    return at === -1;
  });
}

test('there are mends for many sorts of problems', () => {
  const codes = new Set(mended.map(({ problem }) => problem.code));
  expect([...codes].sort()).toMatchInlineSnapshot(`
    [
      "is_of_several",
      "limit_not_of_parent",
      "limit_without_unit",
      "parent_not_found",
      "rule_not_of_parent",
      "unknown_action",
      "unknown_change",
      "unknown_choice",
      "unknown_hazard",
      "unknown_level",
      "unknown_name",
      "unknown_number",
      "unknown_observation",
      "unknown_source",
      "unknown_unit",
      "ward_protocol_not_found",
    ]
  `);
});

test.each(mended)('in the example that $name, the mend takes the problem away and brings none', (each) => {
  expect(added(each.before, each.after), each.text).toEqual([]);
  expect(each.after.length).toBeLessThan(each.before.length);
  expect(each.after.filter(({ code }) => code === each.problem.code).length).toBe(
    each.before.filter(({ code }) => code === each.problem.code).length - 1,
  );
});

test('every example with something that was probably meant has its mend', () => {
  const without = examples
    .filter(({ found }) => found)
    .flatMap(({ name, of, parents, text: example }) => {
      const text = wholeText(of, example);
      return problemsOf(of, text, parents)
        .filter((problem) => problem.near_miss !== null && mendsOf(problem, text).length === 0)
        .map((problem) => `${name}: ${problem.says}`);
    });
  expect(without).toEqual([]);
});

/** The problem of a ladder that says what was probably meant. */
const nearMissed = (text: string): Problem | undefined =>
  readLadder('ladder.yaml', text).problems.find((problem) => problem.near_miss !== null);

/** The text with the mend of that problem made. */
function ladderMended(text: string): string | null {
  const problem = nearMissed(text);
  const [mend] = problem ? mendsOf(problem, text) : [];
  return mend ? spliced(text, mend.splices) : null;
}

test.each([
  [
    'a key',
    'ladder: a\nedition: 1\nlevels: [{ levle: x }, { level: y }]\n',
    'ladder: a\nedition: 1\nlevels: [{ level: x }, { level: y }]\n',
  ],
  [
    'a key in quotation marks',
    'ladder: a\nedition: 1\nlevels: [{ "levle": x }, { level: y }]\n',
    'ladder: a\nedition: 1\nlevels: [{ "level": x }, { level: y }]\n',
  ],
  [
    'a key on a file with other line ends',
    'ladder: a\r\nedition: 1\r\nlevels:\r\n  - levle: x\r\n  - level: y\r\n',
    'ladder: a\r\nedition: 1\r\nlevels:\r\n  - level: x\r\n  - level: y\r\n',
  ],
])('%s is mended where it stands', (_what, text, expected) => {
  expect(ladderMended(text)).toBe(expected);
});

test('a character that cannot be seen is taken away', () => {
  const text = 'ladder: a\u200Bb\n';
  const [problem] = yamlToDocument('', text).problems;
  const [mend] = problem ? mendsOf(problem, text) : [];
  expect(mend && spliced(text, mend.splices)).toBe('ladder: ab\n');
});

test('a problem of a text that has changed since has no mend', () => {
  const text = 'ladder: a\nedition: 1\nlevels: [{ levle: x }, { level: y }]\n';
  const problem = nearMissed(text);
  expect(problem && mendsOf(problem, text)).toHaveLength(1);
  expect(problem && mendsOf(problem, text.replace('levels: [', 'levels: [ '))).toEqual([]);
});

test('a mend that would only bring another problem is not certain', () => {
  const example = examples.find(({ name }) => name.startsWith('unknown_observation is found in example 1'));
  const { of = 'protocol', parents = [], text: written = '' } = example ?? {};
  const text = wholeText(of, written);
  const problem = problemsOf(of, text, parents).find(({ near_miss: near }) => near !== null);
  expect(problem && mendsOf(problem, text)).toHaveLength(1);
  expect(problem && mendsOf(problem, text, (made) => problemsOf(of, made, parents))).toEqual([]);
});
