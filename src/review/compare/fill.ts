import { lookBackKey } from '../look-back-key.ts';
import { valueKey, type Space } from './space.ts';
import type { Input } from '../../logic/inputs.ts';
import type { Protocol } from '../../protocol/protocol.ts';

/** Where the values of the dimensions of a box are written as the flat numbers that a logic reads. */
export type Fill = (lows: Float64Array, highs: Float64Array, into: Float64Array) => void;

type Source = (lows: Float64Array, highs: Float64Array) => number;

/** How the numbers that some logic reads come from a box in which everything is known. */
export function fillerOf(inputs: readonly Input[], protocol: Protocol, space: Space): Fill {
  const sources = inputs.map((input) => sourceOf(input, protocol, space));
  return (lows, highs, into) => {
    for (let at = 0; at < sources.length; at += 1) into[at] = (sources[at] as Source)(lows, highs);
  };
}

function sourceOf({ of, owner, part, choice }: Input, protocol: Protocol, { places }: Space): Source {
  const constant =
    (value: number): Source =>
    () =>
      value;
  if (of === 'limit') return constant(protocol.limits.get(owner)?.value ?? 0);
  if (of === 'look_back') return lookBackSource(owner, part, protocol, places);
  if (part === 'known') return constant(1);
  if (part === 'missing' || part === 'unobtainable') return constant(0);
  const flag = choice === null ? undefined : places.get(`${owner}:${choice}`);
  if (flag !== undefined) return part === 'may' ? highOf(flag) : lowOf(flag);
  const place = placeOf(owner, places);
  if (choice === null) return part === 'low' ? lowOf(place) : highOf(place);
  const index = (protocol.observations.get(owner)?.choices ?? []).findIndex((each) => each.choice === choice);
  return (lows, highs) => ((lows[place] as number) <= index && index <= (highs[place] as number) ? 1 : 0);
}

function lookBackSource(
  name: string,
  part: Input['part'],
  protocol: Protocol,
  places: Space['places'],
): Source {
  const how = protocol.measures.get(name)?.how;
  if (!how || !('over' in how) || part === 'open') return () => 0;
  const key = lookBackKey(name, how);
  if (part === 'low') return lowOf(placeOf(key, places));
  if (part === 'high') return highOf(placeOf(key, places));
  if (part === 'sure') return lowOf(placeOf(valueKey(key), places));
  if (part === 'maybe') return highOf(placeOf(valueKey(key), places));
  return () => 1;
}

const lowOf =
  (place: number): Source =>
  (lows) =>
    lows[place] as number;
const highOf =
  (place: number): Source =>
  (_, highs) =>
    highs[place] as number;

function placeOf(key: string, places: Space['places']): number {
  const place = places.get(key);
  if (place === undefined) throw new Error(`nothing is called ${key}`);
  return place;
}
