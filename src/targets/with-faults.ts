import type { Logic } from '../logic/logic.ts';
import { inputsOf } from '../logic/inputs.ts';
import { LogicWriter } from '../logic/logic-writer.ts';
import type { Logical } from '../logic/operators.ts';
import { stepsFor } from '../logic/used-steps.ts';
import type { Observation, Protocol } from '../protocol/protocol.ts';
import { ageOfBands } from '../logic/set-to-json.ts';

/** Logic and its protocol with the faults of technique worked in, for targets that make bounds from a set themselves. */
export interface WithFaults {
  /** With the age as a need, where only bands of ages read it; its inputs come last, so that every other keeps its place. */
  readonly protocol: Protocol;
  /** The steps of the faults come first; they read inputs alone. */
  readonly logic: Logic;
  readonly faults: readonly TargetFault[];
}

export interface TargetFault {
  readonly name: string;
  /** Whether it surely is there, from what was read. */
  readonly isThere: Logical;
  /** How far each observation may be read too high, and too low, in its steps. */
  readonly readsHigh: ReadonlyMap<string, number>;
  readonly readsLow: ReadonlyMap<string, number>;
}

/** A protocol without faults stays as it is. */
export function withFaults(logic: Logic, protocol: Protocol): WithFaults {
  if (protocol.faults.length === 0) return { logic, protocol, faults: [] };
  const more = ageOfBands(protocol).map((entry): Observation => ({ ...entry, role: 'needs' }));
  const byName = (observations: readonly Observation[]): Protocol['observations'] =>
    new Map(observations.map((each) => [each.name, each]));
  const whole = { ...protocol, observations: byName([...protocol.observations.values(), ...more]) };
  const writer = new LogicWriter(whole);
  const faults = protocol.faults.map(({ name, when, readsHigh, readsLow }) => ({
    name,
    isThere: writer.rails(when).certain,
    readsHigh,
    readsLow,
  }));
  const steps = stepsFor(
    writer.writer.steps,
    faults.map(({ isThere }) => isThere),
  );
  const alone = { ...protocol, observations: byName(more), limits: new Map(), measures: new Map() };
  const inputs = [...logic.inputs, ...inputsOf(alone)];
  return { protocol: whole, logic: { ...logic, inputs, steps: [...steps, ...logic.steps] }, faults };
}
