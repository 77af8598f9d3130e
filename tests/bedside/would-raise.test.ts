import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readSet, type Compiled } from '../../src/index.ts';
import type { Series } from '../../src/series/series.ts';
import type { Change } from '../../src/bedside/would-change.ts';
import { wouldRaise } from '../../src/bedside/would-raise.ts';
import { levelOf } from '../../src/outcome/answers.ts';
import { seriesToBounds } from '../../src/series/series-to-bounds.ts';
import { askable, lessonNames } from '../bundled.ts';

const patient = {
  standing: { age: { value: 58, unit: 'a', by: 'x' }, pregnancy: { value: 'not_pregnant', by: 'x' } },
};
const quiet = {
  systolic: 118,
  diastolic: 66,
  heart_rate: 72,
  respiratory_rate: 16,
  temperature: 36.8,
  consciousness: 'alert',
};

function seriesOf(compiled: Compiled, set: object): Series {
  const { series, problems } = readSet('set.json', JSON.stringify(set), compiled);
  if (!series) throw new Error(problems.map(({ says }) => says).join('\n'));
  return series;
}

const raises = (protocol: string, set: object): readonly Change[] =>
  wouldRaise(askable(protocol), seriesOf(askable(protocol), set));

const at = (found: readonly Change[], name: string): (number | undefined)[] =>
  found.filter(({ observation }) => observation.name === name).map(({ number }) => number?.steps);

test('the threshold of a rule is the nearest value, and only the way that raises is told', () => {
  expect(at(raises('lessons/one_threshold', { systolic: 104 }), 'systolic')).toEqual([90]);
  expect(raises('lessons/one_threshold', { systolic: 88 })).toEqual([]);
});

test('at the highest level, and where the protocol is not for the patient, nothing is told', () => {
  expect(
    raises('pressure_reading', {
      patient,
      sets: [{ at: '2026-03-02T08:00:00Z', ...quiet, consciousness: 'pain' }],
    }),
  ).toEqual([]);
  expect(raises('pressure_reading', { age: { value: 8, unit: 'a' }, systolic: 100 })).toEqual([]);
});

test('a look back is asked anew with each value', () => {
  const sets = [
    { at: '2026-03-02T08:00:00Z', systolic: 130 },
    { at: '2026-03-02T09:00:00Z', systolic: 120 },
  ];
  expect(at(raises('lessons/a_look_back', { sets }), 'systolic')).toEqual([110]);
});

test('a limit that was changed for this patient moves the value', () => {
  const limits = (value: number): object => ({
    limits: { mean_floor: { value, unit: 'mm[Hg]', by: 'Dr Ash' } },
  });
  const set = { at: '2026-03-02T08:00:00Z', systolic: 120, diastolic: 70 };
  expect(at(raises('lessons/a_limit_to_change', { sets: [set] }), 'diastolic')).toEqual([37]);
  expect(at(raises('lessons/a_limit_to_change', { patient: limits(80), sets: [set] }), 'diastolic')).toEqual([
    59,
  ]);
});

test('choices that lead to the same answer stand together, those that do not apart', () => {
  const found = raises('pressure_reading', { patient, sets: [{ at: '2026-03-02T08:00:00Z', ...quiet }] });
  const choices = found.filter(({ observation }) => observation.name === 'consciousness');
  expect(choices.map((each) => each.choices)).toEqual([
    ['new_confusion', 'voice'],
    ['pain', 'unresponsive'],
  ]);
});

/** The level with one observation changed in the JSON itself; null when the value is refused. */
function levelWith(
  compiled: Compiled,
  set: Record<string, unknown>,
  name: string,
  value: number,
): number | null {
  const observation = compiled.protocol.observations.get(name);
  const given = { value, unit: observation?.unit?.ucum };
  const bounds = seriesToBounds(
    compiled.protocol,
    seriesOf(compiled, { patient, sets: [{ ...set, [name]: given }] }),
  );
  if (bounds.facts.refused.some((each) => each.observation === name)) return null;
  return levelOf(compiled, bounds)?.atLeast ?? 0;
}

/** Asks step by step, one way, by changing the JSON: slow, and with nothing in it that could be clever. */
function stepByStep(
  compiled: Compiled,
  set: Record<string, unknown>,
  name: string,
  way: number,
): number | undefined {
  const observation = compiled.protocol.observations.get(name);
  const perUnit = observation?.stepsPerUnit.valueOf() ?? 1;
  const now = levelWith(compiled, set, name, set[name] as number) ?? 0;
  const from = Math.round((set[name] as number) * perUnit);
  for (let steps = from + way; steps >= 0 && steps <= 520; steps += way) {
    const level = levelWith(compiled, set, name, steps / perUnit);
    if (level !== null && level > now) return steps;
  }
  return undefined;
}

const numbers = {
  systolic: fc.integer({ min: 60, max: 230 }),
  diastolic: fc.integer({ min: 30, max: 130 }),
  heart_rate: fc.integer({ min: 35, max: 140 }),
  respiratory_rate: fc.integer({ min: 6, max: 30 }),
  temperature: fc.integer({ min: 340, max: 400 }).map((tenths) => tenths / 10),
  oxygen_saturation: fc.integer({ min: 80, max: 100 }),
};
/** What a drawn set has of the observation that is asked about, where nothing was drawn. */
const usual: Readonly<Record<string, number>> = {
  systolic: 104,
  diastolic: 58,
  heart_rate: 88,
  respiratory_rate: 18,
  temperature: 37,
  oxygen_saturation: 95,
};
const sets = fc.record(
  {
    ...numbers,
    consciousness: fc.constantFrom('alert', 'new_confusion'),
    on_oxygen: fc.boolean(),
    vasodilator_last_6_h: fc.boolean(),
    head_injury: fc.boolean(),
  },
  { requiredKeys: [] },
);

test.each(['pressure_reading', 'early_warning_score', ...lessonNames.slice(0, 2)])(
  '%s: what is told is what asking step by step finds, in whole sets and in sets with gaps',
  (protocol) => {
    const compiled = askable(protocol);
    let told = 0;
    fc.assert(
      fc.property(
        sets,
        fc.constantFrom(...Object.keys(numbers).filter((name) => compiled.protocol.observations.has(name))),
        (drawn, name) => {
          const known = Object.entries({ [name]: usual[name], ...drawn }).filter(([key]) =>
            compiled.protocol.observations.has(key),
          );
          const set = { at: '2026-03-02T08:00:00Z', ...Object.fromEntries(known) } as Record<string, unknown>;
          if (set[name] === undefined || levelWith(compiled, set, name, set[name] as number) === null) return;
          const found = at(wouldRaise(compiled, seriesOf(compiled, { patient, sets: [set] })), name);
          const expected = [-1, 1].flatMap((way) => stepByStep(compiled, set, name, way) ?? []);
          told += found.length;
          expect(found).toEqual(expected);
        },
      ),
      { numRuns: 24, seed: 4 },
    );
    expect(told).toBeGreaterThan(0);
  },
);
