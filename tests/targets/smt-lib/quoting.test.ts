import { expect, test } from 'vitest';
import { readProtocol } from '../../../src/index.ts';
import { logicToSmt } from '../../../src/targets/smt-lib/logic-to-smt.ts';
import { questionToSmt } from '../../../src/targets/smt-lib/question-to-smt.ts';
import { completeSets } from '../../../src/targets/smt-lib/sets.ts';
import { Smt, smt } from '../../../src/targets/smt-lib/smt.ts';
import { askable, bundledLadder, bundledText } from '../../bundled.ts';
import { judges } from './judges.ts';

/** Names and texts that would end a symbol, a comment or a line, or be a word of SMT-LIB. */
const attacks = [
  '|',
  '| Int) (assert false) (declare-const |x',
  String.raw`\|`,
  String.raw`\\`,
  'a\nb',
  '\n(assert false)\n',
  '\r(assert false)',
  '\u2028(assert false)',
  '\u0085(assert false)',
  '\u0000',
  '\u001b[31m',
  '"',
  '";',
  '; a comment',
  '#b1',
  ':named',
  'and',
  'true',
  'Int',
  'ite',
  '/',
  '-',
  'the lower',
  'systolic:low',
  'systolic low',
  '~',
  '~7c~',
  '~~',
  '',
  'ä',
  '\ud800',
  '\u{1f600}',
  '__proto__',
];

test.each(attacks)('%j is one quoted symbol in ASCII', (name) => {
  expect(smt`${name}`.text).toMatch(/^\|[A-Za-z0-9_:/#~-]+\|$/);
});

test('no two names are one symbol, and a name of the project is the symbol that people read', () => {
  expect(new Set(attacks.map((name) => smt`${name}`.text)).size).toBe(attacks.length);
  expect(smt`${'systolic:low'} ${'rules/0/when#2'}`.text).toBe('|systolic:low| |rules/0/when#2|');
});

test.each(attacks)('%j stays inside its comment', (text) => {
  const made = Smt.comment(text, `before ${text}`).text.split('\n');
  expect(made).toHaveLength(2);
  for (const line of made) expect(line).toMatch(/^;[^\p{C}\p{Zl}\p{Zp}]*$/u);
});

test.each([NaN, Infinity, 0.5, 2 ** 53])('%s is no whole number of a script', (number) => {
  expect(() => smt`${number}`).toThrow('is no whole number');
});

test('numbers below zero are written as SMT-LIB has them', () => {
  expect(smt`${-5} ${-0} ${0} ${true} ${1e12}`.text).toBe('(- 5) 0 0 true 1000000000000');
});

test.for(judges)('each of these names is a constant of its own ($name)', ({ ask }, context) => {
  const lines = (parts: readonly Smt[]): Smt => Smt.joined(parts, '\n');
  const made = lines([
    smt`(set-logic QF_LIA)`,
    ...attacks.map((name) => Smt.comment(name)),
    ...attacks.map((name) => smt`(declare-fun ${name} () Int)`),
    ...attacks.map((name, index) => smt`(assert (= ${name} ${index}))`),
    smt`(check-sat)`,
    smt`(assert (= ${attacks[0] ?? ''} ${attacks[1] ?? ''}))`,
    smt`(check-sat)`,
  ]);
  expect(ask([made.text], context)).toEqual(['sat', 'unsat']);
});

test.for(judges)(
  'texts of a protocol and of a question stay in their comments ($name)',
  ({ ask }, context) => {
    const title = '\\"| (assert false) ; \\u2029(assert false)';
    const text = bundledText('lessons/one_threshold/protocol.yaml').replace(
      /^title: .*$/m,
      `title: ${JSON.stringify(title)}`,
    );
    const { protocol, problems } = readProtocol('protocol.yaml', text, { ladder: bundledLadder() });
    if (!protocol) throw new Error(problems.map(({ says }) => says).join('\n'));
    const { logic, protocol: read } = protocol;
    const asked = questionToSmt({ ...protocol, sets: completeSets, holds: true, says: attacks.join(' ') });
    const open = logicToSmt(logic, read, completeSets);
    expect(ask([asked, `${open}(check-sat)`], context)).toEqual(['sat', 'sat']);
  },
);

test('a name that is no input and no step is a mistake of ours, and is thrown', () => {
  const { logic, protocol } = askable('lessons/one_threshold');
  const steps = [...logic.steps, { name: 'more/1', is: { var: 'no such step' } }];
  const asked = { protocol, sets: completeSets, holds: { var: 'more/1' }, says: '' };
  expect(() => questionToSmt({ ...asked, logic: { ...logic, steps } })).toThrow('no such step');
});
