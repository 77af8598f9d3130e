import jsonLogic from 'json-logic-js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { protocolToLogic } from '../../src/logic/protocol-to-logic.ts';
import { logicToEvaluator } from '../../src/targets/evaluator/logic-to-evaluator.ts';
import { everySet, boxToInputs } from '../../src/review/box.ts';
import { bundled, bundledNames } from '../bundled.ts';

// The steps are plain JSON Logic: a library that knows nothing of this project must come to the same numbers.

test.each(bundledNames)('%s: json-logic-js comes to the same answer at every step', (name) => {
  const protocol = bundled(name);
  const { logic } = protocolToLogic(protocol);
  const evaluator = logicToEvaluator(logic);
  const readers = logic.steps.map((step) => evaluator.reader({ var: step.name }));
  const every = everySet(protocol);
  const inputs = fc
    .array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 64, maxLength: 64 })
    .map((shares) => boxToInputs(narrowed(every, shares), protocol, logic.inputs));
  fc.assert(
    fc.property(inputs, (bounds) => {
      const result = evaluator.run(bounds);
      const data: Record<string, unknown> = Object.fromEntries(
        logic.inputs.map((input, index) => [input.name, bounds[index]]),
      );
      logic.steps.forEach((step, index) => {
        data[step.name] = jsonLogic.apply(step.is as Parameters<typeof jsonLogic.apply>[0], data);
        expect([step.name, Number(data[step.name])]).toEqual([step.name, readers[index]?.(result)]);
      });
    }),
    { numRuns: 60 },
  );
});

/** A smaller box: each range cut at two shares of its width, each choice at one of its values or left open. */
function narrowed(box: ReturnType<typeof everySet>, shares: readonly number[]): ReturnType<typeof everySet> {
  let next = 0;
  const share = (): number => shares[next++ % shares.length] as number;
  const ranges = new Map(
    [...box.ranges].map(([name, [low, high]]) => {
      const ends = [share(), share()]
        .map((part) => low + Math.round(part * (high - low)))
        .sort((a, b) => a - b);
      const point = share() < 0.5;
      return [name, [ends[0] as number, (point ? ends[0] : ends[1]) as number] as const];
    }),
  );
  const choices = new Map(
    [...box.choices].map(([name, values]) => {
      const kept = values.filter(() => share() < 0.5);
      return [name, kept.length === 0 ? values : kept];
    }),
  );
  return { ranges, choices };
}

test('no step may ever see a null: the reference takes what is absent for 0', () => {
  expect(jsonLogic.apply({ '<': [{ var: 'absent' }, 65] }, {})).toBe(true);
});
