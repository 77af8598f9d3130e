import { expect, test } from 'vitest';
import { shapeWording } from '../../src/problems/wording/shape.ts';
import { shapeExamples } from '../../src/shape/examples.ts';
import { textToFile } from '../../src/shape/text-to-file.ts';

const rows = shapeExamples.flatMap(({ code, kind, accept, reject }) => [
  ...reject.map((text, index) => ({
    name: `${code}: ${kind} ${index + 1} has it, and no other problem`,
    kind,
    text,
    code,
  })),
  ...accept.map((text, index) => ({
    name: `${code}: ${kind} ${index + 1} without it has no problem`,
    kind,
    text,
    code: null,
  })),
]);

test.each(rows)('$name', ({ kind, text, code }) => {
  const { value, problems } = textToFile(kind, kind === 'set' ? 'set.json' : `${kind}.yaml`, text);
  expect(problems.map((problem) => problem.code)).toEqual(code === null ? [] : [code]);
  expect(value === null).toBe(code !== null);
});

test('every problem of shape has examples', () => {
  const codes = new Set(shapeExamples.map(({ code }) => code));
  expect([...codes].sort()).toEqual(Object.keys(shapeWording).sort());
});
