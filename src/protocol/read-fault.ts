import type * as File from '../shape/generated/types.ts';
import type { Path } from '../problems/place.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import { sameDimension } from '../vocabulary/units.ts';
import type { Fault, Observation } from './protocol.ts';
import { readCondition } from './read-condition.ts';
import { readQuantity } from './read-quantity.ts';
import { checkSources, readAction } from './read-rule.ts';
import type { Reading } from './reading.ts';
import { plainWords } from './words.ts';

/** Reads one fault of technique; null when its `when` could not be read. */
export function readFault(file: File.Fault, path: Path, reading: Reading): Fault | null {
  const { report } = reading;
  const when = readCondition(file.when, [...path, 'when'], reading);
  const readsHigh = readAmounts(file.reads_high ?? {}, [...path, 'reads_high'], reading);
  const readsLow = readAmounts(file.reads_low ?? {}, [...path, 'reads_low'], reading);
  if (!file.reads_high && !file.reads_low)
    report('fault_without_direction', [...path, 'fault'], { name: file.fault });
  checkSources(file.source, [...path, 'source'], reading);
  if (!when) return null;
  return {
    name: file.fault,
    title: file.title ?? plainWords(file.fault),
    when,
    readsHigh,
    readsLow,
    says: file.says,
    do: (file.do ?? []).map(readAction),
    sources: file.source,
    path,
  };
}

/** By the name of the observation, in its steps, rounded up to a whole one. */
function readAmounts(
  written: Readonly<Record<string, number | string>>,
  path: Path,
  reading: Reading,
): ReadonlyMap<string, number> {
  const amounts = new Map<string, number>();
  for (const [name, amount] of Object.entries(written)) {
    const observation = numberListed(name, [...path, name], reading);
    const steps = observation && amountInSteps(amount, observation, [...path, name], reading);
    if (steps !== null) amounts.set(name, steps);
  }
  return amounts;
}

function numberListed(name: string, path: Path, { names, report }: Reading): Observation | null {
  const observation = names.observations.get(name);
  if (observation?.kind === 'number') return observation;
  const declared = names.declared.get(name);
  if (observation || (declared && declared.kind !== 'number'))
    report('fault_of_choice', path, { name }, { part: 'key' });
  else if (declared) report('observation_not_listed', path, { name }, { part: 'key' });
  else if (!names.unreadable.has(name)) {
    const near = (): string | null => nearMiss(name, [...names.declared.values()]);
    report('unknown_observation', path, { name }, { part: 'key', nearMiss: near });
  }
  return null;
}

function amountInSteps(
  written: number | string,
  { name, unit, stepsPerUnit }: Observation,
  path: Path,
  { report }: Reading,
): number | null {
  const read = readQuantity(written, path, report);
  if (!read) return null;
  if (read.unit && !(unit && sameDimension(read.unit.dimension, unit.dimension))) {
    report('fault_in_another_unit', path, { name, written: String(written), unit: unit?.word ?? 'no unit' });
    return null;
  }
  const own = read.unit && unit ? read.value.mul(read.unit.factor).div(unit.factor) : read.value;
  if (own.compare(0) <= 0) {
    report('fault_amount_not_above_zero', path, { name, written: String(written) });
    return null;
  }
  return own.mul(stepsPerUnit).ceil().valueOf();
}
