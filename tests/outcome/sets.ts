import fc from 'fast-check';
import type { Compiled } from '../../src/index.ts';
import type { Observation } from '../../src/protocol/protocol.ts';
import { possibleRange } from '../../src/vocabulary/possible-range.ts';
import { stepsInJson } from '../../src/outcome/steps-in-json.ts';
import type { Given } from './ask.ts';

/** Steps of a number as a set gives it, with its unit. */
const inSet = (at: number, observation: Observation): object => ({
  value: stepsInJson(at, observation),
  ...(observation.unit ? { unit: observation.unit.ucum } : {}),
});

/** Steps of an observation: often on an edge of a rule or one step beside it, else anywhere that is possible. */
function steps(observation: Observation, { cuts }: Compiled): fc.Arbitrary<number> {
  const { low, high } = possibleRange(observation);
  const edges = (cuts.get(observation.name) ?? []).flatMap((at) => [at - 1, at, at + 1]);
  const inside = edges.filter((at) => at >= low && at <= high);
  const ordinary = typeof observation.ordinary === 'number' ? observation.ordinary : low;
  const near = fc.integer({ min: Math.max(low, ordinary - 60), max: Math.min(high, ordinary + 60) });
  const anywhere = fc.integer({ min: low, max: high });
  return inside.length === 0
    ? fc.oneof(near, anywhere)
    : fc.oneof({ weight: 3, arbitrary: fc.constantFrom(...inside) }, near, anywhere);
}

/** One exact value of an observation. */
function exactValue(observation: Observation, compiled: Compiled): fc.Arbitrary<unknown> {
  const choices = observation.choices.map(({ choice }) => choice);
  if (observation.kind === 'number') return steps(observation, compiled).map((at) => inSet(at, observation));
  if (observation.kind === 'several') return fc.subarray(choices, { maxLength: 3 });
  return fc.constantFrom(...choices);
}

function range(observation: Observation, compiled: Compiled): fc.Arbitrary<unknown> {
  const unit = observation.unit ? { unit: observation.unit.ucum } : {};
  return fc.tuple(steps(observation, compiled), steps(observation, compiled)).map(([one, two]) => ({
    low: stepsInJson(Math.min(one, two), observation),
    high: stepsInJson(Math.max(one, two), observation),
    ...unit,
  }));
}

interface Said {
  readonly when: 'now' | 'earlier' | 'not';
  readonly value: unknown;
}

function said(observation: Observation, compiled: Compiled): fc.Arbitrary<Said> {
  const value = exactValue(observation, compiled);
  const now = value.map((each): Said => ({ when: 'now', value: each }));
  return fc.oneof(
    { weight: 5, arbitrary: now },
    { weight: 4, arbitrary: fc.constant<Said>({ when: 'not', value: null }) },
    { weight: 1, arbitrary: value.map((each): Said => ({ when: 'earlier', value: each })) },
    { weight: 1, arbitrary: fc.constant<Said>({ when: 'now', value: { unobtainable: 'cold' } }) },
    {
      weight: observation.kind === 'number' ? 1 : 0,
      arbitrary: range(observation, compiled).map((each): Said => ({ when: 'now', value: each })),
    },
  );
}

const presentAt = '2026-03-02T12:00:00Z';
const earlierAt = '2026-03-02T11:30:00Z';

/** A series of two sets, half an hour apart, in which much is missing. */
export function gappySeries(compiled: Compiled): fc.Arbitrary<Given> {
  const observations = [...compiled.protocol.observations.values()];
  return fc.tuple(...observations.map((each) => said(each, compiled))).map((all) => {
    const set = (when: Said['when']): Given =>
      Object.fromEntries(
        all.flatMap((each, index) =>
          each.when === when ? [[observations[index]?.name ?? '', each.value]] : [],
        ),
      );
    const [earlier, now] = [set('earlier'), set('now')];
    return {
      sets: [
        { at: earlierAt, ...earlier },
        { at: presentAt, ...now },
      ],
    };
  });
}

/** A set in which everything is given exactly. */
export function wholeSet(compiled: Compiled): fc.Arbitrary<Given> {
  const observations = [...compiled.protocol.observations.values()];
  return fc
    .tuple(...observations.map((each) => exactValue(each, compiled)))
    .map((values) => Object.fromEntries(observations.map(({ name }, index) => [name, values[index]])));
}

/** A series with one more value in its present set. */
export function withValue(series: Given, name: string, value: unknown): Given {
  const sets = series['sets'] as readonly Given[];
  const present = sets.length - 1;
  return { ...series, sets: sets.with(present, { ...sets[present], [name]: value }) };
}
