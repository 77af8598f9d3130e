import { expect, test } from 'vitest';
import { readFormula } from '../../src/protocol/formula.ts';
import type { Operand } from '../../src/protocol/protocol.ts';

const named = (name: string): Operand | null =>
  ['systolic', 'diastolic'].includes(name) ? { kind: 'observation', name } : null;

const read = (text: string): ReturnType<typeof readFormula> => readFormula(text, named);

test('multiplication binds more tightly than addition, and brackets more tightly than both', () => {
  const { expression } = read('(systolic + 2 * diastolic) / 3');
  expect(expression).toMatchObject({
    kind: 'divided_by',
    left: {
      kind: 'plus',
      left: { name: 'systolic' },
      right: { kind: 'times', right: { name: 'diastolic' } },
    },
    right: { kind: 'number' },
  });
});

test('subtraction is read from the left', () => {
  const { expression } = read('systolic - diastolic - 1');
  expect(expression).toMatchObject({ kind: 'minus', left: { kind: 'minus' }, right: { kind: 'number' } });
});

test('numbers are exact', () => {
  const { expression } = read('0.1');
  expect(expression).toMatchObject({ kind: 'number', unit: null });
  expect(expression?.kind === 'number' && expression.value.toFraction()).toBe('1/10');
});

test.each([
  ['systolic + dystolic', 'unknown_name'],
  ['systolic +', 'unreadable'],
  ['systolic diastolic', 'unreadable'],
  ['(systolic', 'unreadable'],
  ['', 'unreadable'],
  ['systolic /* really */ + 1', 'unreadable'],
  ['systolic + 1 // more', 'unreadable'],
  ['1e3', 'not_arithmetic'],
  ['0x10', 'not_arithmetic'],
  ['1_000', 'not_arithmetic'],
  ['"90"', 'not_arithmetic'],
  ['systolic ** 2', 'not_arithmetic'],
  ['systolic % 2', 'not_arithmetic'],
  ['+systolic', 'not_arithmetic'],
  ['systolic > 1', 'not_arithmetic'],
  ['max(systolic, diastolic)', 'not_arithmetic'],
  ['systolic.length', 'not_arithmetic'],
  ['systolic = 1', 'not_arithmetic'],
  ['() => 1', 'not_arithmetic'],
  ['`${systolic}`', 'not_arithmetic'],
  ['this', 'not_arithmetic'],
  ['import("x")', 'not_arithmetic'],
])('%s is refused', (text, kind) => {
  const { expression, faults } = read(text);
  expect(expression).toBeNull();
  expect(faults.map((fault) => fault.kind)).toContain(kind);
});

test('every unknown name is reported at once', () => {
  const { faults } = read('sistolic - dyastolic');
  expect(faults).toEqual([
    { kind: 'unknown_name', name: 'sistolic' },
    { kind: 'unknown_name', name: 'dyastolic' },
  ]);
});
