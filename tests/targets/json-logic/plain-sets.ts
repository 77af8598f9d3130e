import { cutPoints } from '../../../src/logic/cut-points.ts';
import type { Observation, ObservationEntry, Protocol } from '../../../src/protocol/protocol.ts';
import { possibleRange } from '../../../src/vocabulary/possible-range.ts';
import type { Draw } from '../../agreement/draw.ts';

/** A number of a set, in its unit: most often where an answer can change, now and then between two steps or impossible. */
function numberOf(draw: Draw, entry: ObservationEntry, cuts: readonly number[]): number {
  const { low, high } = possibleRange(entry);
  const edge =
    cuts.length > 0 && draw.chance(60) ? draw.one(cuts) + draw.whole(-1, 0) : draw.whole(low, high);
  const steps = draw.chance(4) ? high + 5 : draw.chance(8) ? edge + 0.5 : edge;
  return Number(((steps * Number(entry.stepsPerUnit.d)) / Number(entry.stepsPerUnit.n)).toFixed(6));
}

function valueOf(draw: Draw, entry: Observation, cuts: readonly number[]): unknown {
  const choices = entry.choices.map(({ choice }) => choice);
  switch (entry.kind) {
    case 'number': {
      const value = numberOf(draw, entry, cuts);
      return draw.chance(15) ? { low: value, high: Number((value + draw.whole(0, 3)).toFixed(6)) } : value;
    }
    case 'several':
      return draw.some(choices, 0, choices.length);
    case 'yes_no':
      return draw.chance(50) ? draw.chance(50) : draw.one(choices);
    case 'choice':
      return draw.one(choices);
  }
}

/** One set without a time, for a protocol: a third of them whole. */
export function drawPlainSet(draw: Draw, protocol: Protocol): Record<string, unknown> {
  const cuts = cutPoints(protocol);
  const lacks = draw.one([0, 15, 50]);
  const told = [...protocol.observations.values()].map((entry) => {
    if (draw.chance(lacks))
      return [entry.name, draw.one<unknown>([null, { unobtainable: true }, { declined: true }])];
    return [entry.name, valueOf(draw, entry, cuts.get(entry.name) ?? [])];
  });
  return Object.fromEntries(told.filter(([, value]) => value !== null)) as Record<string, unknown>;
}
