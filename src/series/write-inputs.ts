import type { Asked } from './asked.ts';
import { spanFor, type Span } from './ranges.ts';
import type { Resolution } from './resolution.ts';
import type { Resolved } from './resolve.ts';
import type { ReadObservation, Value } from './read-observation.ts';

/** Writes every observation as logic reads it. Wide: a value has its error, and an earlier one counts as missing, but stays known. */
export function writeObservations(
  inputs: Float64Array,
  resolved: Resolved,
  asked: Asked,
  wide: boolean,
): void {
  const age = wide ? resolved.sureAge : resolved.age;
  for (const read of asked.reader.observations) {
    if (read.role === null) continue;
    const resolution = resolved.all[read.index] as Resolution;
    const value = valueOf(resolution, wide);
    const { places } = read;
    if (read.possible) writeNumber(inputs, read, value ?? spanFor(read.possible, age));
    else writeChoices(inputs, read, value?.picked ?? null);
    inputs[places.known] = resolution.known ? 1 : 0;
    inputs[places.unobtainable] = asked.present?.slots[read.index]?.unobtainable ? 1 : 0;
    if (places.missing !== -1) inputs[places.missing] = value === null ? 1 : 0;
  }
}

/** The value of a resolution, as it was read; wide, with its error, and an earlier one is missing. */
export function valueOf({ state, value }: Resolution, wide: boolean): Resolution['value'] {
  if (wide) return state === 'earlier' ? null : value;
  return value && asRead(value);
}

/** A value without its error. */
export const asRead = (value: Value): Value =>
  value.asRead ? { ...value.asRead, asRead: null, picked: value.picked } : value;

function writeNumber(inputs: Float64Array, { places }: ReadObservation, { low, high }: Span): void {
  inputs[places.low] = low;
  inputs[places.high] = high;
}

/** Of a missing one every choice may be, and of several none is surely in. */
function writeChoices(inputs: Float64Array, read: ReadObservation, picked: readonly number[] | null): void {
  const { may, sure } = read.places;
  for (const position of picked ?? read.everyChoice) {
    inputs[may + position] = 1;
    if (sure !== -1 && picked) inputs[sure + position] = 1;
  }
}
