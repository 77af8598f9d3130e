import type { Path } from '../problems/place.ts';
import type { MapNode, Node } from '../document/document.ts';
import type { Unit } from '../vocabulary/units.ts';
import type { ObservationEntry } from '../protocol/protocol.ts';
import { rangeAsText, withUnit } from './given-words.ts';
import { readChoice, yesOrNo } from './node-to-choice.ts';
import { boundInSteps, inSteps, readNumber, readUnit, type WrittenNumber } from './node-to-number.ts';
import type { Nothing, Observed } from './series.ts';
import { entryOf, scalarOf, type SetReading } from './set-reading.ts';

const rangeKeys = ['value', 'low', 'high'] as const;
const nothingKeys = ['unobtainable', 'declined'] as const;
const deviceKeys = ['above_device', 'below_device'] as const;

/** Reads what a set says of one observation. Null when it cannot be used; the report has the reason. */
export function readObserved(
  node: Node,
  of: ObservationEntry,
  path: Path,
  reading: SetReading,
): Observed | null {
  if (node.kind === 'map') return readParts(node, of, path, reading);
  if (of.kind !== 'number') return readChoice(node, of, path, reading);
  const read = readNumber(node, of, path, reading);
  if (!read) return null;
  const { steps, moved } = inSteps(read.value, read.unit, of);
  const text = withUnit(read.digits, read.unit?.word ?? null);
  return { kind: 'number', low: steps, high: steps, value: steps, given: { text, moved } };
}

function readParts(map: MapNode, of: ObservationEntry, path: Path, reading: SetReading): Observed | null {
  if (!partsFit(map, of, path, reading)) return null;
  const nothing = nothingKeys.find((key) => entryOf(map, key));
  if (nothing) return readNothing(map, nothing, of, path, reading);
  if (of.kind !== 'number') {
    const value = entryOf(map, 'value');
    return value ? readChoice(value.value, of, [...path, 'value'], reading) : null;
  }
  const device = deviceKeys.find((key) => entryOf(map, key));
  return device ? readBeyond(map, device, of, path, reading) : readRange(map, of, path, reading);
}

/** Whether the parts make sense together and for this kind of observation; else the report says why not. */
function partsFit(map: MapNode, of: ObservationEntry, path: Path, reading: SetReading): boolean {
  const { name } = of;
  const keys = map.entries.map((entry) => entry.key);
  const ways = [
    keys.filter((key) => (rangeKeys as readonly string[]).includes(key)),
    ...[...deviceKeys, ...nothingKeys].map((each) => keys.filter((key) => key === each)),
  ].filter((found) => found.length > 0);
  const [first, second] = ways.map((found) => found[0] as string);
  if (first === undefined) {
    reading.report('set_says_nothing', path, { name });
    return false;
  }
  if (second !== undefined) {
    reading.report('set_parts_clash', [...path, second], { name, first, second }, { part: 'key' });
    return false;
  }
  return (
    unitFits(map, first, of, path, reading) && (of.kind === 'number' || isPlain(keys, name, path, reading))
  );
}

function unitFits(
  map: MapNode,
  first: string,
  of: ObservationEntry,
  path: Path,
  reading: SetReading,
): boolean {
  if (!entryOf(map, 'unit')) return true;
  const at = [...path, 'unit'];
  if (of.kind !== 'number') reading.report('set_unit_of_choice', at, { name: of.name }, { part: 'key' });
  else if (first !== 'unobtainable' && first !== 'declined') return true;
  else reading.report('set_parts_clash', at, { name: of.name, first, second: 'unit' }, { part: 'key' });
  return false;
}

/** Of a choice there is only the value, or nothing. */
function isPlain(keys: readonly string[], name: string, path: Path, reading: SetReading): boolean {
  const foreign = keys.filter((key) => ['low', 'high', ...deviceKeys].includes(key));
  for (const key of foreign) {
    reading.report('set_range_of_choice', [...path, key], { name, key }, { part: 'key' });
  }
  return foreign.length === 0;
}

function readNothing(
  map: MapNode,
  key: Nothing['kind'],
  { name }: ObservationEntry,
  path: Path,
  reading: SetReading,
): Nothing | null {
  const written = yesOrNo(scalarOf(entryOf(map, key)?.value));
  if (typeof written !== 'string' || written === 'no' || written.trim() === '') {
    reading.report('set_no_says_nothing', [...path, key], { name, key });
    return null;
  }
  const reason = written === 'yes' ? null : written;
  return { kind: key, reason, given: { text: reason === null ? key : `${key}: ${reason}`, moved: false } };
}

type Numbers = { readonly [key in (typeof rangeKeys)[number] | (typeof deviceKeys)[number]]?: WrittenNumber };

/** The numbers of a map and the unit that all of them are in; null when one of them is faulty. */
function readNumbers(
  map: MapNode,
  of: ObservationEntry,
  path: Path,
  reading: SetReading,
): { numbers: Numbers; unit: Unit | null; unitText: string | null } | null {
  const beside = readUnit(map, of, path, reading);
  const numbers: { -readonly [key in keyof Numbers]: WrittenNumber } = {};
  let own: Unit | null = null;
  let whole = beside !== undefined;
  for (const key of [...rangeKeys, ...deviceKeys]) {
    const entry = entryOf(map, key);
    if (!entry) continue;
    const read = readNumber(entry.value, of, [...path, key], reading);
    if (read?.unit && beside) {
      const facts = { name: of.name, written: String(scalarOf(entry.value)) };
      reading.report('set_unit_twice', [...path, key], facts);
    }
    if (!read || (read.unit && beside)) whole = false;
    else numbers[key] = read;
    own ??= read?.unit ?? null;
  }
  const unit = beside ?? own;
  return whole
    ? { numbers, unit, unitText: unit && (reading.units === 'ucum' ? unit.ucum : unit.word) }
    : null;
}

function readBeyond(
  map: MapNode,
  key: (typeof deviceKeys)[number],
  of: ObservationEntry,
  path: Path,
  reading: SetReading,
): Observed | null {
  const read = readNumbers(map, of, path, reading);
  const number = read?.numbers[key];
  if (!read || !number) return null;
  const side = key === 'above_device' ? 'above' : 'below';
  const { steps, moved } = boundInSteps(number.value, read.unit, of, side);
  return {
    kind: key,
    bound: steps,
    given: { text: withUnit(`${side} ${number.digits}`, read.unitText), moved },
  };
}

function readRange(map: MapNode, of: ObservationEntry, path: Path, reading: SetReading): Observed | null {
  const read = readNumbers(map, of, path, reading);
  if (!read || !inOrder(read.numbers, of.name, path, reading)) return null;
  const { value, low, high } = read.numbers;
  const inside = value && inSteps(value.value, read.unit, of);
  const lowest = low ? inSteps(low.value, read.unit, of) : inside;
  const highest = high ? inSteps(high.value, read.unit, of) : inside;
  const words = rangeAsText(value?.digits ?? null, low?.digits ?? null, high?.digits ?? null);
  return {
    kind: 'number',
    low: lowest?.steps ?? null,
    high: highest?.steps ?? null,
    value: inside?.steps ?? null,
    given: {
      text: withUnit(words, read.unitText),
      moved: [inside, lowest, highest].some((each) => each?.moved ?? false),
    },
  };
}

/** Whether low <= value <= high; else the report says which is not. */
function inOrder({ value, low, high }: Numbers, name: string, path: Path, reading: SetReading): boolean {
  if (low && high && low.value.gt(high.value)) {
    reading.report('set_low_above_high', path, { name, low: low.digits, high: high.digits });
    return false;
  }
  const outside = (key: 'low' | 'high', end: WrittenNumber): false => {
    const facts = { name, value: value?.digits ?? '', end: end.digits, key };
    reading.report('set_value_outside_range', [...path, 'value'], facts);
    return false;
  };
  if (value && low && value.value.lt(low.value)) return outside('low', low);
  if (value && high && value.value.gt(high.value)) return outside('high', high);
  return true;
}
