import jsonLogic from 'json-logic-js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readSet, type Compiled } from '../../../src/index.ts';
import { answersOf as kitAnswers } from '../../../src/outcome/answers.ts';
import { seriesToBounds } from '../../../src/series/series-to-bounds.ts';
import { logic as hasShape } from '../../../src/shape/generated/validators.js';
import type { LogicFile } from '../../../src/shape/generated/types.ts';
import { logicToArtefact } from '../../../src/targets/json-logic/logic-to-artefact.ts';
import { answersOf, setToInputs, type Apply } from '../../../src/targets/json-logic/reader.mjs';
import { askable, bundledNames, lessonNames } from '../../bundled.ts';
import { drawn } from '../../agreement/draw.ts';
import { drawPlainSet } from './plain-sets.ts';

const apply = jsonLogic.apply.bind(jsonLogic) as Apply;
const files = new Map<string, LogicFile>();

/** The artefact of a bundled protocol, read back from its text. */
function fileOf(name: string): LogicFile {
  const { logic, protocol } = askable(name);
  const known = files.get(name) ?? (JSON.parse(logicToArtefact(logic, protocol)) as LogicFile);
  files.set(name, known);
  return known;
}

/** The inputs that the kit makes of a set, by name. */
function kitBounds(compiled: Compiled, set: object): ReturnType<typeof seriesToBounds> {
  const { series, problems } = readSet('set.json', JSON.stringify(set), compiled);
  if (!series) throw new Error(problems.map(({ says }) => says).join('\n'));
  return seriesToBounds(compiled.protocol, series);
}
const byName = ({ logic }: Compiled, inputs: Float64Array): Record<string, number> =>
  Object.fromEntries(logic.inputs.map(({ name }, index) => [name, inputs[index] ?? NaN]));

const names = [...bundledNames, ...lessonNames];

test.each(names)('%s: the artefact has the shape that the schema states', (name) => {
  expect([hasShape(fileOf(name)), hasShape.errors]).toEqual([true, null]);
});

test.each(names)('%s: a set becomes the inputs and the answers that the kit has', (name) => {
  const compiled = askable(name);
  const file = fileOf(name);
  const sets = drawn((draw) => drawPlainSet(draw, compiled.protocol));
  const property = fc.property(sets, (set) => {
    const bounds = kitBounds(compiled, set);
    const expected = byName(compiled, bounds.narrow);
    const lookBacks = compiled.logic.inputs.filter(({ of }) => of === 'look_back');
    const others = Object.fromEntries(lookBacks.map((each) => [each.name, expected[each.name] ?? NaN]));
    const { inputs, refused } = setToInputs(file, apply, set, others);
    expect(inputs).toEqual(expected);
    expect(new Set(refused)).toEqual(new Set(bounds.facts.refused.map(({ observation }) => observation)));
    const answer = answersOf(file, apply, inputs);
    const kit = kitAnswers(compiled, bounds);
    const level = (index: number | null): string | null => file.levels[index ?? -1] ?? null;
    expect(answer.applies).toBe(kit.applies);
    expect(answer.level).toEqual(
      kit.level && {
        at_least: level(kit.level.atLeast),
        could_be: level(kit.level.couldBe),
        settled: kit.level.settled,
      },
    );
    expect(answer.rules).toEqual(Object.fromEntries(kit.rules.map(({ rule, state }) => [rule.name, state])));
  });
  fc.assert(property, { numRuns: 60, seed: 20_261_125 });
});

const threshold = (set: object): ReturnType<typeof setToInputs> =>
  setToInputs(fileOf('lessons/one_threshold'), apply, set as Record<string, unknown>);

test.each([
  [{ sistolic: 100 }, 'unknown: sistolic'],
  [{ systolic: '100' }, 'no plain number'],
  [{ systolic: true }, 'no plain number'],
  [{ systolic: [100] }, 'no plain number'],
  [{ systolic: NaN }, 'no plain number'],
  [{ systolic: 1e30 }, 'no plain number'],
  [{ systolic: { value: 100 } }, 'no plain number'],
  [{ systolic: { low: 100, high: 90 } }, 'a number, or low and high'],
  [{ systolic: { low: 90, high: 100, unit: 'kPa' } }, 'a number, or low and high'],
])('%j is refused out loud', (set, why) => {
  expect(() => threshold(set)).toThrow(why);
});

test('what is impossible is refused, and counts as missing', () => {
  const { inputs, refused } = threshold({ systolic: 900 });
  expect(refused).toEqual(['systolic']);
  expect(inputs).toEqual(threshold({}).inputs);
});

test('a look back is asked for', () => {
  expect(() => setToInputs(fileOf('lessons/a_look_back'), apply, { systolic: 100 })).toThrow(
    /needed beside the set: \w+:low/,
  );
});
