import type { Input } from '../logic/inputs.ts';
import type { LookBack, Protocol } from '../protocol/protocol.ts';
import { never } from '../logic/inputs.ts';
import { possibleRange } from '../vocabulary/possible-range.ts';

/**
 * Many sets at once: for each observation the values that it may have. Everything is known, nothing is missing,
 * unless `absent` says otherwise.
 *
 * A number is a range of steps, both ends included; a choice is a list of choices; a several has each of its choices as a
 * yes or no of its own, under `name:choice`. A look back has any value. A limit has its own.
 */
export interface Box {
  readonly ranges: ReadonlyMap<string, readonly [number, number]>;
  readonly choices: ReadonlyMap<string, readonly string[]>;
  /** Observations that no set of the box gives; their range is then all that they may be. */
  readonly absent?: ReadonlyMap<string, Absence>;
}

/** Not given; tried and not obtained; not given, and what is to be assumed then stands in its place. */
export type Absence = 'missing' | 'unobtainable' | 'assumed';

/** Every possible set of a protocol. */
export function everySet(protocol: Protocol): Box {
  const ranges = new Map<string, readonly [number, number]>();
  const choices = new Map<string, readonly string[]>();
  for (const observation of protocol.observations.values()) {
    const { name, kind } = observation;
    if (kind === 'number') {
      const { low, high } = possibleRange(observation);
      ranges.set(name, [low, high]);
    } else if (kind === 'several') {
      for (const { choice } of observation.choices) choices.set(`${name}:${choice}`, ['no', 'yes']);
    } else {
      choices.set(
        name,
        observation.choices.map(({ choice }) => choice),
      );
    }
  }
  return { ranges, choices };
}

/** The box as the flat numbers that logic reads. */
export function boxToInputs(box: Box, protocol: Protocol, inputs: readonly Input[]): Float64Array {
  return Float64Array.from(inputs, (input) => inputValue(input, box, protocol));
}

function inputValue({ of, owner, part, choice }: Input, box: Box, protocol: Protocol): number {
  if (of === 'limit') return protocol.limits.get(owner)?.value ?? 0;
  if (of === 'look_back') return lookBackValue(owner, part, protocol);
  const range = box.ranges.get(owner);
  if (part === 'low') return range?.[0] ?? 0;
  if (part === 'high') return range?.[1] ?? 0;
  const absent = box.absent?.get(owner);
  if (part === 'known') return absent ? 0 : 1;
  if (part === 'missing') return absent && absent !== 'assumed' ? 1 : 0;
  if (part === 'unobtainable') return absent === 'unobtainable' ? 1 : 0;
  const several = box.choices.get(`${owner}:${choice ?? ''}`);
  if (several) return (part === 'may' ? several.includes('yes') : !several.includes('no')) ? 1 : 0;
  return box.choices.get(owner)?.includes(choice ?? '') ? 1 : 0;
}

function lookBackValue(measure: string, part: Input['part'], protocol: Protocol): number {
  if (part === 'open') return 0;
  if (part === 'sure' || part === 'maybe' || part === 'count') return 1;
  const how = protocol.measures.get(measure)?.how;
  if (!how || !('over' in how)) return 0;
  const { low, high } = lookBackRange(how, protocol);
  return part === 'low' ? low : high;
}

/** The lowest and the highest value that a look back can have, whatever earlier sets there are. */
export function lookBackRange(how: LookBack, { observations }: Protocol): { low: number; high: number } {
  if (how.kind === 'count') return { low: 0, high: 1_000_000 };
  if (how.kind === 'minutes_since') return { low: 0, high: never };
  if (how.kind === 'held') return { low: 0, high: how.over };
  const observation = observations.get(how.observation ?? '');
  const { low, high } = observation ? possibleRange(observation) : { low: 0, high: 0 };
  return how.kind === 'change' ? { low: low - high, high: high - low } : { low, high };
}
