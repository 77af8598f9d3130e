import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Logic } from '../../../src/logic/logic.ts';
import { operators } from '../../../src/logic/operators.ts';
import { logicToEvaluator } from '../../../src/targets/evaluator/logic-to-evaluator.ts';
import { readExpression, type Refusal } from '../../../src/targets/json-logic/read-expression.ts';

// The community's conformance set for JSON Logic. It is not part of this repository: JSON_LOGIC_SUITE names the file.

interface Example {
  readonly rule: unknown;
  readonly data?: unknown;
  readonly result: unknown;
}

/** How many examples of the set are refused, and why: logic keeps few operators, and those without any guessing of types. */
const refused: Readonly<Record<Refusal, number>> = {
  'an operator that logic does not have': 138,
  'a text, a list or nothing': 44,
  'not a whole number': 2,
  'too few or too many parts': 18,
  'a number where a truth belongs': 12,
  'a truth where a number belongs': 0,
  'a variable by path, by place or with a default': 17,
  'a variable that is no whole number': 4,
  'not one operator by itself': 0,
};

/** How many of 278 are run. */
const run = 43;

/** The operators of the set that logic does not have. */
const notKept =
  '!! != !== % / == === > >= ?: all cat filter in map merge missing missing_some none reduce some substr'.split(
    ' ',
  );

/** Every key of an expression that stands where an operator does. */
const operatorsIn = (plain: unknown): string[] =>
  typeof plain !== 'object' || plain === null
    ? []
    : [...(Array.isArray(plain) ? [] : Object.keys(plain)), ...Object.values(plain).flatMap(operatorsIn)];

/** What an expression comes to over plain data. */
function resultOf(plain: unknown, data: unknown): unknown {
  const given = Object.entries((data ?? {}) as Record<string, number>).filter(([, value]) =>
    Number.isSafeInteger(value),
  );
  const read = readExpression(plain, new Set(given.map(([name]) => name)));
  if (typeof read === 'string') return read;
  const inputs = given.map(([name]) => ({ name }) as Logic['inputs'][number]);
  const evaluator = logicToEvaluator({
    inputs,
    steps: [{ name: 'result', is: read.is }],
  } as unknown as Logic);
  const result = evaluator.reader({ var: 'result' })(
    evaluator.run(Float64Array.from(given, ([, value]) => value)),
  );
  return read.gives === 'truth' ? result !== 0 : result;
}

test('each example that logic can read comes to its result; the others are refused for a reason', (context) => {
  const path = process.env['JSON_LOGIC_SUITE'];
  if (path === undefined || path === '') context.skip('JSON_LOGIC_SUITE does not name the conformance set');
  const suite = JSON.parse(readFileSync(String(path), 'utf8')) as (Example | string)[];
  const examples = suite.filter((each) => typeof each !== 'string');
  const counts = Object.fromEntries(Object.keys(refused).map((why) => [why, 0]));
  const wrong: unknown[] = [];
  for (const { rule, data, result } of examples) {
    const found = resultOf(rule, data);
    if (typeof found === 'string') counts[found] = (counts[found] ?? 0) + 1;
    else if (found !== result) wrong.push({ rule, data, result, found });
  }
  const ran = examples.length - Object.values(counts).reduce((sum, each) => sum + each, 0);
  expect(wrong).toEqual([]);
  const used = new Set(examples.flatMap(({ rule }) => operatorsIn(rule)));
  expect([...used].filter((name) => name !== 'var' && !Object.hasOwn(operators, name)).sort()).toEqual(
    notKept,
  );
  expect({ examples: examples.length, ran, ...counts }).toEqual({ examples: 278, ran: run, ...refused });
});

test.each<[unknown, Refusal]>([
  [{ '==': [1, 1] }, 'an operator that logic does not have'],
  [{ '+': ['1', 1] }, 'a text, a list or nothing'],
  [{ '<': [{ var: 'systolic' }, null] }, 'a text, a list or nothing'],
  [{ '<': [0.5, 1] }, 'not a whole number'],
  [{ '<': [1, 2, 3] }, 'too few or too many parts'],
  [{ if: [true, 1] }, 'too few or too many parts'],
  [{ and: [true, 1] }, 'a number where a truth belongs'],
  [{ '+': [true, 1] }, 'a truth where a number belongs'],
  [{ var: 'a.b' }, 'a variable by path, by place or with a default'],
  [{ '<': [1, 2], '<=': [1, 2] }, 'not one operator by itself'],
  [{ '<': [{ var: 'pressure' }, 1] }, 'a variable that is no whole number'],
  [{}, 'not one operator by itself'],
])('%j is refused: %s', (plain, why) => {
  expect(readExpression(plain, new Set(['systolic']))).toBe(why);
});

test.each<[unknown, unknown, unknown]>([
  [{ '-': [1] }, {}, -1],
  [{ '*': [2, { var: 'a' }] }, { a: 3 }, 6],
  [{ if: [{ '<': [{ var: 'a' }, 1] }, 10, { '<=': [{ var: 'a' }, 2] }, 20, 30] }, { a: 2 }, 20],
  [{ '!': [{ or: [false, { '<': [2, 1] }] }] }, {}, true],
])('%j over %j is %j', (plain, data, result) => {
  expect(resultOf(plain, data)).toBe(result);
});
