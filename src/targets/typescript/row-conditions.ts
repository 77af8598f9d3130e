import { Code, code } from './code.ts';
import type { ModuleInputs } from './module-inputs.ts';
import { has, nothingIn, ofLookBack, ofObservation } from './names.ts';
import type { Pair } from '../../series/reader.ts';

/**
 * Whether everything in a row is one value that surely may be, and no pair contradicts; without a branch for each: a difference below zero sets
 * the sign, and one sign is enough. Values that stand for nothing are so far off that one of the two differences is below zero whatever is
 * cut off.
 */
export function isComplete({ observations, contradictions, lookBacks }: ModuleInputs): Code {
  const inside = observations.map(({ entry, surely }) => {
    const value = ofObservation(entry.name);
    const from = surely.low === 0 ? value : code`(${value} - ${surely.low})`;
    return code`${from} | (${surely.high} - ${value})`;
  });
  const apart = contradictions.map(gapOf);
  const isNumber = lookBacks.map(({ name }) => code`${ofLookBack(name)} === ${ofLookBack(name)}`);
  return Code.joined(
    [code`(${Code.joined([...inside, ...apart], ' |\n      ')}) >= 0`, ...isNumber],
    ' &&\n      ',
  );
}

/** Below zero where a pair contradicts. */
function gapOf({ lower, higher, mayBeEqual, scale, factor, shift }: Pair): Code {
  const times = (by: number, name: string): Code =>
    by === 1 ? ofObservation(name) : code`${by} * ${ofObservation(name)}`;
  const room = shift - (mayBeEqual ? 0 : 1);
  const gap = code`${times(factor, higher.name)} - ${times(scale, lower.name)}`;
  return room === 0 ? code`(${gap})` : code`(${gap} ${room < 0 ? code`-` : code`+`} ${Math.abs(room)})`;
}

/** Whether each value of a row surely may be or is not there, and no pair contradicts. */
export function mayBeOpen({ observations, contradictions }: ModuleInputs): Code {
  const each = observations.map((observation) => {
    const { name } = observation.entry;
    return code`(${has(name)} | Number(${ofObservation(name)} <= ${nothingIn(observation) + 1}))`;
  });
  const apart = contradictions.map((pair) => {
    const both = code`${has(pair.lower.name)} & ${has(pair.higher.name)}`;
    return code`(1 - (${both} & Number(${gapOf(pair)} < 0)))`;
  });
  return code`(${Code.joined([...each, ...apart], ' &\n      ')}) === 1`;
}
