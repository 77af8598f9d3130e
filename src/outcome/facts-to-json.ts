import type {
  AssumedValue,
  ChangedLimit,
  EarlierValue,
  Outcome,
  WithoutValue,
} from '../shape/generated/types.ts';
import type { Observation, Protocol } from '../protocol/protocol.ts';
import type { Present, SeriesFacts } from '../series/bounds.ts';
import { stepsInJson, unitInJson } from './steps-in-json.ts';

/** What an outcome tells of the values themselves. */
export type Facts = Pick<
  Outcome,
  | 'unobtainable'
  | 'declined'
  | 'stands_in'
  | 'assumed'
  | 'limits'
  | 'taken'
  | 'refused'
  | 'questioned'
  | 'unused'
>;

/** What is told of the values themselves, whether or not the protocol is for this patient. */
export function factsToJson(protocol: Protocol, facts: SeriesFacts): Facts {
  const without = { unobtainable: [] as WithoutValue[], declined: [] as WithoutValue[] };
  const standsIn: EarlierValue[] = [];
  const counted: AssumedValue[] = [];
  for (const [name, present] of facts.present) {
    const { state, instead } = present;
    if (state === 'given' || state === 'missing') continue;
    const observation = protocol.observations.get(name);
    if (!observation) continue;
    if (state === 'earlier') standsIn.push(earlier(observation, present));
    if (state === 'assumed') counted.push(assumed(observation, present));
    for (const key of ['unobtainable', 'declined'] as const) {
      if (state === key || instead === key) without[key].push(withoutValue(name, present));
    }
  }
  const { taken, refused, questioned, unused } = facts;
  return {
    unobtainable: without.unobtainable,
    declined: without.declined,
    stands_in: standsIn,
    assumed: counted,
    limits: changedLimits(protocol, facts),
    taken,
    refused,
    questioned,
    unused,
  };
}

function withoutValue(observation: string, { note, state, instead }: Present): WithoutValue {
  // Beside a standing fact that holds, the note tells who stated it.
  const isReason = note !== null && (state !== 'standing' || instead === null);
  return { observation, ...(isReason ? { because: note } : {}) };
}

function earlier(observation: Observation, { range, choices, atText }: Present): EarlierValue {
  const common = { observation: observation.name, at: atText ?? '' };
  if (!range)
    return { ...common, value: observation.kind === 'several' ? (choices ?? []) : (choices?.[0] ?? '') };
  const [low, high] = range.map((steps) => stepsInJson(steps, observation)) as [number, number];
  const value = low === high ? { value: low } : { low, high };
  return { ...common, ...value, ...unitInJson(observation) };
}

function assumed(observation: Observation, { range, choices }: Present): AssumedValue {
  const { name } = observation;
  if (!range) return { observation: name, value: choices?.[0] ?? '' };
  return { observation: name, value: stepsInJson(range[0], observation), ...unitInJson(observation) };
}

function changedLimits(protocol: Protocol, { limits }: SeriesFacts): ChangedLimit[] {
  return [...limits].flatMap(([name, { steps, by, reason, until }]): ChangedLimit[] => {
    const limit = protocol.limits.get(name);
    if (!limit || by === null) return [];
    return [
      {
        limit: name,
        value: stepsInJson(steps, limit),
        ...unitInJson(limit),
        by,
        ...(reason === null ? {} : { reason }),
        ...(until === null ? {} : { until: new Date(until).toISOString() }),
      },
    ];
  });
}
