import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Compiled, Outcome } from '../../src/index.ts';
import { answersOf } from '../../src/outcome/answers.ts';
import type { DecidedIf } from '../../src/shape/generated/types.ts';
import { askable, bundledNames, lessonNames } from '../bundled.ts';
import { boundsOf, outcome, ruleOf, type Given } from './ask.ts';
import { smallNamed, smallProtocols, type SmallName } from './protocols.ts';
import { gappySeries, withValue } from './sets.ts';

const protocols: readonly (readonly [string, () => Compiled])[] = [
  ...[...bundledNames, ...lessonNames].map((name) => [name, () => askable(name)] as const),
  ...(Object.keys(smallProtocols) as SmallName[]).map((name) => [name, () => smallNamed(name)] as const),
];

/** Values out of those that are listed: both ends of a range, and its middle; each of the choices. */
function valuesOf({ from, to, unit, choices, observation }: DecidedIf, { protocol }: Compiled): unknown[] {
  const entry = protocol.observations.get(observation);
  if (choices) {
    if (choices.length === 0) return [[]];
    return entry?.kind === 'several' ? choices.map((choice) => [choice]) : [...choices];
  }
  const [low, high] = [from ?? 0, to ?? 0];
  const steps = entry?.stepsPerUnit.valueOf() ?? 1;
  const middle = Number((Math.round(((low + high) / 2) * steps) / steps).toFixed(6));
  const inside = middle >= low && middle <= high ? [middle] : [];
  return [...new Set([low, ...inside, high])].map((value) => ({
    value,
    ...(unit === undefined ? {} : { unit }),
  }));
}

const stateOf = (compiled: Compiled, set: Given, name: string): string | undefined =>
  answersOf(compiled, boundsOf(compiled, set)).rules.find(({ rule }) => rule.name === name)?.state;

/** Every promise of an outcome that is not kept. */
function* broken(
  compiled: Compiled,
  series: Given,
  { rules }: Outcome,
  counted: { kept: number },
): Generator<object> {
  for (const { rule: name, decided_if: decided = [] } of rules) {
    for (const each of decided) {
      for (const value of valuesOf(each, compiled)) {
        const found = stateOf(compiled, withValue(series, each.observation, value), name);
        if (found === each.state) counted.kept += 1;
        else yield { rule: name, observation: each.observation, value, promised: each.state, found };
      }
    }
  }
}

test.each(protocols)('%s: giving any value that is listed settles a rule as stated', (name, of) => {
  const compiled = of();
  const counted = { kept: 0 };
  fc.assert(
    fc.property(gappySeries(compiled), (series) => {
      expect([...broken(compiled, series, outcome(compiled, series), counted)]).toEqual([]);
    }),
    { numRuns: 40, seed: 7 },
  );
  // What a value in the window of a look back would do is not said: it depends on sets that are not looked at again.
  if (!name.includes('look')) expect(counted.kept).toBeGreaterThan(20);
});

test('a value that would be refused beside what is known is not listed', () => {
  const compiled = smallNamed('two numbers in one formula');
  const [met] = ruleOf(outcome(compiled, { systolic: 104 }), 'low').decided_if ?? [];
  expect(met).toMatchObject({ observation: 'diastolic', from: 0, to: 45, is_lowest: true, state: 'met' });
  const wide = ruleOf(outcome(compiled, { systolic: 104 }), 'wide').decided_if ?? [];
  // 104 and more could not be the diastolic of a systolic of 104.
  expect(wide.at(-1)).toMatchObject({ from: 44, to: 103, is_highest: true, state: 'not_met' });
});

test('nothing is listed where another value is refused that it could contradict or bring back', () => {
  const { rules, refused } = outcome(smallNamed('two numbers in one formula'), {
    systolic: 60,
    diastolic: 80,
  });
  expect(refused.map(({ observation }) => observation).toSorted()).toEqual(['diastolic', 'systolic']);
  expect(rules.map(({ decided_if: decided }) => decided)).toEqual([undefined, undefined]);
});

test('an age at which a given value would be impossible is not listed', () => {
  const compiled = smallNamed('an age that changes what is possible');
  const { decided_if: decided = [] } = ruleOf(outcome(compiled, { respiratory_rate: 110 }), 'old');
  // 110 breaths a minute are possible below 12 years only, so no listed age is an adult's.
  expect(decided).toEqual([
    {
      observation: 'age',
      from: 0,
      to: 11.999829,
      is_lowest: true,
      is_highest: true,
      unit: 'a',
      state: 'not_met',
    },
  ]);
});

test('values of an earlier set no longer stand in for a group once one of it is given anew', () => {
  const compiled = smallNamed('two numbers in one formula');
  const series = {
    sets: [{ at: '2026-03-02T11:30:00Z', systolic: 104, diastolic: 90 }, { at: '2026-03-02T12:00:00Z' }],
  };
  const made = outcome(compiled, series);
  expect(made.stands_in).toHaveLength(2);
  // With the diastolic of 90 that stands in now, a systolic of 151 would decide it; in a new set it says too little alone.
  const common = { observation: 'systolic', unit: 'mm[Hg]' };
  expect(ruleOf(made, 'wide').decided_if).toEqual([
    { ...common, from: 1, to: 60, is_lowest: true, state: 'not_met' },
    { ...common, from: 461, to: 500, is_highest: true, state: 'met' },
  ]);
});

test('of an observation that can hold several, a choice decides by being among them', () => {
  const compiled = smallNamed('exceptions, explanations and rules that name rules');
  const { rules } = outcome(compiled, { heart_rate: 72, consciousness: 'alert', temperature: 36 });
  expect(rules.find((each) => each.rule === 'hot')).toMatchObject({
    could_be_explained_by: 'The room can do it.',
  });
  const faults = outcome(askable('pressure_reading'), {});
  expect(ruleOf(faults, 'truth_may_be_lower').decided_if).toEqual([
    {
      observation: 'technique_faults',
      choices: ['cuff_too_small', 'cuff_over_clothing', 'arm_below_heart'],
      state: 'met',
    },
    { observation: 'technique_faults', choices: [], state: 'not_met' },
  ]);
});
